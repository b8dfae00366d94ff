package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.CutReport;
import mullwright.takeoff.nesting.Limits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans which pieces are cut from which bars. */
@Command(
    name = "cut",
    description =
        "Which pieces are cut from which bars, bars to buy, drops and waste; the walls given share"
            + " bars.",
    mixinStandardHelpOptions = true)
final class CutCommand implements Callable<Integer> {
  private static final int MOST_SECONDS = 3600;

  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description =
          "How long to look for a better plan or a proof that there is none, for each part; 1 to"
              + " 3600, 2 if not given. Counted in steps, so that every machine gives the same"
              + " plan; the clock only stops a machine ten times slower, and the report says so.")
  private int seconds = CutReport.SECONDS;

  @Option(names = "--each", description = "Every bar by itself, with where each piece begins.")
  private boolean each;

  @Option(
      names = "--proof",
      description = "Adds the prices by which anyone can check that no plan does better.")
  private boolean proof;

  CutCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    if (seconds < 1 || seconds > MOST_SECONDS) {
      throw new CannotException(
          "--seconds " + seconds + " is out of range: give 1 to " + MOST_SECONDS + ".");
    }
    CutReport.Wanted wanted = new CutReport.Wanted(each, proof, Limits.report(seconds));
    return tables.print(shell, walls -> new CutReport().make(walls, wanted));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new CutCommand(shell);
    }
  }
}
