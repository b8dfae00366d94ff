package mullwright.automaton;

import java.util.Collections;
import java.util.List;

/**
 * An automaton in few characters: what it does not tell apart is of one class.
 *
 * @param next the next state by state and class, row after row
 * @param accepts what has been matched, by state: the type of a token, {@link
 *     org.antlr.v4.runtime.Lexer#SKIP} cut to a character, or 0 for nothing
 * @param ascii the class of each ASCII character
 * @param firsts the first character of each range beyond ASCII that is of one class, in order
 * @param classes the classes of those ranges
 */
public record PackedTable(
    String next, String accepts, String ascii, String firsts, String classes) {
  private static final int ASCII = 0x80;
  private static final int ALL = 0x10000;
  private static final int LITERAL = 64;

  /** Packs an automaton. */
  static PackedTable of(Automaton automaton) {
    List<Integer> classes = automaton.classes();
    StringBuilder next = new StringBuilder();
    int count = Collections.max(classes) + 1;
    for (List<Integer> row : automaton.next()) {
      for (int i = 0; i < count; i++) {
        next.append(character(row.get(classes.indexOf(i))));
      }
    }
    StringBuilder accepts = new StringBuilder();
    automaton.accepts().forEach(type -> accepts.append(character(type)));
    StringBuilder ascii = new StringBuilder();
    StringBuilder firsts = new StringBuilder();
    StringBuilder beyond = new StringBuilder();
    for (int range = 0; range < classes.size(); range++) {
      char found = character(classes.get(range));
      int first = automaton.firsts().get(range);
      int end = range + 1 < classes.size() ? automaton.firsts().get(range + 1) : ALL;
      ascii.append(Character.toString(found).repeat(Math.max(0, Math.min(end, ASCII) - first)));
      if (end > ASCII) {
        firsts.append(character(Math.max(first, ASCII)));
        beyond.append(found);
      }
    }
    return new PackedTable(
        next.toString(),
        accepts.toString(),
        ascii.toString(),
        firsts.toString(),
        beyond.toString());
  }

  private static char character(int number) {
    return (char) number;
  }

  /** The class of Java that holds it for the lexer. */
  String source() {
    return """
        package mullwright.syntax;

        /** The lexer's table, made of the grammar when that is built. */
        final class LexerTable {
          /** The next state by state and class, row after row. */
          static final char[] NEXT = %s.toCharArray();

          /** What has been matched, by state: a type, {@code SKIP}, or 0 for nothing. */
          static final char[] ACCEPTS = %s.toCharArray();

          /** The class of each ASCII character. */
          static final char[] ASCII = %s.toCharArray();

          /** The first character of each range beyond ASCII that is of one class. */
          static final char[] FIRSTS = %s.toCharArray();

          /** The classes of those ranges. */
          static final char[] CLASSES = %s.toCharArray();

          private LexerTable() {}
        }
        """
        .formatted(
            literal(next), literal(accepts), literal(ascii), literal(firsts), literal(classes));
  }

  private static String literal(String text) {
    StringBuilder literal = new StringBuilder("(\"");
    for (int i = 0; i < text.length(); i++) {
      literal.append(i > 0 && i % LITERAL == 0 ? "\"\n+ \"" : "");
      literal.append(escaped(text.charAt(i)));
    }
    return literal.append("\")").toString();
  }

  /** Octal where that is enough: told by its code, a line end would end the line of the source. */
  private static String escaped(char character) {
    return character <= 0xFF
        ? "\\%03o".formatted((int) character)
        : "\\u%04x".formatted((int) character);
  }
}
