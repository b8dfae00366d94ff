package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.Report;
import mullwright.report.TransmittanceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Tells the thermal transmittance of walls, face by face. */
@Command(
    name = "transmittance",
    description = "Thermal transmittance of walls, face by face, from their parts.",
    mixinStandardHelpOptions = true)
final class TransmittanceCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  TransmittanceCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    return tables.print(shell, new TransmittanceReport(), new Report.Options(false));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new TransmittanceCommand(shell);
    }
  }
}
