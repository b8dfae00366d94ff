package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.LengthsReport;
import mullwright.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the cut length of every piece and the size of every lite. */
@Command(
    name = "lengths",
    description = "Cut lengths of every piece and sizes of glass, wall by wall.",
    mixinStandardHelpOptions = true)
final class LengthsCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  @Option(names = "--each", description = "Every piece by itself, instead of equal ones together.")
  private boolean each;

  LengthsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    return tables.print(shell, new LengthsReport(), new Report.Options(each));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new LengthsCommand(shell);
    }
  }
}
