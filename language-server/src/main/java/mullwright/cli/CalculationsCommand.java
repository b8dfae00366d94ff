package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import mullwright.report.CalculationsReport;
import mullwright.report.Document;
import mullwright.report.DocumentJson;
import mullwright.report.DocumentPdf;
import mullwright.report.MarkdownWriter;
import mullwright.report.Report;
import mullwright.report.TextWriter;
import mullwright.report.WallsAtHand;
import mullwright.workspace.Cancel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Gathers the numbers behind the checks, for the engineer who reviews them. */
@Command(
    name = "calculations",
    description =
        "Moments, stresses, deflections, reactions and movements, with how the governing ones came"
            + " about.",
    mixinStandardHelpOptions = true)
final class CalculationsCommand implements Callable<Integer> {
  /** Forms the answer comes in. */
  enum Output {
    TEXT,
    MARKDOWN,
    PDF,
    JSON
  }

  private final Shell shell;

  @Mixin private Targets targets = new Targets();
  @Mixin private Looks looks = new Looks();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description =
          "text, markdown, pdf (to standard output: send it to a file), or json (by the schema"
              + " document.schema.json).")
  private Output output = Output.TEXT;

  @Option(names = "--each", description = "Every piece by itself, instead of equal ones together.")
  private boolean each;

  CalculationsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    int width = looks.width(shell);
    if (output == Output.PDF && shell.terminal()) {
      throw new CannotException(
          "A PDF is no text for a terminal: send it to a file, “… --output pdf > walls.pdf”.");
    }
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    List<Report.WallAtHand> walls =
        WallsAtHand.of(
            opened.workspace().snapshot(), readable.paths(), opened::shown, Cancel.NEVER);
    if (walls.isEmpty()) {
      throw new CannotException("No wall stands in these files, so there is nothing to compute.");
    }
    Document document = new CalculationsReport().make(walls, new Report.Options(each));
    switch (output) {
      case TEXT -> shell.out().print(new TextWriter(width, looks.paint(shell)).write(document));
      case MARKDOWN -> shell.out().print(new MarkdownWriter().write(document));
      case JSON -> shell.out().print(new DocumentJson().write(document));
      case PDF -> pdf(document);
    }
    boolean errors = walls.stream().anyMatch(wall -> wall.errors() > 0);
    return !readable.all() ? Exit.COULD_NOT : errors ? Exit.FINDINGS : Exit.CLEAN;
  }

  private void pdf(Document document) throws CannotException {
    try {
      DocumentPdf.write(document, shell.out());
    } catch (IOException failed) {
      throw new CannotException("The PDF cannot be written: " + failed.getMessage() + ".");
    }
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new CalculationsCommand(shell);
    }
  }
}
