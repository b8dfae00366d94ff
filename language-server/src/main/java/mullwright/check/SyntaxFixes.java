package mullwright.check;

import java.util.List;
import java.util.Set;
import mullwright.model.Origin;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.SyntaxProblem.NotClosed.What;
import mullwright.syntax.TextRange;

/** Edits that put in a brace or mark that is missing, or take out one too many. */
final class SyntaxFixes {
  /** What people put between names or at the end of a line. */
  private static final Set<String> LISTS = Set.of("&", ";", ":");

  /** What a name in quotes begins with. */
  private static final String STARTS = "\"\u201c\u201d";

  /** Marks of feet and inches. */
  private static final String MARKS = "'\"\u2032\u2033\u2019\u201d";

  private SyntaxFixes() {}

  /**
   * The edits that mend a problem of form; none if only the drafter can tell what was meant.
   *
   * @param at where it is
   * @param text of the segment it is in
   */
  static List<Fix> of(SyntaxProblem problem, Origin at, String text) {
    if (problem instanceof SyntaxProblem.BraceMissing it) {
      int end = problem.range().end();
      return List.of(
          it.alone()
              ? insert("Put { } after it", at, end, " { }")
              : insert("Put { at the end of the line", at, end, " {"));
    }
    if (problem instanceof SyntaxProblem.StrayCharacter stray && stray.character().equals(".")) {
      return dot(problem.range(), at, text);
    }
    if (problem instanceof SyntaxProblem.StrayCharacter stray
        && SyntaxWords.DASHES.contains(stray.character())) {
      return dash(stray, at, text);
    }
    if (problem instanceof SyntaxProblem.StrayCharacter stray) {
      return stray(stray, at, text);
    }
    if (problem instanceof SyntaxProblem.Unexpected && isComma(problem.range(), text)) {
      return List.of(fix("Take the comma out", at, problem.range(), ""));
    }
    if (problem instanceof SyntaxProblem.Garbled slip) {
      return joined(slip, at, text);
    }
    if (problem instanceof SyntaxProblem.UnknownKeyword unknown) {
      return OtherWords.of(unknown.word(), unknown.block()).fixes(at, text);
    }
    if (problem instanceof SyntaxProblem.BraceExtra) {
      TextRange line = withItsLine(problem.range(), text);
      return List.of(fix("Take the } out", at, line, ""));
    }
    if (problem instanceof SyntaxProblem.BraceTwice) {
      return List.of(fix("Take the { out", at, problem.range(), ""));
    }
    if (problem instanceof SyntaxProblem.BlockNotClosed open) {
      return List.of(close(open, at, text));
    }
    if (problem instanceof SyntaxProblem.NotClosed open && open.what() == What.COMMENT) {
      return comment(open.range(), at, text);
    }
    if (problem instanceof SyntaxProblem.NotClosed open && open.what() == What.STRING) {
      return List.of(quote(open.range(), at, text));
    }
    return List.of();
  }

  /** One more mark after a mark is too many; elsewhere its like is missing. */
  private static Fix quote(TextRange open, Origin at, String text) {
    int end = endOfWords(open, text);
    boolean alone =
        end <= open.start() + 1 || Character.isWhitespace(text.charAt(open.start() + 1));
    String before = text.substring(0, open.start()).stripTrailing();
    boolean twice = !before.isEmpty() && MARKS.indexOf(before.charAt(before.length() - 1)) >= 0;
    return alone && twice
        ? fix("Take the \" out", at, new TextRange(open.start(), open.start() + 1), "")
        : insert("Close the quote", at, end, "\"");
  }

  /** Of a line that opens or closes a block a comment would take the brace away. */
  private static List<Fix> comment(TextRange mark, Origin at, String text) {
    int end = endOfLine(mark.start(), text);
    String rest = text.substring(mark.end(), end);
    Fix close = insert("Close the comment", at, end, " */");
    int blanks = rest.length() - rest.stripLeading().length();
    TextRange both = new TextRange(mark.start(), mark.end() + blanks);
    Fix out = fix("Take the /* out", at, both, "");
    boolean brace = rest.indexOf('{') >= 0 || rest.indexOf('}') >= 0;
    return brace ? List.of(out, close) : List.of(close, out);
  }

  private static boolean isComma(TextRange range, String text) {
    // after the dots of a range a name is missing, and the comma is right
    return range.end() <= text.length()
        && text.substring(range.start(), range.end()).equals(",")
        && !text.substring(0, range.start()).stripTrailing().endsWith("..");
  }

  /** {@code &} and {@code ;} join names; at the end of a line, as a colon, they can go. */
  private static List<Fix> stray(SyntaxProblem.StrayCharacter stray, Origin at, String text) {
    TextRange range = stray.range();
    boolean ends = range.end() >= text.length() || Character.isWhitespace(text.charAt(range.end()));
    if (!ends || MARKS.contains(stray.character())) {
      return List.of();
    }
    if (!LISTS.contains(stray.character())) {
      return List.of();
    }
    int line = startOfLine(range.start(), text);
    int from = line + text.substring(line, range.start()).stripTrailing().length();
    boolean between = from > line && !endsLine(range.end(), text) && !stray.character().equals(":");
    TextRange all = from > line ? new TextRange(from, range.end()) : range;
    return between
        ? List.of(fix("Write a comma", at, all, ","))
        : List.of(fix("Take the " + stray.character() + " out", at, all, ""));
  }

  /** After feet a minus is meant, else the dots of a range, and the other may be. */
  private static List<Fix> dash(SyntaxProblem.StrayCharacter stray, Origin at, String text) {
    Fix range = fix("Write ..", at, dots(stray.range(), text), "..");
    if (!SyntaxWords.isDash(stray.character())) {
      return List.of(range);
    }
    Fix minus = fix("Write -", at, stray.range(), "-");
    String before = text.substring(0, stray.range().start()).stripTrailing();
    boolean length = !before.isEmpty() && MARKS.indexOf(before.charAt(before.length() - 1)) >= 0;
    return length ? List.of(minus) : List.of(range, minus);
  }

  /** Before a name a range is meant; behind a number or a line the dot may go. */
  private static List<Fix> dot(TextRange dot, Origin at, String text) {
    TextRange all = dots(dot, text);
    char next = all.end() < text.length() ? text.charAt(all.end()) : '\n';
    boolean name = Character.isLetterOrDigit(next) || STARTS.indexOf(next) >= 0;
    boolean number = dot.start() > 0 && Character.isDigit(text.charAt(dot.start() - 1));
    Fix range = fix("Write ..", at, all, "..");
    Fix out = fix("Take the . out", at, dot, "");
    if (!name || number && all.end() == dot.end() && STARTS.indexOf(next) >= 0) {
      return List.of(out);
    }
    return number && all.end() > dot.end() ? List.of(out, range) : List.of(range);
  }

  /** True if nothing but a comment follows on the line. */
  private static boolean endsLine(int offset, String text) {
    String rest = text.substring(offset, endOfLine(offset, text)).strip();
    return rest.isEmpty() || rest.startsWith("//");
  }

  /** A dot with the dots and blanks on both sides of it. */
  private static TextRange dots(TextRange dot, String text) {
    int start = dot.start();
    while (start > 0 && (text.charAt(start - 1) == ' ' || text.charAt(start - 1) == '.')) {
      start--;
    }
    int end = dot.end();
    while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '.')) {
      end++;
    }
    return new TextRange(start, end);
  }

  /** What is missing between two names, where it may be more than one thing the commonest first. */
  private static List<Fix> joined(SyntaxProblem.Garbled slip, Origin at, String text) {
    int end = text.substring(0, slip.range().start()).stripTrailing().length();
    Fix comma = insert("Put a comma before " + slip.found(), at, end, ",");
    TextRange blank = new TextRange(end, slip.range().start());
    Fix range = fix("Put .. before " + slip.found(), at, blank, "..");
    return switch (slip.how()) {
      case COMMA_LEFT_OUT, WORD_OR_COMMA_LEFT_OUT -> List.of(comma);
      case RANGE_LEFT_OUT -> List.of(range);
      case COMMA_OR_RANGE_LEFT_OUT -> List.of(comma, range);
      case MISSPELT, RUN_TOGETHER, WORD_LEFT_OUT, RANGE_IN_WORDS -> List.of();
    };
  }

  /** A brace on a line of its own, indented as the line that opens the block. */
  private static Fix close(SyntaxProblem.BlockNotClosed open, Origin at, String text) {
    int brace = open.range().start();
    String line = text.substring(startOfLine(brace, text), brace);
    String indent = line.substring(0, line.length() - line.stripLeading().length());
    int end = endOfLine(open.end(), text);
    String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    return insert("Put } after the block", at, end, lineEnd + indent + "}");
  }

  /** Where an open text ends if neither blanks nor a comment after it are meant to be in it. */
  private static int endOfWords(TextRange range, String text) {
    String open = text.substring(range.start(), range.end());
    int comment = open.indexOf(" //");
    String words = comment < 0 ? open : open.substring(0, comment);
    return range.start() + words.stripTrailing().length();
  }

  /** The range, or the whole line if nothing else stands on it. */
  private static TextRange withItsLine(TextRange range, String text) {
    int start = startOfLine(range.start(), text);
    int end = endOfLine(range.end(), text);
    boolean alone =
        text.substring(start, range.start()).isBlank()
            && text.substring(range.end(), end).isBlank();
    if (!alone) {
      return range;
    }
    int lineEnd = text.startsWith("\r\n", end) ? 2 : 1;
    return new TextRange(start, Math.min(end + lineEnd, text.length()));
  }

  private static int startOfLine(int offset, String text) {
    int start = offset;
    while (start > 0 && !isLineEnd(text.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  private static int endOfLine(int offset, String text) {
    int end = offset;
    while (end < text.length() && !isLineEnd(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static boolean isLineEnd(char character) {
    return character == '\n' || character == '\r';
  }

  private static Fix insert(String title, Origin near, int offset, String text) {
    return fix(title, near, new TextRange(offset, offset), text);
  }

  private static Fix fix(String title, Origin near, TextRange range, String text) {
    Origin origin = new Origin(near.file(), near.segment(), range);
    return new Fix(title, List.of(new Fix.Edit(origin, text)));
  }
}
