package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.check.Rules;
import mullwright.drawing.Drawing;
import mullwright.drawing.Golden;
import mullwright.drawing.OtherPrograms;
import mullwright.drawing.Paper;
import mullwright.drawing.Sheet;
import mullwright.drawing.dxf.Dxf;
import mullwright.drawing.pdf.Pdf;
import mullwright.report.DrawingSet;
import mullwright.report.DrawingView;
import mullwright.report.DrawnWall;
import mullwright.report.Report;
import mullwright.report.WallsAtHand;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Details, pieces and order: against stored sheets, and as other programs read them. */
class GoldenSheetsTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  @TempDir Path folder;

  private static DrawnWall wall(String path) {
    Snapshot snapshot = new Workspace(new DiskFiles(EXAMPLES), Rules.find()).snapshot();
    Report.WallAtHand wall =
        WallsAtHand.of(snapshot, List.of(path), any -> any, Cancel.NEVER).get(0);
    return DrawnWall.of(wall, snapshot, path);
  }

  private static DrawingView view(String name) {
    return DrawingSet.views().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static DrawingView.Wanted wanted(String paper) {
    return new DrawingView.Wanted(Paper.named(paper).orElseThrow(), Optional.empty(), true);
  }

  private static List<Sheet> sheets(String path, String view) {
    return view(view).sheets(wall(path), wanted("A3"));
  }

  @ParameterizedTest
  @CsvSource({
    "library-corner/reading-room.wall, details",
    "first-wall/lobby.wall, pieces",
    "first-wall/lobby.wall, order"
  })
  void elementByElement(String path, String view) throws Exception {
    Golden.elements(sheets(path, view).get(0), view);
  }

  @ParameterizedTest
  @CsvSource({
    "library-corner/reading-room.wall, details",
    "first-wall/lobby.wall, pieces",
    "first-wall/lobby.wall, order"
  })
  void asAPicture(String path, String view) throws Exception {
    Golden.picture(sheets(path, view).get(0), view);
  }

  @ParameterizedTest
  @CsvSource({
    "first-wall/lobby.wall, details",
    "library-corner/reading-room.wall, details",
    "first-wall/lobby.wall, pieces",
    "first-wall/lobby.wall, order"
  })
  void anAuditOfTheExchangeFileFindsNothing(String path, String view) throws Exception {
    DrawnWall wall = wall(path);
    List<Drawing> drawings = view(view).uncut(wall, wanted("A3"));
    assertThat(drawings).isNotEmpty();
    for (Drawing drawing : drawings) {
      Path file = folder.resolve(view + ".dxf");
      Files.writeString(file, Dxf.of(drawing, wall.wall().units()));
      // AC1009: release 12 (DXF reference, from memory)
      assertThat(new OtherPrograms(folder).audit(file)).matches("AC1009 0 0 \\d+");
    }
  }

  // by hand: the catalog's cap is 2 1/2" wide, the joint takes its default of 1/2"; the lobby's
  // head
  // stands 12'-4" and its sill 2" above L1, each 2 1/2" wide: 148 + 1 1/4 - (2 - 1 1/4) = 148 1/2
  // in
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "details | face cap 2 1/2\" | joint 1/2\" (default)",
        "pieces | 12'-4 1/2\" | V1 1 piece, vertical of jamb-6",
        "order | Step 1: set clip of vertical A at sill. | Order of work"
      })
  void textOfAPdfIsFoundByAnotherProgram(String view, String one, String other) throws Exception {
    OtherPrograms programs = new OtherPrograms(folder);
    assumeTrue(
        programs.there("pdftotext", "-v"), "skipped: no pdftotext here; Debian: poppler-utils");
    Path file = folder.resolve("view.pdf");
    try (OutputStream out = Files.newOutputStream(file)) {
      Pdf.write(view, sheets("first-wall/lobby.wall", view), out);
    }
    String text =
        programs
            .run("pdftotext", "-layout", file.toString(), "-")
            .out()
            .lines()
            .map(line -> line.strip().replaceAll(" +", " "))
            .collect(Collectors.joining("\n"));
    assertThat(text).contains(one, other);
  }
}
