package mullwright.server;

import java.nio.charset.StandardCharsets;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.Position;

/**
 * Places of a text as an editor counts them; counted by the library, not by the code under test.
 */
final class TextPlaces {
  private TextPlaces() {}

  /** The offset, or the one before it: no editor cuts through a character or a line end. */
  static int boundary(String text, int offset) {
    boolean inside =
        offset > 0
            && offset < text.length()
            && (Character.isSurrogatePair(text.charAt(offset - 1), text.charAt(offset))
                || (text.charAt(offset - 1) == '\r' && text.charAt(offset) == '\n'));
    return inside ? offset - 1 : offset;
  }

  static Position at(String text, int offset, PositionEncoding columns) {
    LineTable lines = LineTable.of(text);
    int line = lines.line(offset);
    return new Position(line, length(text.substring(lines.start(line), offset), columns));
  }

  static int length(String text, PositionEncoding columns) {
    return switch (columns) {
      case UTF8 -> text.getBytes(StandardCharsets.UTF_8).length;
      case UTF16 -> text.length();
      case UTF32 -> text.codePointCount(0, text.length());
    };
  }
}
