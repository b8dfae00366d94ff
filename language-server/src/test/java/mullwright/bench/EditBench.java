package mullwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import mullwright.check.Rules;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;

/**
 * Measures, inside one process, which stage of the answer to an edit costs what: tree, model,
 * findings. What has to be laid out and solved again is no stage of its own: it is done for the
 * rules that ask, and of a wide wall around what changed only.
 *
 * <p>From the folder of the whole project, after {@code mvn -o -q package -DskipTests}:
 *
 * <pre>{@code
 * java -cp language-server/target/test-classes:language-server/target/mullwright.jar \
 *     mullwright.bench.EditBench [EDITS [PATH]]
 * }</pre>
 *
 * <p>The edit is that of {@link ServerBench}: all bays of the first wall a sixteenth wider and
 * back. One text holds a hundred towers, which needs {@code -Xmx1g}: what an edit costs should
 * follow the wall it is in, not the file. Then come towers of 5, 10 and 100 times as many bays and
 * floors, in which {@linkplain LocalEdit one thing} changes at a time ({@code -Xmx2g} for all).
 */
public final class EditBench {
  private static final String[] STAGES = {"tree", "model", "findings", "all"};

  private final Workspace workspace;
  private final int edits;
  private final double[][] times;

  private EditBench(Workspace workspace, int edits) {
    this.workspace = workspace;
    this.edits = edits;
    this.times = new double[STAGES.length][edits];
  }

  public static void main(String[] args) throws IOException {
    int edits = args.length > 0 ? Integer.parseInt(args[0]) : 300;
    Path examples = Path.of("examples").toAbsolutePath();
    System.out.printf("%-28s", "p50 / p99, ms");
    for (String stage : STAGES) {
      System.out.printf(" %13s", stage);
    }
    System.out.println();
    String tower = Files.readString(examples.resolve("tower/north.wall"));
    String[][] texts = {
      {"ferry-terminal/east.wall", Files.readString(examples.resolve("ferry-terminal/east.wall"))},
      {"tower/north.wall", tower},
      {"tower/long.wall", GeneratedWalls.file(2000)},
      {"tower/hundred.wall", GeneratedWalls.times(100, tower)}
    };
    for (String[] text : texts) {
      if (args.length > 1 && !args[1].equals(text[0])) {
        continue;
      }
      int at = text[1].indexOf(" @ ") + 3;
      String was = text[1].substring(at, text[1].indexOf('"', at) + 1);
      new EditBench(new Workspace(new DiskFiles(examples), Rules.find()), edits)
          .run(text[0], text[1], at, was, "5'-0 1/16\"");
    }
    double[] first = new double[LocalEdit.ALL.size()];
    for (int[] size : new int[][] {{12, 20}, {24, 50}, {40, 60}, {120, 200}}) {
      String path = "tower/" + size[0] + "-by-" + size[1] + ".wall";
      if (args.length > 1 && !args[1].equals(path)) {
        continue;
      }
      String text = GeneratedWalls.tower(tower, size[0], size[1]);
      Workspace workspace = new Workspace(new DiskFiles(examples), Rules.find());
      int runs = Math.max(3, edits * 240 / (size[0] * size[1]));
      for (int i = 0; i < first.length; i++) {
        LocalEdit edit = LocalEdit.ALL.get(i);
        double all =
            new EditBench(workspace, runs)
                .run(path, text, text.indexOf(edit.one()), edit.one(), edit.other());
        first[i] = first[i] == 0 ? all : first[i];
        System.out.printf(
            Locale.ROOT, "    %s: %.1f times the first%n", edit.name(), all / first[i]);
      }
    }
  }

  /** The median of all stages [ms] of an edit that puts one text in the place of another. */
  private double run(String path, String text, int at, String was, String other) {
    workspace.open(path, text);
    workspace.snapshot().findings(List.of(path), Cancel.NEVER);
    String[] both = {other, was};
    int length = was.length();
    for (int i = -edits; i < edits; i++) {
      String now = both[Math.floorMod(i, 2)];
      edit(path, at, length, now, Math.max(i, 0));
      length = now.length();
    }
    List<String> cells = new ArrayList<>();
    for (double[] stage : times) {
      Arrays.sort(stage);
      cells.add(
          String.format(
              Locale.ROOT, "%13s", String.format("%.2f / %.2f", stage[edits / 2], at99(stage))));
    }
    System.out.printf("%-28s %s%n", path, String.join(" ", cells));
    return times[STAGES.length - 1][edits / 2];
  }

  private double at99(double[] sorted) {
    return sorted[Math.min(edits - 1, edits * 99 / 100)];
  }

  private void edit(String path, int at, int length, String now, int run) {
    long start = System.nanoTime();
    Snapshot after = timed(0, run, () -> workspace.change(path, at, at + length, now));
    timed(1, run, () -> after.reading(path).orElseThrow());
    timed(2, run, () -> after.findings(List.of(path), Cancel.NEVER));
    times[3][run] = (System.nanoTime() - start) / 1e6;
  }

  private <T> T timed(int stage, int run, Supplier<T> job) {
    long start = System.nanoTime();
    T result = job.get();
    times[stage][run] = (System.nanoTime() - start) / 1e6;
    return result;
  }
}
