package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.Report;
import mullwright.report.SequenceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints an order in which the wall can be put up. */
@Command(
    name = "sequence",
    description = "An order in which the wall can be put up, with the reason of each precedence.",
    mixinStandardHelpOptions = true)
final class SequenceCommand implements Callable<Integer> {
  private static final int MOST_CREWS = 100;

  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  @Option(names = "--crews", paramLabel = "COUNT", description = "Crews at work at once, 1 to 100.")
  private int crews = 1;

  @Option(
      names = "--all",
      description =
          "Every step by itself, with what it comes after and why; the forms for programs always"
              + " hold all.")
  private boolean all;

  @Option(
      names = "--each",
      description = "Every step by itself, and every precedence by itself as well.")
  private boolean each;

  SequenceCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    if (crews < 1 || crews > MOST_CREWS) {
      throw new CannotException("--crews " + crews + " is not between 1 and " + MOST_CREWS + ".");
    }
    boolean brief = tables.forPeople() && !all && !each;
    return tables.print(shell, new SequenceReport(crews, brief), new Report.Options(each));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new SequenceCommand(shell);
    }
  }
}
