package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import mullwright.report.Report;
import mullwright.report.WallsAtHand;
import mullwright.report.ifc.IfcModel;
import mullwright.workspace.Cancel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a wall as an IFC4 file, for the models of the other trades. */
@Command(
    name = "ifc",
    description =
        "A wall as an IFC4 file, for coordination: members, lites, anchors and openings in their"
            + " places, with marks and quantities.",
    mixinStandardHelpOptions = true)
final class IfcCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Targets targets = new Targets();

  @Option(
      names = "--wall",
      paramLabel = "NAME",
      description = "The wall, where the files hold several.")
  private String name;

  @Option(
      names = {"-o", "--to"},
      paramLabel = "FILE",
      description = "The file to write; else it goes to standard output.")
  private String to;

  @Option(
      names = "--time",
      paramLabel = "TIME",
      description =
          "The time to stand in its header, such as 2026-05-04T10:30:00. Unless told it is a fixed"
              + " one, so that the same wall gives the same file.")
  private String time = IfcModel.NO_TIME;

  IfcCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    String made = made();
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    List<Report.WallAtHand> walls =
        new Ledgers(shell, false)
            .with(
                WallsAtHand.of(
                    opened.workspace().snapshot(), readable.paths(), opened::shown, Cancel.NEVER));
    Report.WallAtHand wall = chosen(walls);
    write(IfcModel.of(wall, made));
    if (wall.errors() > 0) {
      Say.wrong(
          shell,
          "Errors stand in this wall: pieces may be missing or in a wrong place. Run “mullwright"
              + " check "
              + wall.file()
              + "” and mend them first.");
    }
    return !readable.all() ? Exit.COULD_NOT : wall.errors() > 0 ? Exit.FINDINGS : Exit.CLEAN;
  }

  private String made() throws CannotException {
    try {
      return LocalDateTime.parse(time).format(DateTimeFormatter.ISO_LOCAL_DATE_TIME);
    } catch (DateTimeException unreadable) {
      throw new CannotException(
          "--time “" + time + "” is no time: write it like 2026-05-04T10:30:00.");
    }
  }

  private Report.WallAtHand chosen(List<Report.WallAtHand> walls) throws CannotException {
    List<Report.WallAtHand> chosen =
        walls.stream()
            .filter(wall -> name == null || wall.facts().wall().name().equals(name))
            .toList();
    if (chosen.size() == 1) {
      return chosen.get(0);
    }
    if (walls.isEmpty()) {
      throw new CannotException("No wall stands in these files, so there is nothing to write.");
    }
    String known =
        walls.stream()
            .map(wall -> "“" + wall.facts().wall().name() + "” in " + wall.file())
            .collect(Collectors.joining(", "));
    if (chosen.isEmpty()) {
      throw new CannotException("There is no wall “" + name + "” here; there is " + known + ".");
    }
    throw new CannotException(
        "An IFC file holds one wall, since nothing says how walls stand to each other: choose one"
            + " with its file or with --wall. There is "
            + known
            + ".");
  }

  private void write(String text) throws CannotException {
    if (to == null) {
      shell.out().print(text);
      return;
    }
    Path path = WallFinder.path(shell.directory(), to);
    try {
      Files.writeString(path, text);
    } catch (IOException failed) {
      throw new CannotException("“" + to + "” cannot be written: " + failed.getMessage() + ".");
    }
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new IfcCommand(shell);
    }
  }
}
