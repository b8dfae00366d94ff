package mullwright.cli;

import mullwright.report.Paint;
import picocli.CommandLine.Option;

/** Options on how text for people looks. */
final class Looks {
  /** Columns of a line where nothing says how many there are. */
  static final int USUAL_WIDTH = 100;

  private static final int LEAST_WIDTH = 40;
  private static final int MOST_WIDTH = 400;

  /** When to paint. */
  enum Colour {
    AUTO,
    ALWAYS,
    NEVER
  }

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      description = "auto (only on a terminal, and not if NO_COLOR is set), always or never.")
  private Colour colour = Colour.AUTO;

  @Option(
      names = "--width",
      paramLabel = "COLUMNS",
      description = "Columns a line may take, 40 to 400; else what COLUMNS says, else 100.")
  private Integer width;

  Paint paint(Shell shell) {
    return new Paint(colour(shell, colour));
  }

  int width(Shell shell) throws CannotException {
    if (width == null) {
      return columns(shell);
    }
    if (width < LEAST_WIDTH || width > MOST_WIDTH) {
      throw new CannotException(
          "--width " + width + " is not between " + LEAST_WIDTH + " and " + MOST_WIDTH + ".");
    }
    return width;
  }

  /** The terminal's width as its environment tells it, kept within reason. */
  static int columns(Shell shell) {
    String told = shell.environment().getOrDefault("COLUMNS", "");
    return told.matches("[0-9]{1,6}")
        ? Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, Integer.parseInt(told)))
        : USUAL_WIDTH;
  }

  static boolean colour(Shell shell, Colour wanted) {
    boolean unwanted = !shell.environment().getOrDefault("NO_COLOR", "").isEmpty();
    return wanted == Colour.ALWAYS || (wanted == Colour.AUTO && shell.terminal() && !unwanted);
  }
}
