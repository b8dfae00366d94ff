package mullwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import mullwright.bench.CuttingStockFiles.Instance;
import mullwright.takeoff.nesting.CertificateCheck;
import mullwright.takeoff.nesting.Limits;
import mullwright.takeoff.nesting.Nesting;
import mullwright.takeoff.nesting.NestingProblem;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingResult;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.PlanCheck;

/**
 * Measures how many published instances are proved optimal within a time.
 *
 * <p>From the folder of the whole project, after {@code mvn -o -q test-compile}:
 *
 * <pre>{@code
 * java -cp language-server/target/classes:language-server/target/test-classes \
 *     mullwright.bench.NestingBench FOLDER [MILLISECONDS] [-v] [-cpu] [-every=N] [-from=K] [WORDS...]
 * }</pre>
 *
 * <p>FOLDER holds {@code optima.tsv} and instance files as {@link CuttingStockFiles} reads them;
 * WORDS stand in the family or name of those wanted. A first pass over a tenth of the instances
 * warms the machine up. Every plan is checked, every certificate is verified, and a claim of
 * optimality that differs from the known optimum ends the run. {@code -v} lists what is open or
 * slow. {@code -cpu} judges by processor time instead of the clock, for a machine that others use
 * too. {@code -every=N} takes one instance in N, beginning with the one at K. Last come orders of
 * 2,000 cuts of 40 lengths, invented by a fixed rule, measured until the proof or a second.
 */
public final class NestingBench {
  private NestingBench() {}

  public static void main(String[] args) {
    List<Instance> all = CuttingStockFiles.folder(Path.of(args[0]));
    long limit = args.length > 1 ? Long.parseLong(args[1]) : 1000;
    List<String> words = args.length > 2 ? Arrays.asList(args).subList(2, args.length) : List.of();
    boolean verbose = words.contains("-v");
    // counts processor time and lets the clock run on: for a machine that others use too
    boolean processor = words.contains("-cpu");
    int every = number(words, "-every=", 1);
    int number = every - number(words, "-from=", 0) % every;
    words = words.stream().filter(w -> !w.startsWith("-")).toList();
    for (int i = 0; i < all.size(); i += 10) {
      Nesting.solve(all.get(i).problem(), Limits.milliseconds(500));
    }
    Map<String, Row> rows = new LinkedHashMap<>();
    Row orders = new Row();
    Row single = new Row();
    for (Instance instance : all) {
      if (!words.isEmpty()
          && words.stream()
              .noneMatch(w -> instance.family().contains(w) || instance.name().contains(w))) {
        continue;
      }
      if (number++ % every != 0) {
        continue;
      }
      var threads = ManagementFactory.getThreadMXBean();
      long cpu = threads.getCurrentThreadCpuTime();
      long start = System.nanoTime();
      Planned result =
          (Planned)
              Nesting.solve(
                  instance.problem(), Limits.milliseconds(processor ? 15 * limit : limit));
      double wall = (System.nanoTime() - start) / 1e6;
      double used = (threads.getCurrentThreadCpuTime() - cpu) / 1e6;
      verify(instance, result);
      if (processor) {
        wall = used;
      }
      boolean proved = result.proved() && wall <= limit + 20;
      rows.computeIfAbsent(instance.family(), k -> new Row())
          .add(instance, result, proved, wall, used);
      (instance.problem().stocks().size() > 1 || instance.family().startsWith("orders")
              ? orders
              : single)
          .add(instance, result, proved, wall, used);
      if (verbose && (!proved || wall > 300)) {
        System.out.printf(
            Locale.ROOT,
            "  %-24s cost %d bound %d optimum %d %s %.0f ms work %d M%n",
            instance.name(),
            result.cost(),
            result.lowerBound(),
            instance.optimum(),
            proved ? "proved " + result.proof() : "OPEN",
            wall,
            result.work() / 1_000_000);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%-18s %5s %7s %9s %9s %9s %9s %9s %9s %9s%n",
        "family",
        "n",
        "proved",
        "by search",
        "optimal",
        "plan gap",
        "within 1",
        "median ms",
        "worst ms",
        "cpu s");
    rows.forEach((family, row) -> row.print(family));
    single.print("one stock");
    orders.print("orders");
    large();
  }

  /** Orders as large as a tower's: 2,000 cuts of 40 lengths on bars of 24 ft, in 1/32 in. */
  private static void large() {
    System.out.printf(
        Locale.ROOT,
        "%n%-24s %9s %9s %9s %9s%n",
        "2,000 cuts of 40",
        "bars",
        "bound",
        "ms",
        "cpu ms");
    Random random = new Random(2_000);
    var threads = ManagementFactory.getThreadMXBean();
    for (int n = 1; n <= 8; n++) {
      List<Part> parts = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        parts.add(new Part(32L * 12 + random.nextInt(32 * (60 + 20 * n)), 50));
      }
      NestingProblem problem = NestingProblem.oneStock(32L * 288, parts, 4, 16);
      long cpu = threads.getCurrentThreadCpuTime();
      long start = System.nanoTime();
      Planned result = (Planned) Nesting.solve(problem, Limits.milliseconds(1000));
      System.out.printf(
          Locale.ROOT,
          "%-24s %9d %9d %9.0f %9.0f%n",
          "1' to " + (12 + 60 + 20 * n) / 12 + "'",
          result.cost(),
          result.lowerBound(),
          (System.nanoTime() - start) / 1e6,
          (threads.getCurrentThreadCpuTime() - cpu) / 1e6);
      List<String> faults = new ArrayList<>(PlanCheck.faults(problem, result));
      CertificateCheck.fault(problem, result.certificate()).ifPresent(faults::add);
      if (!faults.isEmpty()) {
        throw new IllegalStateException(faults.toString());
      }
    }
  }

  private static int number(List<String> words, String option, int otherwise) {
    return words.stream()
        .filter(w -> w.startsWith(option))
        .mapToInt(w -> Integer.parseInt(w.substring(option.length())))
        .findFirst()
        .orElse(otherwise);
  }

  private static void verify(Instance instance, Planned result) {
    List<String> faults = new ArrayList<>(PlanCheck.faults(instance.problem(), result));
    CertificateCheck.fault(instance.problem(), result.certificate()).ifPresent(faults::add);
    if (result.cost() < instance.optimum() || result.lowerBound() > instance.optimum()) {
      faults.add(
          "cost "
              + result.cost()
              + " and bound "
              + result.lowerBound()
              + " against optimum "
              + instance.optimum());
    }
    if (result.lowerBound() != result.certificate().bound()) {
      faults.add("the bound is not the certificate's");
    }
    if (!faults.isEmpty()) {
      throw new IllegalStateException(instance.name() + ": " + faults);
    }
  }

  private static final class Row {
    private final List<Double> wall = new ArrayList<>();
    private int proved;
    private int searched;
    private int optimal;
    private int close;
    private double gap;
    private double cpu;

    void add(Instance instance, Planned result, boolean inTime, double milliseconds, double used) {
      wall.add(milliseconds);
      cpu += used / 1000;
      proved += inTime ? 1 : 0;
      searched += inTime && result.proof() == NestingResult.Proof.SEARCH ? 1 : 0;
      optimal += result.cost() == instance.optimum() ? 1 : 0;
      gap = Math.max(gap, (result.cost() - instance.optimum()) / (double) instance.optimum());
      // one bar for one stock, a thousandth of the cost for an order
      long slack =
          instance.problem().stocks().size() == 1
              ? instance.problem().stocks().get(0).cost()
              : instance.optimum() / 1000;
      close += result.cost() <= instance.optimum() + slack ? 1 : 0;
    }

    void print(String family) {
      if (wall.isEmpty()) {
        return;
      }
      List<Double> sorted = wall.stream().sorted().toList();
      System.out.printf(
          Locale.ROOT,
          "%-18s %5d %7d %9d %9d %8.3f%% %9d %9.1f %9.0f %9.1f%n",
          family,
          wall.size(),
          proved,
          searched,
          optimal,
          100 * gap,
          close,
          sorted.get(sorted.size() / 2),
          sorted.get(sorted.size() - 1),
          cpu);
    }
  }
}
