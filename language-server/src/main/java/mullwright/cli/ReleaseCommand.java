package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import mullwright.check.Severity;
import mullwright.model.Remarked;
import mullwright.report.CheckReport;
import mullwright.syntax.Remark;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the record of a wall that is released. */
@Command(
    name = "release",
    description = {
      "Write the record of a released wall: hashes of its text, of all it uses, of tickets, cutting"
          + " plans, lists and drawings made from them, and of other files handed out.",
      "Errors, and hold or verify remarks in the text, block it."
    },
    mixinStandardHelpOptions = true)
final class ReleaseCommand implements Callable<Integer> {
  /** What the name of a ledger of marks ends with: {@code east.marks} beside {@code east.wall}. */
  private static final String LEDGER = ".marks";

  private final Shell shell;

  @Parameters(paramLabel = "WALL", description = "The wall file.")
  private String wall;

  @Option(
      names = "--as",
      paramLabel = "NAME",
      required = true,
      description = "What it is released as: \"Rev B\".")
  private String as;

  @Option(
      names = "--with",
      paramLabel = "FILE",
      description =
          "A file handed out with it; several times. The ledger of marks beside the wall is always in.")
  private List<String> with = new ArrayList<>();

  @Option(
      names = "--record",
      paramLabel = "FILE",
      description = "Where the record goes; beside the wall, with .release.json, unless said.")
  private String record;

  @Option(
      names = "--root",
      paramLabel = "DIR",
      description = "Folder the paths in the record count from.")
  private String root;

  ReleaseCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    Path file = WallFinder.path(shell.directory(), wall);
    if (!Files.isRegularFile(file)) {
      throw new CannotException("There is no file “" + wall + "”.");
    }
    Opened opened = Targets.open(shell, List.of(file), root);
    Releases releases = new Releases(shell, opened.disk(), opened.paths().get(0));
    List<String> blocks = blocks(opened.paths().get(0), releases);
    if (!blocks.isEmpty()) {
      blocks.forEach(words -> Say.wrong(shell, words));
      Say.wrong(shell, "“" + wall + "” is not released.");
      return Exit.FINDINGS;
    }
    List<String> given = new ArrayList<>();
    ledger(file).flatMap(opened.disk()::relative).ifPresent(given::add);
    for (String one : with) {
      Path named = WallFinder.path(shell.directory(), one);
      String below =
          opened
              .disk()
              .relative(named)
              .filter(any -> Files.isRegularFile(named))
              .orElseThrow(() -> new CannotException("“" + one + "” is no file below the root."));
      given.add(below);
    }
    Path to =
        record == null
            ? file.resolveSibling(file.getFileName() + ".release.json")
            : WallFinder.path(shell.directory(), record);
    try {
      Files.writeString(to, releases.record(as, given).write(), StandardCharsets.UTF_8);
    } catch (IOException failed) {
      throw new CannotException("“" + to + "” cannot be written: " + failed.getMessage() + ".");
    }
    shell.out().println(Shown.path(shell.directory(), to) + ": " + wall + " released as " + as);
    return Exit.CLEAN;
  }

  /** The ledger of marks beside the wall, if it has one. */
  private static Optional<Path> ledger(Path wall) {
    String name = wall.getFileName().toString();
    Path beside = wall.resolveSibling(name.replaceFirst("\\.wall$", "") + LEDGER);
    return Optional.of(beside).filter(Files::isRegularFile);
  }

  /** Why it may not be released; empty if it may. */
  private static List<String> blocks(String path, Releases releases) {
    List<String> blocks = new ArrayList<>();
    CheckReport report = releases.check();
    long errors = report.count(Severity.ERROR);
    if (errors > 0) {
      blocks.add(
          errors
              + (errors == 1 ? " error stands" : " errors stand")
              + " in it; “mullwright check "
              + path
              + "” tells them.");
    }
    if (report.walls() == 0) {
      blocks.add("No wall stands in it.");
    }
    for (Remarked remark :
        releases.snapshot().reading(path).map(read -> read.model().remarks()).orElse(List.of())) {
      if (remark.kind() != Remark.Kind.NOTE) {
        int line =
            releases
                .snapshot()
                .place(remark.origin())
                .flatMap(
                    place ->
                        releases
                            .snapshot()
                            .file(place.path())
                            .map(file -> file.lines().line(place.start()) + 1))
                .orElse(1);
        boolean hold = remark.kind() == Remark.Kind.HOLD;
        blocks.add(
            remark.origin().file()
                + ":"
                + line
                + ": "
                + (hold ? "held: " : "to be taken in the field: ")
                + remark.text());
      }
    }
    return blocks;
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new ReleaseCommand(shell);
    }
  }
}
