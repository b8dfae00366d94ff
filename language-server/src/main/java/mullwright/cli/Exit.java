package mullwright.cli;

/** What the program ends with. */
final class Exit {
  /** Nothing to complain of. */
  static final int CLEAN = 0;

  /** Findings, or files that would change. */
  static final int FINDINGS = 1;

  /** It could not be done: no such file, a wrong option, a file that cannot be read. */
  static final int COULD_NOT = 2;

  private Exit() {}
}
