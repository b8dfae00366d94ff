package mullwright.server.feature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.syntax.Block;
import mullwright.syntax.Comment;
import mullwright.syntax.LineTable;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeKind;
import org.eclipse.lsp4j.Position;

/** The folds of one document, in the form the client can take. */
final class Folds {
  private static final String CAPABILITY = "textDocument.foldingRange.";

  private final Document document;
  private final LineTable lines;
  private final boolean wholeLines;
  private final boolean tellsText;
  private final int limit;
  private final List<Fold> found = new ArrayList<>();

  Folds(Document document, Client client) {
    this.document = document;
    this.lines = document.file().lines();
    // one that says nothing of folding is served what suits every editor
    this.wholeLines =
        client.can(CAPABILITY + "lineFoldingOnly") || !client.has("textDocument.foldingRange");
    this.tellsText = client.can(CAPABILITY + "foldingRange.collapsedText");
    this.limit = client.number(CAPABILITY + "rangeLimit").orElse(Integer.MAX_VALUE);
  }

  /** A fold and how deep it lies. */
  private record Fold(int depth, FoldingRange range) {}

  /** All of them in the order of the text; of too many the outer ones. */
  List<FoldingRange> all(Cancel cancel) {
    Run comments = new Run(FoldingRangeKind.Comment, "comments");
    Run uses = new Run(FoldingRangeKind.Imports, "files used");
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      cancel.check();
      int start = document.file().segmentStart(i);
      blocks(segments.get(i).statements(), start, 0, uses);
      for (Comment comment : segments.get(i).comments()) {
        comments.add(start + comment.range().start(), start + comment.range().end());
      }
    }
    comments.close();
    uses.close();
    Set<Fold> kept =
        new HashSet<>(
            found.stream().sorted(Comparator.comparingInt(Fold::depth)).limit(limit).toList());
    // outer ones before those within; a run of comments is known after the blocks behind it
    Set<List<Integer>> told = new HashSet<>();
    return found.stream()
        .filter(kept::contains)
        .map(Fold::range)
        .filter(fold -> told.add(place(fold)))
        .sorted(
            Comparator.comparingInt(FoldingRange::getStartLine)
                .thenComparing(FoldingRange::getEndLine, Comparator.reverseOrder()))
        .toList();
  }

  /** Of blocks that begin and end on the same lines an editor shows one. */
  private static List<Integer> place(FoldingRange fold) {
    return Arrays.asList(
        fold.getStartLine(), fold.getStartCharacter(), fold.getEndLine(), fold.getEndCharacter());
  }

  private void blocks(List<Statement> statements, int start, int depth, Run uses) {
    for (Statement statement : statements) {
      int first = lines.line(start + statement.range().start());
      if (statement.kind() == StatementKind.USE) {
        uses.add(start + statement.range().start(), start + statement.range().end());
      }
      if (statement.block().isPresent()) {
        block(statement.block().get(), first, start, depth);
        blocks(statement.block().get().statements(), start, depth + 1, uses);
      } else {
        int last = lines.line(start + statement.range().end()) - 1;
        fold(first, last, FoldingRangeKind.Region, depth, "");
      }
    }
  }

  private void block(Block block, int first, int start, int depth) {
    int end = block.closed() ? start + block.range().end() : end(block, start);
    int last = lines.line(end) - (block.closed() ? 1 : 0);
    int count = block.statements().size();
    FoldingRange fold =
        fold(
            first,
            last,
            FoldingRangeKind.Region,
            depth,
            count == 1 ? "1 statement" : count + " statements");
    if (fold != null && !wholeLines) {
      Position open = document.position(start + block.range().start() + 1);
      Position close = document.position(block.closed() ? end - 1 : end);
      fold.setStartLine(open.getLine());
      fold.setStartCharacter(open.getCharacter());
      fold.setEndLine(close.getLine());
      fold.setEndCharacter(close.getCharacter());
    }
  }

  /** Where what stands in a block that nothing closes ends: behind it may come an outer brace. */
  private int end(Block block, int start) {
    CharSequence text = document.file().text();
    int end = start + block.range().end();
    while (end > start + block.range().start() && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private FoldingRange fold(int first, int last, String kind, int depth, String text) {
    if (last <= first) {
      return null;
    }
    FoldingRange fold = new FoldingRange(first, last);
    fold.setKind(kind);
    if (tellsText && !text.isEmpty()) {
      fold.setCollapsedText("… " + text);
    }
    found.add(new Fold(depth, fold));
    return fold;
  }

  /** Neighbouring lines of one kind, folded as one. */
  private final class Run {
    private final String kind;
    private final String text;
    private int first = -1;
    private int last = -1;

    Run(String kind, String text) {
      this.kind = kind;
      this.text = text;
    }

    void add(int start, int end) {
      int line = lines.line(start);
      if (first < 0 || line > last + 1) {
        close();
        first = line;
      }
      last = lines.line(Math.max(start, end - 1));
    }

    void close() {
      if (first >= 0) {
        fold(first, last, kind, 0, text);
      }
      first = -1;
    }
  }
}
