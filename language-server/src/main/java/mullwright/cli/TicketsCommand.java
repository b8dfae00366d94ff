package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.report.Report;
import mullwright.report.TicketsReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what the shop is told of each piece: length, end cuts, holes. */
@Command(
    name = "tickets",
    description = "Tickets for the shop: each piece with its length, end cuts and holes.",
    mixinStandardHelpOptions = true)
final class TicketsCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Tables tables = new Tables();

  @Option(
      names = "--issue",
      description =
          "Also write the marks into the ledger beside the wall (NAME.marks), so that they last;"
              + " refused while errors stand in the wall.")
  private boolean issue;

  TicketsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    return tables.print(shell, new TicketsReport(), new Report.Options(false), issue);
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
