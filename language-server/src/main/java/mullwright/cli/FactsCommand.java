package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.concurrent.Callable;
import mullwright.check.Rules;
import mullwright.check.WallFacts;
import mullwright.quantity.UnitSystem;
import mullwright.report.FactsText;
import mullwright.workspace.MemoryFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the facts of walls one a line, for version control to compare. */
@Command(
    name = "facts",
    description = {
      "Every fact of the walls in a file, one a line in a fixed order, whatever the layout of the"
          + " text.",
      "Used files are not followed, so that copies git hands over read like the file itself; as"
          + " git's textconv: git config diff.wall.textconv \"mullwright facts\"."
    },
    mixinStandardHelpOptions = true)
final class FactsCommand implements Callable<Integer> {
  private static final String ALONE = "it.wall";

  private final Shell shell;

  @Parameters(paramLabel = "FILE", description = "A wall file.")
  private String file;

  @Option(names = "--parts", description = "The parts of the file's own catalog as well.")
  private boolean parts;

  FactsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    String text = WallText.read(WallFinder.path(shell.directory(), file), file).text();
    Snapshot snapshot =
        new Workspace(new MemoryFiles(Map.of(ALONE, text)), Rules.find()).snapshot();
    UnitSystem units = FactsText.units(snapshot.file(ALONE));
    for (WallFacts wall : snapshot.reading(ALONE).orElseThrow().walls()) {
      shell.out().print(FactsText.of(wall, units, parts));
    }
    return Exit.CLEAN;
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new FactsCommand(shell);
    }
  }
}
