package mullwright.cli;

/** A command cannot do what it was asked; its message is the sentence told to the user. */
final class CannotException extends Exception {
  private static final long serialVersionUID = 1L;

  CannotException(String sentence) {
    super(sentence);
  }
}
