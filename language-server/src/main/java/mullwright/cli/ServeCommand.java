package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.server.ServeMain;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Serves an editor over standard streams; {@link Main} comes here without picocli if it can. */
@Command(
    name = "serve",
    description = "Serve an editor by the Language Server Protocol over standard input and output.",
    mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
  private final Shell shell;

  @Option(names = "--stdio", description = "What many editors add; there is no other way.")
  private boolean streams;

  ServeCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    return ServeMain.run(shell.in(), shell.out());
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new ServeCommand(shell);
    }
  }
}
