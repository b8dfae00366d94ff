package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import mullwright.server.ServeMain;
import mullwright.web.WebDoor;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Serves an editor over standard streams ({@link Main} does so without picocli if it can), or the
 * editor in a browser.
 */
@Command(
    name = "serve",
    description = {
      "Serve an editor by the Language Server Protocol over standard input and output, or, with"
          + " --web, edit the walls of a folder in a browser on this machine."
    },
    mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
  private static final int MOST_PORT = 65_535;

  private final Shell shell;

  @Option(names = "--stdio", description = "What many editors add; it says nothing new.")
  private boolean streams;

  @Option(
      names = KeptServing.OFF,
      description =
          "Keep nothing of what was found for the next start. Without it the user's own folder for"
              + " caches holds the texts last checked, for the user alone.")
  private boolean keepsNothing;

  @Option(
      names = "--web",
      description = "Print the address of a page that edits the folder's walls, and serve it.")
  private boolean web;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port of that page; any that is free unless said.")
  private int port;

  @Parameters(
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "Folder that holds both walls and catalogs; this one unless said.")
  private String folder;

  ServeCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    if (web) {
      return inBrowser();
    }
    if (folder != null || port != 0) {
      throw new CannotException(
          "A folder and --port are for --web; an editor tells its folders itself.");
    }
    return ServeMain.run(
        shell.in(), shell.out(), keepsNothing ? Optional.empty() : KeptServing.folder());
  }

  private int inBrowser() throws CannotException {
    Path walls = WallFinder.path(shell.directory(), folder == null ? "." : folder);
    if (!Files.isDirectory(walls)) {
      throw new CannotException(walls + " is no folder.");
    }
    if (port < 0 || port > MOST_PORT) {
      throw new CannotException("--port " + port + " is not between 0 and " + MOST_PORT + ".");
    }
    try (WebDoor door = WebDoor.open(walls.toRealPath(), port)) {
      shell.out().println("The walls of " + walls.toRealPath() + " in a browser on this machine:");
      shell.out().println(door.address());
      shell.out().println("Whoever has this address may read and change them. Ctrl+C ends it.");
      shell.out().flush();
      Thread.currentThread().join();
    } catch (IOException failed) {
      throw new CannotException("The page cannot be served: " + failed.getMessage() + ".");
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
    return Exit.CLEAN;
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
