package mullwright.syntax;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntFunction;
import mullwright.format.Formatter;

/**
 * Prints how long a keystroke, a first reading and a layout take for generated walls of 2,000 and
 * 20,000 lines; run by hand, judged by the median.
 */
public final class ReadingBench {
  private static final int KEYSTROKES = 2_000;

  private ReadingBench() {}

  /** Runs all. */
  public static void main(String[] arguments) {
    for (int lines : new int[] {2_000, 20_000}) {
      String text = walls(lines);
      long start = System.nanoTime();
      ParsedFile file = ParsedFile.parse(text);
      report(System.out, lines + " lines, first reading", System.nanoTime() - start);
      times(System.out, lines + " lines, reading", 20, i -> ParsedFile.parse(text));
      times(System.out, lines + " lines, layout", 20, i -> Formatter.edits(file));
      int middle = text.indexOf("spaced", text.length() / 2);
      ParsedFile[] now = {file};
      times(
          System.out,
          lines + " lines, keystroke",
          KEYSTROKES,
          i -> now[0] = now[0].edit(middle, middle + i % 2, i % 2 == 0 ? "x" : ""));
    }
  }

  /** Walls of about 33 lines each. */
  static String walls(int lines) {
    StringBuilder text = new StringBuilder();
    for (int wall = 0; wall * 33 < lines; wall++) {
      text.append("/// The wall of bay ").append(wall).append("\nwall W").append(wall);
      text.append(" {\n  system captured-6\n  grid {\n");
      text.append("    lines A..G  spaced 6 @ 5'-0\"  // six bays\n");
      for (int floor = 1; floor <= 6; floor++) {
        text.append("    floor L").append(floor).append(" at ").append(13 * (floor - 1));
        text.append("'-0\"  slab 10\"\n    row R").append(floor).append(" at 3'-0 1/2\" above L");
        text.append(floor).append(" only B..F\n");
      }
      text.append("  }\n  members {\n    vertical A, G as jamb\n    vertical B..F as mullion\n");
      text.append("    splice B..F at 2'-0\" above L2..L6 every 2 gap 5/8\"\n  }\n  anchors {\n");
      text.append("    dead-load B..F at L2, L4 part angle-6 bolted 2 x hex-half\n");
      text.append("    wind-load A, G at L3 part slot-6 isolated by nylon-pad\n  }\n  lites {\n");
      text.append("    spandrel S1 all\n    vision V1 rows R1..R2, R4..R5\n  }\n}\n\n");
    }
    return text.toString();
  }

  private static void times(PrintStream out, String what, int count, IntFunction<Object> work) {
    long[] times = new long[count];
    for (int i = 0; i < count; i++) {
      long start = System.nanoTime();
      if (work.apply(i) == null) {
        throw new IllegalStateException("nothing was done");
      }
      times[i] = System.nanoTime() - start;
    }
    Arrays.sort(times);
    report(out, what + " p50", times[count / 2]);
    report(out, what + " p99", times[count - 1 - count / 100]);
  }

  private static void report(PrintStream out, String what, long nanoseconds) {
    out.printf(Locale.ROOT, "%-36s %9.3f ms%n", what, nanoseconds / 1e6);
  }
}
