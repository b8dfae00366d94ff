package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult.Bar;
import mullwright.takeoff.nesting.NestingResult.Cut;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Proof;
import mullwright.takeoff.nesting.NestingResult.Refused;
import org.junit.jupiter.api.Test;

class NestingTest {
  private static final Limits LIMITS = Limits.work(200_000_000);

  /** 1/32 in from inches. */
  private static long in(double inches) {
    double units = inches * 32;
    assertThat(units).isEqualTo(Math.rint(units));
    return (long) units;
  }

  private static NestingProblem inches(double stock, double trim, double kerf, Part... parts) {
    return NestingProblem.oneStock(in(stock), List.of(parts), in(kerf), in(trim));
  }

  private static Planned solve(NestingProblem problem) {
    Planned plan = (Planned) Nesting.solve(problem, LIMITS);
    assertThat(PlanCheck.faults(problem, plan)).isEmpty();
    assertThat(CertificateCheck.fault(problem, plan.certificate())).isEmpty();
    return plan;
  }

  @Test
  void widthBoundMeetsFirstFit() {
    // handbook CHECK 13a (closed form, recomputed): L1 = L2 = 6, first fit decreasing 6
    NestingProblem problem =
        inches(
            288,
            0.5,
            0.125,
            new Part(in(142), 4),
            new Part(in(84.5), 5),
            new Part(in(57.5), 7),
            new Part(in(30), 4));
    CutModel model = new CutModel(problem);
    // one step of the model is the common divisor of the widths
    assertThat(model.capacity[0] * (in(142.125) / model.width[0]))
        .isLessThanOrEqualTo(in(287.125))
        .isGreaterThan(in(287.125) - in(142.125) / model.width[0]);
    assertThat(ArithmeticBound.of(model).cost()).isEqualTo(6);
    Planned plan = solve(problem);
    assertThat(plan.cost()).isEqualTo(6);
    assertThat(plan.proved()).isTrue();
    assertThat(plan.proof()).isEqualTo(Proof.PRICES);
  }

  @Test
  void widePiecesCountBarsThatWidthAloneDoesNot() {
    // handbook CHECK 13b (closed form, recomputed): L1 = 3, L2 = 4, optimum 4
    NestingProblem problem = inches(288, 0.5, 0.125, new Part(in(150), 4));
    CutModel model = new CutModel(problem);
    assertThat(Math.ceil(4 * 150.125 / 287.125)).isEqualTo(3);
    assertThat(ArithmeticBound.of(model).cost()).isEqualTo(4);
    Planned plan = solve(problem);
    assertThat(plan.cost()).isEqualTo(4);
    assertThat(plan.proved()).isTrue();
  }

  @Test
  void searchBeatsFirstFit() {
    // handbook CHECK 13c (closed form, recomputed): first fit decreasing 3, optimum 2, L1 = 2
    NestingProblem problem =
        inches(
            288,
            0.5,
            0.125,
            new Part(in(120), 2),
            new Part(in(96), 1),
            new Part(in(57.5), 3),
            new Part(in(48), 1));
    CutModel model = new CutModel(problem);
    Draft greedy = new Draft(model);
    assertThat(Greedy.complete(greedy, new Effort(LIMITS))).isTrue();
    assertThat(greedy.cost()).isEqualTo(3);
    assertThat(ArithmeticBound.of(model).cost()).isEqualTo(2);
    Planned plan = solve(problem);
    assertThat(plan.cost()).isEqualTo(2);
    assertThat(plan.proved()).isTrue();
  }

  @Test
  void aPartAsLongAsTheTrimmedBarFitsAndNoLonger() {
    // handbook CHECK 13d (closed form, recomputed): 287.0 fits, 287.03125 does not
    Planned plan = solve(inches(288, 0.5, 0.125, new Part(in(287), 1)));
    assertThat(plan.bars()).containsExactly(new Bar(0, List.of(new Cut(0, in(0.5))), 0, 0));
    NestingResult longer =
        Nesting.solve(inches(288, 0.5, 0.125, new Part(in(287.03125), 1)), LIMITS);
    assertThat(longer)
        .isEqualTo(
            new Refused(new Refusal.PartLongerThanStock(0, in(287.03125), 0, in(288), in(287))));
    assertThat(((Refused) longer).reason().message())
        .isEqualTo(
            "part 1 of length 9185 is longer than the 9184 usable on the longest stock (9216"
                + " before trimming): splice the part or add a stock of at least 9217");
  }

  @Test
  void positionsKerfsAndDropAddUp() {
    // stock 100, trim 2, kerf 3: 2 + 40 + 3 + 30 + 3 leaves a drop of 20 before the trim of 2
    NestingProblem problem =
        NestingProblem.oneStock(100, List.of(new Part(30, 1), new Part(40, 1)), 3, 2);
    assertThat(solve(problem).bars())
        .containsExactly(new Bar(0, List.of(new Cut(1, 2), new Cut(0, 45)), 6, 20));
  }

  @Test
  void aRemainderNarrowerThanTheSawTurnsToChips() {
    // 96 usable, 95 cut: the saw takes the last unit and nothing drops
    NestingProblem problem = NestingProblem.oneStock(100, List.of(new Part(95, 1)), 3, 2);
    assertThat(solve(problem).bars()).containsExactly(new Bar(0, List.of(new Cut(0, 2)), 1, 0));
  }

  @Test
  void equalLengthsOfDifferentPartsKeepTheirNames() {
    NestingProblem problem =
        NestingProblem.oneStock(
            100, List.of(new Part(50, 3), new Part(25, 2), new Part(50, 2)), 0, 0);
    Planned plan = solve(problem);
    assertThat(plan.cost()).isEqualTo(3);
    assertThat(plan.proved()).isTrue();
  }

  @Test
  void remnantsAreUsedBeforeNewBars() {
    // common practice: what is on the rack costs nothing
    NestingProblem problem =
        new NestingProblem(
            List.of(Stock.unlimited(100, 10), new Stock(60, 0, 1)),
            List.of(new Part(60, 1), new Part(50, 2)),
            0,
            0,
            NestingProblem.ANY_NUMBER);
    Planned plan = solve(problem);
    assertThat(plan.cost()).isEqualTo(10);
    assertThat(plan.proved()).isTrue();
  }

  @Test
  void nothingToCutNeedsNoBar() {
    assertThat(solve(NestingProblem.oneStock(100, List.of(), 1, 1)).bars()).isEmpty();
    Planned none = solve(NestingProblem.oneStock(100, List.of(new Part(200, 0)), 1, 1));
    assertThat(none.bars()).isEmpty();
    assertThat(none.proved()).isTrue();
    assertThat(
            Nesting.solve(
                new NestingProblem(List.of(), List.of(), 0, 0, NestingProblem.ANY_NUMBER), LIMITS))
        .isInstanceOf(Planned.class);
  }

  @Test
  void whatCannotBeComputedIsRefusedWithItsReason() {
    Part part = new Part(10, 3);
    assertThat(refusal(List.of(), part)).isEqualTo(new Refusal.NoStock());
    assertThat(refusal(List.of(Stock.unlimited(100, 0)), part)).isEqualTo(new Refusal.FreeStock(0));
    assertThat(refusal(List.of(new Stock(10, 1, 2)), part))
        .isInstanceOf(Refusal.StockRunsOut.class);
    assertThat(refusal(List.of(new Stock(100, 1, 0)), part))
        .isInstanceOf(Refusal.StockRunsOut.class);
    assertThat(refusal(List.of(Stock.unlimited(100, 1)), new Part(1, Nesting.MOST_CUTS + 1)))
        .isEqualTo(new Refusal.TooMany("cuts", Nesting.MOST_CUTS + 1, Nesting.MOST_CUTS));
    assertThat(refusal(List.of(Stock.unlimited(100, Long.MAX_VALUE)), part))
        .isEqualTo(new Refusal.TooMany("units of cost", Long.MAX_VALUE, Nesting.MOST_COST));
    assertThat(refusal(List.of(Stock.unlimited(Long.MAX_VALUE, 1)), part))
        .isEqualTo(new Refusal.TooMany("units of length", Long.MAX_VALUE, Nesting.MOST_LENGTH));
    Part[] many = new Part[Nesting.MOST_LENGTHS + 1];
    for (int i = 0; i < many.length; i++) {
      many[i] = new Part(10 + i, 1);
    }
    assertThat(refusal(List.of(Stock.unlimited(10_000, 1)), many))
        .isEqualTo(
            new Refusal.TooMany(
                "different lengths", Nesting.MOST_LENGTHS + 1, Nesting.MOST_LENGTHS));
    for (Refusal reason :
        List.of(
            new Refusal.NoStock(),
            new Refusal.FreeStock(0),
            new Refusal.StockRunsOut(true),
            new Refusal.TooMany("cuts", 2, 1))) {
      // each says how to mend it, after a colon
      assertThat(reason.message()).matches("[^:]+: (add|give|raise|divide) .+");
    }
    assertThatThrownBy(() -> new Part(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Stock(10, -1, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  private static Refusal refusal(List<Stock> stocks, Part... parts) {
    return ((Refused)
            Nesting.solve(
                new NestingProblem(stocks, List.of(parts), 0, 0, NestingProblem.ANY_NUMBER),
                LIMITS))
        .reason();
  }

  @Test
  void hugeNumbersNeitherOverflowNorHang() {
    NestingProblem longBars =
        new NestingProblem(
            List.of(Stock.unlimited(Nesting.MOST_LENGTH, Nesting.MOST_COST)),
            List.of(
                new Part(Nesting.MOST_LENGTH / 3, 50_000),
                new Part(Nesting.MOST_LENGTH / 7, 50_000),
                new Part(1, 50_000)),
            1,
            1,
            NestingProblem.ANY_NUMBER);
    Planned plan = (Planned) Nesting.solve(longBars, LIMITS);
    assertThat(PlanCheck.faults(longBars, plan)).isEmpty();
    assertThat(CertificateCheck.fault(longBars, plan.certificate())).isEmpty();
    // 50 000 thirds and 50 000 sevenths fill at least 50 000 * 10 / 21 bars
    assertThat(plan.cost() / Nesting.MOST_COST).isBetween(23_810L, 25_000L);
  }

  @Test
  void sameInputGivesTheSamePlan() {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      parts.add(new Part(500 + 37 * i % 1900, 1 + i % 7));
    }
    NestingProblem problem =
        new NestingProblem(
            List.of(Stock.unlimited(7_680, 200), Stock.unlimited(9_216, 241)), parts, 4, 16, 5);
    for (long work : new long[] {0, 100_000, 3_000_000, 30_000_000}) {
      NestingResult first = Nesting.solve(problem, Limits.work(work));
      assertThat(Nesting.solve(problem, Limits.work(work))).isEqualTo(first);
      assertThat(PlanCheck.faults(problem, (Planned) first)).isEmpty();
    }
  }
}
