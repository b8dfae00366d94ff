package mullwright.bench;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import mullwright.analysis.glass.GlassFailurePrediction;
import mullwright.analysis.glass.LargeDeflectionPlate;

/**
 * Measures a lite nobody has asked of before, of a size no other has: its load resistance, its
 * response to one pressure, and both together, which must not take more than 5 ms.
 *
 * <p>From the folder of the whole project, after {@code mvn -o -q test-compile}:
 *
 * <pre>{@code
 * java -cp language-server/target/classes:language-server/target/test-classes:LIBRARIES \
 *     mullwright.bench.GlassBench
 * }</pre>
 *
 * <p>Told are the first lite of a fresh machine, the median of the next 20, and the median and the
 * slowest once warm, in milliseconds of one processor.
 */
public final class GlassBench {
  private static final int LITES = 400;

  private GlassBench() {}

  public static void main(String[] arguments) {
    // of the processor, so that neighbours on the machine do not count
    ThreadMXBean time = ManagementFactory.getThreadMXBean();
    double[] loads = new double[LITES];
    double[] responses = new double[LITES];
    double[] lites = new double[LITES];
    for (int i = 0; i < LITES; i++) {
      double width = 1.2 + i * 0.002;
      long start = time.getCurrentThreadCpuTime();
      boolean solved =
          GlassFailurePrediction.solve(GlassFailurePrediction.Lite.charted(width, 1.2, 0.00556))
              .solved()
              .isPresent();
      long middle = time.getCurrentThreadCpuTime();
      solved &=
          LargeDeflectionPlate.solve(
                  new LargeDeflectionPlate.Lite(width, 1.2, 0.00556, 71.7e9, 0.22, 1500))
              .solved()
              .isPresent();
      long end = time.getCurrentThreadCpuTime();
      if (!solved) {
        throw new IllegalStateException("no answer for width " + width);
      }
      loads[i] = (middle - start) / 1e6;
      responses[i] = (end - middle) / 1e6;
      lites[i] = loads[i] + responses[i];
    }
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    print(out, "non-factored load", loads);
    print(out, "response to one pressure", responses);
    print(out, "a lite, both", lites);
  }

  private static void print(PrintStream out, String what, double[] times) {
    double[] later = Arrays.copyOfRange(times, LITES / 2, LITES);
    Arrays.sort(later);
    double[] early = Arrays.copyOfRange(times, 1, 21);
    Arrays.sort(early);
    out.printf(
        Locale.ROOT,
        "%s: first %.1f ms, median of the next 20 %.2f ms, median once warm %.2f ms, slowest then %.2f ms%n",
        what,
        times[0],
        early[10],
        later[later.length / 2],
        later[later.length - 1]);
  }
}
