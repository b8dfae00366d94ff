package mullwright.cli;

import java.io.IOException;
import java.nio.file.NoSuchFileException;

/** A command cannot do what it was asked; its message is the sentence told to the user. */
final class CannotException extends Exception {
  private static final long serialVersionUID = 1L;

  CannotException(String sentence) {
    super(sentence);
  }

  /** A file a user named that could not be read, and why: most often there is none. */
  static CannotException unreadable(String file, IOException failed) {
    return new CannotException(
        failed instanceof NoSuchFileException
            ? "There is no file “" + file + "”."
            : "“" + file + "” cannot be read: " + failed.getMessage() + ".");
  }
}
