package mullwright.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import mullwright.check.Rules;
import mullwright.drawing.Paper;
import mullwright.drawing.Sheet;
import mullwright.drawing.TitleBlock;
import mullwright.drawing.dxf.Dxf;
import mullwright.drawing.elevation.Elevation;
import mullwright.drawing.elevation.ElevationOptions;
import mullwright.drawing.elevation.ElevationSheets;
import mullwright.drawing.pdf.Pdf;
import mullwright.drawing.svg.Svg;
import mullwright.report.DrawnWall;
import mullwright.report.Report;
import mullwright.report.WallsAtHand;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;

/**
 * Measures how long the elevation of a wall takes, warm, in each form.
 *
 * <p>From the folder of the whole project, after {@code mvn -o -q package -DskipTests}:
 *
 * <pre>{@code
 * java -cp language-server/target/test-classes:language-server/target/mullwright.jar \
 *     mullwright.bench.DrawingBench [RUNS [PATH]]
 * }</pre>
 */
public final class DrawingBench {
  private DrawingBench() {}

  public static void main(String[] args) throws Exception {
    int runs = args.length > 0 ? Integer.parseInt(args[0]) : 40;
    System.out.printf("%-34s %-22s %12s %12s%n", "wall", "what", "p50, ms", "p90, ms");
    for (String path :
        List.of(
            "ferry-terminal/east.wall", "library-corner/reading-room.wall", "tower/north.wall")) {
      if (args.length < 2 || args[1].equals(path)) {
        wall(path, runs);
      }
    }
  }

  private static void wall(String path, int runs) throws Exception {
    Path examples = Path.of("examples").toAbsolutePath();
    Snapshot snapshot = new Workspace(new DiskFiles(examples), Rules.find()).snapshot();
    Report.WallAtHand found =
        WallsAtHand.of(snapshot, List.of(path), shown -> shown, Cancel.NEVER).get(0);
    DrawnWall wall = DrawnWall.of(found, snapshot, path);
    ElevationOptions options = ElevationOptions.of(found.units(), wall.labels());
    Elevation whole = Elevation.of(wall.layout(), options);
    tell(path, "SVG, whole", runs, () -> Svg.inline(Elevation.of(wall.layout(), options), "x"));
    tell(path, "of this, writing", runs, () -> Svg.inline(whole, "x"));
    tell(path, "DXF, whole", runs, () -> Dxf.of(whole, found.units()));
    Paper paper = Paper.named("ANSI-D").orElseThrow();
    TitleBlock block = wall.titleBlock();
    List<Sheet> sheets =
        ElevationSheets.of(wall.layout(), options, Optional.empty(), paper, block, wall.notes());
    tell(path, "PDF, " + sheets.size() + " sheets", Math.max(5, runs / 4), () -> pdf(sheets));
  }

  private static int pdf(List<Sheet> sheets) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Pdf.write("bench", sheets, out);
    return out.size();
  }

  private static void tell(String wall, String what, int runs, Callable<?> job) throws Exception {
    double[] times = new double[runs];
    for (int i = -runs; i < runs; i++) {
      long start = System.nanoTime();
      job.call();
      times[Math.max(i, 0)] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%-34s %-22s %12.1f %12.1f%n",
        wall,
        what,
        times[runs / 2],
        times[runs * 9 / 10]);
  }
}
