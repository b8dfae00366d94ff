package mullwright.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import mullwright.report.CsvWriter;
import mullwright.report.Document;
import mullwright.report.DocumentJson;
import mullwright.report.DocumentWriter;
import mullwright.report.MarkdownWriter;
import mullwright.report.Paint;
import mullwright.report.Report;
import mullwright.report.TextWriter;
import mullwright.report.WallsAtHand;
import mullwright.report.XlsxWriter;
import mullwright.workspace.Cancel;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all commands that print a report's tables have in common: files, walls, forms. */
final class Tables {
  /** Forms the answer comes in. */
  enum Output {
    TEXT,
    MARKDOWN,
    CSV,
    JSON,
    XLSX;

    /** True if it is to be read, and not taken in by a program. */
    boolean forPeople() {
      return this == TEXT || this == MARKDOWN;
    }
  }

  @Mixin private Targets targets = new Targets();
  @Mixin private Looks looks = new Looks();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description =
          "text, markdown, csv, json (by the schema document.schema.json) or xlsx (a workbook, to be"
              + " sent into a file).")
  private Output output = Output.TEXT;

  @Option(
      names = "--wall",
      paramLabel = "NAME",
      description = "Only the wall of that name; may be given several times.")
  private List<String> names = new ArrayList<>();

  /** True if the answer is to be read, and not taken in by a program. */
  boolean forPeople() {
    return output.forPeople();
  }

  /** Makes the report of the walls asked for and prints it; the exit code. */
  int print(Shell shell, Report report, Report.Options options) throws CannotException {
    return print(shell, report, options, false);
  }

  /**
   * The same.
   *
   * @param issue true to write marks into the ledgers that are not in them yet
   */
  int print(Shell shell, Report report, Report.Options options, boolean issue)
      throws CannotException {
    return print(shell, walls -> report.make(walls, options), issue);
  }

  /** The same of a document made in a way of its own. */
  int print(Shell shell, Function<List<Report.WallAtHand>, Document> make) throws CannotException {
    return print(shell, make, false);
  }

  private int print(Shell shell, Function<List<Report.WallAtHand>, Document> make, boolean issue)
      throws CannotException {
    int width = looks.width(shell);
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    List<Report.WallAtHand> walls =
        chosen(
            WallsAtHand.of(
                opened.workspace().snapshot(), readable.paths(), opened::shown, Cancel.NEVER));
    if (issue && walls.stream().anyMatch(wall -> wall.errors() > 0)) {
      throw new CannotException(
          "No marks are issued while errors stand in the walls: run “mullwright check” and mend them"
              + " first.");
    }
    Ledgers ledgers = new Ledgers(shell, issue);
    walls = ledgers.with(walls);
    Document document = make.apply(walls);
    if (output == Output.XLSX && shell.terminal()) {
      throw new CannotException(
          "A workbook is no text for a terminal: send it into a file, “> FILE”.");
    }
    byte[] bytes = bytes(document, output, width, looks.paint(shell));
    shell.out().write(bytes, 0, bytes.length);
    ledgers.keep(walls);
    if (!readable.all()) {
      return Exit.COULD_NOT;
    }
    boolean errors = walls.stream().anyMatch(wall -> wall.errors() > 0);
    if (errors && (output == Output.CSV || output == Output.XLSX)) {
      // the other forms say so in their first lines
      Say.wrong(shell, "Errors stand in these walls: figures may be wrong or missing.");
    }
    return errors ? Exit.FINDINGS : Exit.CLEAN;
  }

  /** A document in a form, as it is printed. */
  static byte[] bytes(Document document, Output output, int width, Paint paint) {
    return switch (output) {
      case TEXT -> text(new TextWriter(width, paint), document);
      case MARKDOWN -> text(new MarkdownWriter(), document);
      case CSV -> text(new CsvWriter(), document);
      case JSON -> text(new DocumentJson(), document);
      case XLSX -> new XlsxWriter().write(document);
    };
  }

  private static byte[] text(DocumentWriter writer, Document document) {
    return writer.write(document).getBytes(StandardCharsets.UTF_8);
  }

  private List<Report.WallAtHand> chosen(List<Report.WallAtHand> walls) throws CannotException {
    return ChosenWalls.of(walls, names, wall -> wall.facts().wall().name(), "tell");
  }
}
