package mullwright.analysis.glass;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/**
 * Prints how long a lite takes: the first ones of a fresh machine, and the median of later ones,
 * for the non-factored load and for the response to one pressure.
 */
final class LiteSpeedMain {
  private static final int LITES = 400;

  private LiteSpeedMain() {}

  public static void main(String[] arguments) {
    double[] loads = new double[LITES];
    double[] responses = new double[LITES];
    for (int i = 0; i < LITES; i++) {
      double width = 1.2 + i * 0.002;
      long start = System.nanoTime();
      boolean solved =
          GlassFailurePrediction.solve(GlassFailurePrediction.Lite.charted(width, 1.2, 0.00556))
              .solved()
              .isPresent();
      long middle = System.nanoTime();
      solved &=
          LargeDeflectionPlate.solve(
                  new LargeDeflectionPlate.Lite(width, 1.2, 0.00556, 71.7e9, 0.22, 1500))
              .solved()
              .isPresent();
      long end = System.nanoTime();
      if (!solved) {
        throw new IllegalStateException("no answer for width " + width);
      }
      loads[i] = (middle - start) / 1e6;
      responses[i] = (end - middle) / 1e6;
    }
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    print(out, "non-factored load", loads);
    print(out, "response to one pressure", responses);
  }

  private static void print(PrintStream out, String what, double[] times) {
    double[] later = Arrays.copyOfRange(times, LITES / 2, LITES);
    Arrays.sort(later);
    double[] early = Arrays.copyOfRange(times, 1, 21);
    Arrays.sort(early);
    out.printf(
        Locale.ROOT,
        "%s: first %.1f ms, median of the next 20 %.2f ms, median once warm %.2f ms%n",
        what,
        times[0],
        early[10],
        later[later.length / 2]);
  }
}
