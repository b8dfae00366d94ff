package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A checker that accepts everything would make every proof worthless. */
class CertificateCheckTest {
  private static final NestingProblem PROBLEM =
      new NestingProblem(
          List.of(Stock.unlimited(100, 10), new Stock(60, 0, 2)),
          List.of(new Part(50, 3), new Part(30, 4)),
          0,
          0,
          NestingProblem.ANY_NUMBER);

  private static Certificate prices(long fifty, long thirty, long scale, long premium, long bound) {
    TreeMap<Long, Long> prices = new TreeMap<>();
    prices.put(50L, fifty);
    prices.put(30L, thirty);
    return new Certificate(prices, scale, List.of(0L, premium), bound, List.of());
  }

  @Test
  void acceptsWhatHolds() {
    // by hand: 50 at 5, 30 at 3: a bar of 100 holds at most 50 + 50 = 10 = its cost; the remnant
    // of 60 at most 30 + 30 = 6 = its premium; 3 * 5 + 4 * 3 - 2 * 6 = 15, and bars cost tens: 20
    assertThat(CertificateCheck.fault(PROBLEM, prices(5, 3, 1, 6, 20))).isEmpty();
  }

  @Test
  void rejectsWhatDoesNot() {
    assertThat(CertificateCheck.fault(PROBLEM, prices(5, 3, 1, 6, 21)))
        .contains("the prices prove 20 and no more");
    assertThat(CertificateCheck.fault(PROBLEM, prices(6, 3, 1, 6, 20)))
        .contains("a bar of stock 1 is worth 12, more than 10");
    assertThat(CertificateCheck.fault(PROBLEM, prices(5, 3, 1, 5, 20)))
        .contains("a bar of stock 2 is worth 6, more than 5");
    // premium 9: 27 - 18 = 9, so 10
    assertThat(CertificateCheck.fault(PROBLEM, prices(5, 3, 1, 9, 20)))
        .contains("the prices prove 10 and no more");
    assertThat(CertificateCheck.fault(PROBLEM, prices(5, -1, 1, 6, 0)))
        .contains("length 30 has a negative price");
    assertThat(CertificateCheck.fault(PROBLEM, prices(5, 3, 0, 6, 0)))
        .contains("scale is not positive");
    assertThat(
            CertificateCheck.fault(
                PROBLEM, new Certificate(new TreeMap<>(), 1, List.of(1L, 0L), 0, List.of())))
        .contains("stock 1 may not have premium 1");
    assertThat(
            CertificateCheck.fault(
                PROBLEM, new Certificate(new TreeMap<>(), 1, List.of(), 0, List.of())))
        .contains("there is not one premium for each stock");
    assertThat(CertificateCheck.fault(PROBLEM, prices(Long.MAX_VALUE, 3, 1, 6, 20)))
        .contains("the sums leave the range of 64 bits");
  }

  @Test
  void countsOnlyPiecesThatAreWanted() {
    // one piece of 40 wanted: a bar of 100 is worth one of them and not two
    NestingProblem problem = NestingProblem.oneStock(100, List.of(new Part(40, 1)), 0, 0);
    TreeMap<Long, Long> prices = new TreeMap<>();
    prices.put(40L, 1L);
    assertThat(
            CertificateCheck.fault(problem, new Certificate(prices, 1, List.of(0L), 1, List.of())))
        .isEmpty();
  }

  @Test
  void countsPiecesPerBar() {
    // four pieces of 20 fit by length, two by number: 4 pieces need 2 bars
    NestingProblem problem =
        new NestingProblem(List.of(Stock.unlimited(100, 1)), List.of(new Part(20, 4)), 0, 0, 2);
    TreeMap<Long, Long> prices = new TreeMap<>();
    prices.put(20L, 1L);
    assertThat(
            CertificateCheck.fault(problem, new Certificate(prices, 2, List.of(0L), 2, List.of())))
        .isEmpty();
    assertThat(
            CertificateCheck.fault(problem, new Certificate(prices, 1, List.of(0L), 4, List.of())))
        .contains("a bar of stock 1 is worth 2, more than 1");
  }

  private static Certificate ruled(long weight, long bound) {
    TreeMap<Long, Long> five = new TreeMap<>();
    five.put(50L, 5L);
    TreeMap<Long, Long> one = new TreeMap<>();
    one.put(50L, 1L);
    return new Certificate(
        five, 1, List.of(0L, 0L), bound, List.of(new Certificate.Rule(one, List.of(weight, 1L))));
  }

  @Test
  void holdsRulesOnTheNumbersOfBarsToTheirWord() {
    // by hand: three pieces of 50; a bar of 100 for 10 holds two, one of 60 for 8 holds one. The
    // prices show 15, and 16 is a total that bars have; but two short bars hold two pieces only,
    // and the least that holds three is one of each: 18
    NestingProblem problem =
        new NestingProblem(
            List.of(Stock.unlimited(100, 10), Stock.unlimited(60, 8)),
            List.of(new Part(50, 3)),
            0,
            0,
            NestingProblem.ANY_NUMBER);
    assertThat(CertificateCheck.fault(problem, ruled(2, 18))).isEmpty();
    assertThat(CertificateCheck.fault(problem, ruled(2, 19)))
        .contains("these numbers of bars break no rule: [1, 1]");
    assertThat(CertificateCheck.fault(problem, ruled(1, 18)))
        .contains("by rule 1 a bar of stock 1 is worth 2");
    assertThat(CertificateCheck.fault(problem, ruled(3, 18)))
        .contains("these numbers of bars break no rule: [1, 0]");
    NestingResult.Planned plan =
        (NestingResult.Planned) Nesting.solve(problem, Limits.work(10_000_000));
    assertThat(plan.cost()).isEqualTo(18);
    assertThat(plan.proved()).isTrue();
    assertThat(plan.certificate().bound()).isEqualTo(18);
    assertThat(CertificateCheck.fault(problem, plan.certificate())).isEmpty();
  }

  /** Invented orders of three stocks with costs in no simple ratio and a rack. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void severalStocksAreProvedByRulesThatHold(int order) {
    Random random = new Random(order);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      parts.add(new Part(1000 + random.nextInt(2500), 2 + random.nextInt(15)));
    }
    NestingProblem problem =
        new NestingProblem(
            List.of(
                Stock.unlimited(7680, 200),
                Stock.unlimited(8448, 221),
                Stock.unlimited(9216, 243),
                new Stock(3000 + random.nextInt(2000), 0, 2),
                new Stock(5000 + random.nextInt(2000), 0, 1)),
            parts,
            4,
            16,
            NestingProblem.ANY_NUMBER);
    NestingResult.Planned plan =
        (NestingResult.Planned) Nesting.solve(problem, Limits.work(3_000_000_000L));
    assertThat(PlanCheck.faults(problem, plan)).isEmpty();
    assertThat(plan.proved()).isTrue();
    Certificate certificate = plan.certificate();
    assertThat(CertificateCheck.fault(problem, certificate)).isEmpty();
    assertThat(certificate.bound()).isEqualTo(plan.cost());
    Certificate more =
        new Certificate(
            certificate.prices(),
            certificate.scale(),
            certificate.premiums(),
            certificate.bound() + 1,
            certificate.rules());
    assertThat(CertificateCheck.fault(problem, more)).isPresent();
  }
}
