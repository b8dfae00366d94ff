package mullwright.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mullwright.model.Catalog;
import mullwright.model.Origin;
import mullwright.model.PartKind;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.TextRange;

/**
 * A part's name written with a blank where it has a hyphen, as in nylon pad: its second half looks
 * like a word too many.
 *
 * @param written as it stands
 * @param name of the part
 * @param range of what is written, in its segment
 */
record SplitName(String written, String name, TextRange range) {
  /** The name that is meant; empty if the two words are none of the catalog. */
  static Optional<SplitName> of(SyntaxProblem problem, String text, Catalog catalog) {
    if (!(problem instanceof SyntaxProblem.Garbled) || catalog == null) {
      return Optional.empty();
    }
    int second = problem.range().start();
    int end = second;
    while (end < text.length() && isName(text.charAt(end))) {
      end++;
    }
    int blank = second;
    while (blank > 0 && text.charAt(blank - 1) == ' ') {
      blank--;
    }
    int first = blank;
    while (first > 0 && isName(text.charAt(first - 1))) {
      first--;
    }
    if (first == blank || blank == second || end == second) {
      return Optional.empty();
    }
    String name = text.substring(first, blank) + "-" + text.substring(second, end);
    boolean known =
        Arrays.stream(PartKind.values()).anyMatch(kind -> catalog.find(kind, name).isPresent());
    return known
        ? Optional.of(new SplitName(text.substring(first, end), name, new TextRange(first, end)))
        : Optional.empty();
  }

  private static boolean isName(char letter) {
    return Character.isLetterOrDigit(letter) || letter == '-' || letter == '_' || letter == '.';
  }

  /** Tells it and offers the name. */
  void tell(Origin at, Findings found) {
    Origin both = new Origin(at.file(), at.segment(), range);
    found
        .at(at)
        .text()
        .what(Words.quoted(written) + " is one name, which has no blank in it.")
        .mend("Write " + name + ".")
        .fix(new Fix("Write " + name, List.of(new Fix.Edit(both, name))));
  }
}
