package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.GlassReport;
import mullwright.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints the glass order. */
@Command(
    name = "glass",
    description = "The glass order: sizes and marks, area, mass, setting blocks.",
    mixinStandardHelpOptions = true)
final class GlassCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  GlassCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    return tables.print(shell, new GlassReport(), new Report.Options(false));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new GlassCommand(shell);
    }
  }
}
