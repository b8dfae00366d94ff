package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/**
 * The segment a statement stands in; turns its ranges into origins and back into text.
 *
 * @param file workspace path
 * @param index which segment of the file
 */
record Spot(String file, int index, Segment segment) {
  Origin at(TextRange range) {
    return new Origin(file, index, range);
  }

  /** The place of a word, its quotes included. */
  Origin at(Word word) {
    return at(word.range());
  }

  /** The text as written. */
  String text(TextRange range) {
    String text = segment.text();
    int end = Math.min(range.end(), text.length());
    return text.substring(Math.min(range.start(), end), end);
  }

  /** True if something in a block could not be read and is in none of its statements. */
  boolean strays(Statement block) {
    if (segment.problems().isEmpty()) {
      return false;
    }
    List<TextRange> known =
        FileReader.inside(block).stream()
            .filter(inner -> inner.kind() != StatementKind.UNKNOWN)
            .map(Statement::range)
            .toList();
    TextRange range = block.range();
    return segment.problems().stream()
        .map(SyntaxProblem::range)
        .filter(at -> range.start() <= at.start() && at.start() <= range.end())
        .anyMatch(at -> known.stream().noneMatch(statement -> holds(statement, at)));
  }

  private static boolean holds(TextRange range, TextRange at) {
    return range.start() <= at.start() && at.start() <= range.end();
  }

  /**
   * True if the tree says that something in there could not be read: then what is missing was
   * reported already.
   */
  boolean broken(TextRange range) {
    return !problemsIn(range).isEmpty();
  }

  /** What the tree says could not be read in there or at its ends. */
  List<SyntaxProblem> problemsIn(TextRange range) {
    List<SyntaxProblem> found = new ArrayList<>(0);
    for (SyntaxProblem problem : segment.problems()) {
      TextRange at = problem.range();
      if (at.start() <= range.end() && at.end() >= range.start()) {
        found.add(problem);
      }
    }
    return found;
  }
}
