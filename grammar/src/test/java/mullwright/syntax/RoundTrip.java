package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.format.Formatter;
import mullwright.format.TextEdit;

/** What must hold of any text whatever: laying it out changes nothing but its looks. */
public final class RoundTrip {
  private RoundTrip() {}

  /** Reads the text and lays it out; fails unless that means the same and is stable. */
  public static ParsedFile check(String text) {
    ParsedFile file = ParsedFile.parse(text);
    String laidOut = Formatter.format(file);
    ParsedFile again = ParsedFile.parse(laidOut);
    assertThat(TreePrinter.tree(again))
        .as("tree of\n%s", laidOut)
        .isEqualTo(TreePrinter.tree(file));
    assertThat(kinds(again)).as("problems of\n%s", laidOut).isEqualTo(kinds(file));
    assertThat(comments(again)).isEqualTo(comments(file));
    assertThat(wordsByLine(laidOut)).isEqualTo(wordsByLine(text));
    assertThat(Formatter.format(again)).isEqualTo(laidOut);
    assertThat(Formatter.edits(again)).isEmpty();
    assertThat(applied(text, Formatter.edits(file))).isEqualTo(laidOut);
    return file;
  }

  /** The text after the edits, which must be in order and apart. */
  public static String applied(String text, List<TextEdit> edits) {
    StringBuilder result = new StringBuilder(text);
    int before = text.length() + 1;
    for (int i = edits.size() - 1; i >= 0; i--) {
      TextEdit edit = edits.get(i);
      assertThat(edit.end()).isLessThan(before);
      result.replace(edit.start(), edit.end(), edit.text());
      before = edit.start();
    }
    return result.toString();
  }

  private static List<String> kinds(ParsedFile file) {
    return file.problems().stream().map(p -> p.problem().getClass().getSimpleName()).toList();
  }

  private static List<String> comments(ParsedFile file) {
    return file.segments().stream()
        .flatMap(segment -> segment.comments().stream())
        .map(comment -> comment.text().strip().replaceAll("\\R", "\n"))
        .toList();
  }

  /** Every line that is not blank, with all white space and other spellings of marks left out. */
  private static List<String> wordsByLine(String text) {
    return text.replaceAll("\r\n?", "\n")
        .lines()
        .map(line -> line.replaceAll("[\\p{Z}\\s\u000b\ufeff-]", ""))
        .map(line -> Literals.plainMarks(line).replace('\u201c', '"').replace("\u2212", ""))
        .map(line -> line.replaceAll("(?<!\\d)0(\\.\\d)", "$1"))
        .filter(line -> !line.isEmpty())
        .toList();
  }
}
