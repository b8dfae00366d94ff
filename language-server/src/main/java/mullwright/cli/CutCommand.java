package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.concurrent.Callable;
import mullwright.report.CsvWriter;
import mullwright.report.CutReport;
import mullwright.report.DocumentJson;
import mullwright.report.DocumentWriter;
import mullwright.report.MarkdownWriter;
import mullwright.report.Report;
import mullwright.report.TextWriter;
import mullwright.report.WallsAtHand;
import mullwright.takeoff.nesting.Limits;
import mullwright.workspace.Cancel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans which pieces are cut from which bars. */
@Command(
    name = "cut",
    description =
        "Which pieces are cut from which bars, bars to buy, drops and waste; the walls given share"
            + " bars.",
    mixinStandardHelpOptions = true)
final class CutCommand implements Callable<Integer> {
  private static final int MOST_SECONDS = 3600;

  /** Forms the answer comes in. */
  enum Output {
    TEXT,
    MARKDOWN,
    CSV,
    JSON
  }

  private final Shell shell;

  @Mixin private Targets targets = new Targets();
  @Mixin private Looks looks = new Looks();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description = "text, markdown, csv, or json (by the schema document.schema.json).")
  private Output output = Output.TEXT;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description =
          "How long to look for a better plan or a proof that there is none, for each part; 1 to"
              + " 3600, 2 if not given. Counted in steps, so that every machine gives the same"
              + " plan; the clock only stops a machine ten times slower, and the report says so.")
  private int seconds = CutReport.SECONDS;

  @Option(names = "--each", description = "Every bar by itself, with where each piece begins.")
  private boolean each;

  @Option(
      names = "--proof",
      description = "Adds the prices by which anyone can check that no plan does better.")
  private boolean proof;

  CutCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    if (seconds < 1 || seconds > MOST_SECONDS) {
      throw new CannotException(
          "--seconds " + seconds + " is out of range: give 1 to " + MOST_SECONDS + ".");
    }
    int width = looks.width(shell);
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    List<Report.WallAtHand> walls =
        WallsAtHand.of(
            opened.workspace().snapshot(), readable.paths(), opened::shown, Cancel.NEVER);
    if (walls.isEmpty()) {
      throw new CannotException("No wall stands in these files, so there is nothing to cut.");
    }
    DocumentWriter writer =
        switch (output) {
          case TEXT -> new TextWriter(width, looks.paint(shell));
          case MARKDOWN -> new MarkdownWriter();
          case CSV -> new CsvWriter();
          case JSON -> new DocumentJson();
        };
    shell
        .out()
        .print(
            writer.write(
                new CutReport()
                    .make(walls, new CutReport.Wanted(each, proof, Limits.report(seconds)))));
    if (!readable.all()) {
      return Exit.COULD_NOT;
    }
    boolean errors = walls.stream().anyMatch(wall -> wall.errors() > 0);
    if (errors && output == Output.CSV) {
      // the other forms say so in their first lines
      Say.wrong(shell, "Errors stand in these walls: lengths may be wrong or missing.");
    }
    return errors ? Exit.FINDINGS : Exit.CLEAN;
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new CutCommand(shell);
    }
  }
}
