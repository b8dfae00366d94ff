package mullwright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Reference;
import mullwright.syntax.Block;
import mullwright.syntax.BlockKind;
import mullwright.syntax.Clause;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;

/**
 * What is under an offset of a file: the one answer hover, definition, references, rename,
 * completion and drawing share.
 *
 * @param offset counted from the start of the segment
 * @param enclosing the statements around it, outermost first; empty between statements of the file
 * @param block the block it stands in
 * @param clause the clause it stands in or touches the end of
 * @param leaf the word or value it is on; of two it touches, the one that begins there
 */
public record Cursor(
    Snapshot snapshot,
    String path,
    ParsedFile file,
    int segment,
    int offset,
    List<Statement> enclosing,
    BlockKind block,
    Optional<Clause> clause,
    Optional<Leaf> leaf) {

  static Cursor at(Snapshot snapshot, String path, ParsedFile file, int absolute) {
    int bounded = Math.max(0, Math.min(absolute, file.text().length()));
    int index = file.segmentAt(bounded);
    Segment segment = file.segments().get(index);
    int offset = bounded - file.segmentStart(index);
    List<Statement> enclosing = new ArrayList<>();
    BlockKind block = descend(segment.statements(), offset, BlockKind.FILE, enclosing);
    Optional<Clause> clause = Optional.empty();
    Optional<Leaf> leaf = Optional.empty();
    if (!enclosing.isEmpty()) {
      Statement inner = enclosing.get(enclosing.size() - 1);
      for (Clause candidate : inner.clauses()) {
        if (candidate.range().touches(offset)) {
          clause = Optional.of(candidate);
        }
      }
      for (Leaf candidate : Leaves.of(inner, segment.text())) {
        if (candidate.range().touches(offset)) {
          leaf = Optional.of(candidate);
        }
      }
    }
    return new Cursor(
        snapshot, path, file, index, offset, List.copyOf(enclosing), block, clause, leaf);
  }

  private static BlockKind descend(
      List<Statement> statements, int offset, BlockKind outer, List<Statement> enclosing) {
    Statement before = null;
    for (Statement statement : statements) {
      if (statement.range().touches(offset)) {
        enclosing.add(statement);
        return statement
            .block()
            .filter(block -> inside(block, offset))
            .map(block -> descend(block.statements(), offset, block.kind(), enclosing))
            .orElse(outer);
      }
      before = statement.range().end() < offset ? statement : before;
    }
    // a block that nobody has closed yet goes on behind its last word
    Statement open = before;
    Optional<Block> goesOn =
        Optional.ofNullable(open).flatMap(Statement::block).filter(block -> !block.closed());
    return goesOn
        .map(
            block -> {
              enclosing.add(open);
              return descend(block.statements(), offset, block.kind(), enclosing);
            })
        .orElse(outer);
  }

  private static boolean inside(Block block, int offset) {
    return block.range().start() < offset
        && (block.closed() ? offset < block.range().end() : offset <= block.range().end());
  }

  /** The innermost statement, if there is one. */
  public Optional<Statement> statement() {
    return enclosing.isEmpty()
        ? Optional.empty()
        : Optional.of(enclosing.get(enclosing.size() - 1));
  }

  /** The offset counted from the start of the file. */
  public int absolute() {
    return file.segmentStart(segment) + offset;
  }

  /** The names that were found and that it is on; more than one if one word names many things. */
  public List<Reference> references() {
    return snapshot
        .reading(path)
        .map(reading -> reading.referencesAt(segment, offset))
        .orElse(List.of());
  }
}
