package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.Report;
import mullwright.report.TicketsReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints what the shop is told of each piece: length, end cuts, holes. */
@Command(
    name = "tickets",
    description = "Tickets for the shop: each piece with its length, end cuts and holes.",
    mixinStandardHelpOptions = true)
final class TicketsCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  TicketsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    return tables.print(shell, new TicketsReport(), new Report.Options(false));
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new TicketsCommand(shell);
    }
  }
}
