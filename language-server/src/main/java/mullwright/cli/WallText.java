package mullwright.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import mullwright.workspace.WholeFile;

/**
 * The text of a file that is to be written back: what cannot be read without loss is refused.
 *
 * @param marked true if the file begins with a byte order mark, which is kept
 */
record WallText(String text, boolean marked) {
  static final long SIZE_LIMIT = mullwright.workspace.Files.SIZE_LIMIT;

  private static final String MARK = "\ufeff";

  static WallText read(Path file, String name) throws CannotException {
    try {
      if (Files.size(file) > SIZE_LIMIT) {
        throw tooLarge(name);
      }
      return decode(Files.readAllBytes(file), name);
    } catch (IOException failed) {
      throw CannotException.unreadable(name, failed);
    }
  }

  static WallText decode(byte[] bytes, String name) throws CannotException {
    if (bytes.length > SIZE_LIMIT) {
      throw tooLarge(name);
    }
    try {
      // a decoder of its own reports what a string would silently replace
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (text.indexOf('\0') >= 0) {
        throw new CannotException("“" + name + "” is no text: it holds zero bytes.");
      }
      return text.startsWith(MARK)
          ? new WallText(text.substring(1), true)
          : new WallText(text, false);
    } catch (CharacterCodingException damaged) {
      throw new CannotException(
          "“"
              + name
              + "” is left alone: it is not UTF-8, and writing it would lose bytes. Save it"
              + " as UTF-8 first.");
    }
  }

  private static CannotException tooLarge(String name) {
    return new CannotException(
        "“" + name + "” is left alone: a wall file may take " + SIZE_LIMIT + " bytes.");
  }

  /** The new text as it is written. */
  String encode(String laidOut) {
    return marked ? MARK + laidOut : laidOut;
  }

  /** Puts the new text in the file's place all at once: a reader sees the old or the new. */
  void write(Path file, String laidOut) throws IOException {
    WholeFile.put(
        file.toRealPath(),
        whole -> Files.writeString(whole, encode(laidOut), StandardCharsets.UTF_8));
  }
}
