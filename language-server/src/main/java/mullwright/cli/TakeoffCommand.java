package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.Report;
import mullwright.report.TakeoffReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists everything that is bought for a wall. */
@Command(
    name = "takeoff",
    description = "Everything that is bought, by phase and face.",
    mixinStandardHelpOptions = true)
final class TakeoffCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  TakeoffCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    return tables.print(shell, new TakeoffReport(), new Report.Options(false));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new TakeoffCommand(shell);
    }
  }
}
