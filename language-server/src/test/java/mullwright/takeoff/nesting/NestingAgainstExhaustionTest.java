package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Proof;
import mullwright.takeoff.nesting.NestingResult.Refused;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Thousands of small random problems against {@link ExhaustiveNesting}. */
class NestingAgainstExhaustionTest {

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void everySmallProblemIsSolvedToItsOptimum(int kind) {
    Random random = new Random(7_000 + kind);
    int searched = 0;
    int refused = 0;
    for (int n = 0; n < 600; n++) {
      NestingProblem problem = problem(random, kind);
      long optimum = ExhaustiveNesting.cost(problem);
      NestingResult result = Nesting.solve(problem, Limits.work(50_000_000));
      if (optimum == ExhaustiveNesting.IMPOSSIBLE) {
        assertThat(result).as("%s", problem).isInstanceOf(Refused.class);
        refused++;
        continue;
      }
      assertThat(result).as("%s", problem).isInstanceOf(Planned.class);
      Planned plan = (Planned) result;
      assertThat(PlanCheck.faults(problem, plan)).as("%s", problem).isEmpty();
      assertThat(CertificateCheck.fault(problem, plan.certificate()))
          .as("%s %s", problem, plan.certificate())
          .isEmpty();
      assertThat(plan.certificate().bound()).as("%s", problem).isLessThanOrEqualTo(optimum);
      assertThat(plan.lowerBound()).as("%s", problem).isLessThanOrEqualTo(optimum);
      assertThat(plan.cost()).as("%s", problem).isEqualTo(optimum);
      assertThat(plan.proved()).as("%s", problem).isTrue();
      assertThat(plan.certificate().bound()).as("%s", problem).isEqualTo(plan.cost());
      if (plan.proof() == Proof.SEARCH) {
        assertThat(plan.search()).isNotBlank();
        searched++;
      }
    }
    // the random problems must not all be of the easy sort
    assertThat(searched + refused).isLessThan(600);
  }

  private static NestingProblem problem(Random random, int kind) {
    boolean several = (kind & 1) != 0;
    boolean remnants = (kind & 2) != 0;
    boolean counted = (kind & 4) != 0;
    long longest = 20 + random.nextInt(100);
    List<Stock> stocks = new ArrayList<>();
    stocks.add(Stock.unlimited(longest, 1 + random.nextInt(several ? 40 : 1)));
    if (several) {
      for (int i = random.nextInt(2) + 1; i > 0; i--) {
        stocks.add(
            Stock.unlimited(longest / 2 + random.nextInt((int) longest), 1 + random.nextInt(40)));
      }
    }
    if (remnants) {
      for (int i = random.nextInt(3) + 1; i > 0; i--) {
        stocks.add(
            new Stock(
                longest / 3 + random.nextInt((int) longest),
                random.nextInt(3) * random.nextInt(5),
                random.nextInt(3)));
      }
      if (random.nextInt(4) == 0) {
        // nothing but what is on the rack
        stocks.removeIf(stock -> !stock.limited());
      }
    }
    long kerf = random.nextInt(3);
    long trim = random.nextInt(3);
    long reach = 0;
    for (Stock stock : stocks) {
      reach = Math.max(reach, stock.length() - 2 * trim);
    }
    List<Part> parts = new ArrayList<>();
    int pieces = 0;
    int types = 1 + random.nextInt(6);
    int shortest = 1 + random.nextInt((int) Math.max(1, reach / 3));
    for (int i = 0; i < types && pieces < 9; i++) {
      int count = 1 + random.nextInt(4);
      pieces += count;
      parts.add(
          new Part(
              Math.min(reach, shortest + random.nextInt((int) Math.max(1, reach - shortest))),
              count));
    }
    return new NestingProblem(
        stocks, parts, kerf, trim, counted ? 1 + random.nextInt(4) : NestingProblem.ANY_NUMBER);
  }
}
