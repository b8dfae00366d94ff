package mullwright.cli;

/** Says what went wrong, in the one form all commands use. */
final class Say {
  private Say() {}

  /** One sentence on standard error. A file's name is shown, never obeyed by the terminal. */
  static void wrong(Shell shell, String sentence) {
    shell.err().print("mullwright: " + sentence.replaceAll("\\p{Cntrl}+", " ").strip() + "\n");
    shell.err().flush();
  }
}
