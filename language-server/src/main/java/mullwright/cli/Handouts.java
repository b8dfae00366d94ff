package mullwright.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import mullwright.report.CutReport;
import mullwright.report.Document;
import mullwright.report.GlassReport;
import mullwright.report.LengthsReport;
import mullwright.report.Paint;
import mullwright.report.ReleaseRecord;
import mullwright.report.Report;
import mullwright.report.SequenceReport;
import mullwright.report.TakeoffReport;
import mullwright.report.TicketsReport;
import mullwright.report.TransmittanceReport;

/**
 * What is handed out of a wall: tickets, cutting plans, lists and drawings in every form, byte for
 * byte as the commands write them without further options.
 *
 * <p>Tables name the wall's file as it is seen from where the command is run: they are made as from
 * the folder the paths of the record count from, and as from the folder of the wall.
 */
final class Handouts {
  /** What is said of those made in the folder of the wall, where that makes them others. */
  static final String BESIDE = ", in the folder of the wall";

  private final Shell shell;
  private final Path root;
  private final Path wall;

  /**
   * Those of a wall.
   *
   * @param root folder the paths of the record count from
   * @param wall its file, below the root
   */
  Handouts(Shell shell, Path root, Path wall) {
    this.shell = shell;
    this.root = root;
    this.wall = wall;
  }

  /** Makes a document, for people or for programs. */
  private interface Making {
    Document of(List<Report.WallAtHand> walls, boolean forPeople);
  }

  /** One that is the same for both. */
  private record Plain(Report report, boolean each) implements Making {
    @Override
    public Document of(List<Report.WallAtHand> walls, boolean forPeople) {
      return report.make(walls, new Report.Options(each));
    }
  }

  private static Making plain(Report report, boolean each) {
    return new Plain(report, each);
  }

  private static Map<String, Making> tables() {
    Map<String, Making> all = new LinkedHashMap<>();
    all.put("takeoff", plain(new TakeoffReport(), false));
    all.put("cut", plain(new CutReport(), false));
    all.put("cut --each", plain(new CutReport(), true));
    all.put("tickets", plain(new TicketsReport(), false));
    all.put("glass", plain(new GlassReport(), false));
    all.put("lengths", plain(new LengthsReport(), false));
    all.put("lengths --each", plain(new LengthsReport(), true));
    all.put("transmittance", plain(new TransmittanceReport(), false));
    all.put(
        "sequence",
        (walls, forPeople) ->
            new SequenceReport(1, forPeople).make(walls, new Report.Options(false)));
    return all;
  }

  /**
   * The hash of each by the words of the command that writes it.
   *
   * @param walls of the file, shown as from the root
   */
  SortedMap<String, String> hashes(List<Report.WallAtHand> walls) throws CannotException {
    SortedMap<String, String> hashes = new TreeMap<>();
    for (Map.Entry<String, Making> each : tables().entrySet()) {
      Document read = made(each.getValue(), walls, true);
      Document taken =
          each.getValue() instanceof Plain ? read : made(each.getValue(), walls, false);
      for (Tables.Output output : Tables.Output.values()) {
        String words = each.getKey() + " --output " + output.name().toLowerCase(Locale.ROOT);
        put(words, output.forPeople() ? read : taken, output, hashes);
      }
    }
    for (String form : List.of("pdf", "svg", "dxf")) {
      drawings(form, hashes);
    }
    return hashes;
  }

  // a ledger takes note of the marks it is asked for: each document has its own
  private Document made(Making making, List<Report.WallAtHand> walls, boolean forPeople)
      throws CannotException {
    return making.of(new Ledgers(shell.in(root), false).with(walls), forPeople);
  }

  private void put(
      String words, Document document, Tables.Output output, SortedMap<String, String> hashes) {
    String whole = hash(document, output);
    String beside = hash(shownBeside(document), output);
    hashes.put(words, whole);
    if (!beside.equals(whole)) {
      hashes.put(words + BESIDE, beside);
    }
  }

  private static String hash(Document document, Tables.Output output) {
    return ReleaseRecord.hash(Tables.bytes(document, output, Looks.USUAL_WIDTH, Paint.NONE));
  }

  private Document shownBeside(Document document) {
    String name = wall.getFileName().toString();
    return new Document(
        document.name(),
        document.title(),
        document.sections().stream()
            .map(
                it -> new Document.Section(it.title(), name, it.wall(), it.warnings(), it.tables()))
            .toList(),
        document.closing());
  }

  private void drawings(String form, SortedMap<String, String> hashes) throws CannotException {
    try (ScratchFolder folder = ScratchFolder.make()) {
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      Shell quiet =
          new Shell(
              new ByteArrayInputStream(new byte[0]),
              new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8),
              new PrintStream(said, false, StandardCharsets.UTF_8),
              root,
              Map.of(),
              false);
      String words = "draw --output " + form;
      int code =
          CommandRun.run(
              quiet, "draw", wall.toString(), "--output", form, "--to", folder.path().toString());
      if (code == Exit.COULD_NOT) {
        throw new CannotException(
            "The drawings cannot be made. " + said.toString(StandardCharsets.UTF_8).strip());
      }
      try (Stream<Path> made = Files.list(folder.path())) {
        for (Path file : made.sorted().toList()) {
          hashes.put(
              words + ": " + file.getFileName(), ReleaseRecord.hash(Files.readAllBytes(file)));
        }
      }
    } catch (IOException failed) {
      throw new CannotException("The drawings cannot be made: " + failed.getMessage() + ".");
    }
  }
}
