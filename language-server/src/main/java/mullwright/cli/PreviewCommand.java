package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import mullwright.preview.Opener;
import mullwright.preview.Preview;
import mullwright.preview.Scene;
import mullwright.preview.SceneFile;
import mullwright.workspace.Cancel;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Serves the live drawing of walls on disk, for any editor that saves files. */
@Command(
    name = "preview",
    description = {
      "Show a live drawing of walls on a page of this machine: elevation, section, schedule and"
          + " findings, drawn anew whenever a file is saved.",
      "The page can be reached from this machine only, and only by the address printed here. Stop it"
          + " with Ctrl-C. An editor that speaks to the server has the command mullwright.preview,"
          + " which follows every keystroke."
    },
    mixinStandardHelpOptions = true)
final class PreviewCommand implements Callable<Integer> {
  private static final int PORT_LIMIT = 65_535;

  /** A file is looked at so often: quicker than an eye goes from one window to the other. */
  private static final long LOOK_MILLIS = 150;

  private final Shell shell;

  @Mixin private Targets targets = new Targets();

  @Option(
      names = "--port",
      paramLabel = "NUMBER",
      description = "Port to serve on, 1 to 65535; any free one unless stated.")
  private int port;

  @Option(names = "--open", description = "Open the page in the browser of this desktop.")
  private boolean open;

  PreviewCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    if (port < 0 || port > PORT_LIMIT) {
      throw new CannotException("--port " + port + " is not between 1 and " + PORT_LIMIT + ".");
    }
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    if (readable.paths().isEmpty()) {
      return Exit.COULD_NOT;
    }
    try (Preview preview = Preview.start(port, Opener.NONE, new ReportTables())) {
      shell.out().println(preview.address());
      shell.out().flush();
      if (open) {
        Desktop.open(shell, preview.address());
      }
      watch(opened, readable.paths(), preview);
      return Exit.CLEAN;
    } catch (IOException failed) {
      throw new CannotException(
          "The page cannot be served"
              + (port == 0 ? "" : " on port " + port)
              + ": "
              + failed.getMessage()
              + (port == 0 ? "." : ". Leave --port out, and a free one is taken."));
    }
  }

  /** Shows the files, and shows them again when one of them or what they use is another. */
  private static void watch(Opened opened, List<String> paths, Preview preview) {
    List<Reading> shown = List.of();
    Workspace workspace = opened.workspace();
    try {
      while (true) {
        Snapshot snapshot = workspace.lookAgain();
        List<Reading> now = readings(snapshot, paths);
        if (!now.equals(shown)) {
          Scene scene = scene(snapshot, now, opened);
          preview.edited(scene);
          preview.checked(
              new Scene(
                  scene.files().stream().map(file -> file.withFindings(Cancel.NEVER)).toList()));
          shown = now;
        }
        Thread.sleep(LOOK_MILLIS);
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  private static List<Reading> readings(Snapshot snapshot, List<String> paths) {
    List<Reading> readings = new ArrayList<>();
    // a reading is the same object as long as every text it stands on is
    paths.forEach(path -> snapshot.reading(path).ifPresent(readings::add));
    return readings;
  }

  private static Scene scene(Snapshot snapshot, List<Reading> readings, Opened opened) {
    List<SceneFile> files = new ArrayList<>();
    for (Reading reading : readings) {
      String path = reading.path();
      SceneFile.laidOut(
              path, opened.shown(path), path, snapshot, Optional.of(opened.disk().absolute(path)))
          .ifPresent(files::add);
    }
    // the one named first is the one that is shown first
    java.util.Collections.reverse(files);
    return new Scene(files);
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new PreviewCommand(shell);
    }
  }
}
