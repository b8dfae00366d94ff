package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import org.junit.jupiter.api.Test;

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
    return new Certificate(prices, scale, List.of(0L, premium), bound);
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
                PROBLEM, new Certificate(new TreeMap<>(), 1, List.of(1L, 0L), 0)))
        .contains("stock 1 may not have premium 1");
    assertThat(CertificateCheck.fault(PROBLEM, new Certificate(new TreeMap<>(), 1, List.of(), 0)))
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
    assertThat(CertificateCheck.fault(problem, new Certificate(prices, 1, List.of(0L), 1)))
        .isEmpty();
  }

  @Test
  void countsPiecesPerBar() {
    // four pieces of 20 fit by length, two by number: 4 pieces need 2 bars
    NestingProblem problem =
        new NestingProblem(List.of(Stock.unlimited(100, 1)), List.of(new Part(20, 4)), 0, 0, 2);
    TreeMap<Long, Long> prices = new TreeMap<>();
    prices.put(20L, 1L);
    assertThat(CertificateCheck.fault(problem, new Certificate(prices, 2, List.of(0L), 2)))
        .isEmpty();
    assertThat(CertificateCheck.fault(problem, new Certificate(prices, 1, List.of(0L), 4)))
        .contains("a bar of stock 1 is worth 2, more than 1");
  }
}
