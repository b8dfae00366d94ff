package mullwright.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.quantity.Length;
import mullwright.takeoff.nesting.CertificateCheck;
import mullwright.takeoff.nesting.Limits;
import mullwright.takeoff.nesting.PlanCheck;
import mullwright.takeoff.nesting.Refusal;
import org.junit.jupiter.api.Test;

class CutPlannerTest {
  private static final Limits LIMITS = Limits.work(100_000_000);

  private static Length in(long numerator, long denominator) {
    return Length.ofInches(numerator, denominator);
  }

  private static List<CutPlan> plans(String text) {
    return CutPlanner.plan(CutList.of(CutWalls.layouts(text)), LIMITS);
  }

  private static CutPlan plan(List<CutPlan> plans, String part) {
    return plans.stream()
        .filter(plan -> plan.pool().part().name().equals(part))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyPieceIsCutOnceAndEveryBarAddsUp() {
    Random random = new Random(41);
    int proved = 0;
    int all = 0;
    int fromTheRack = 0;
    for (int n = 0; n < 120; n++) {
      String text = CutWalls.random(random);
      List<WallLayout> layouts = CutWalls.layouts(text);
      CutList list = CutList.of(layouts);
      List<CutPlan> plans = CutPlanner.plan(list, LIMITS);
      assertThat(names(plans)).as(text).isEqualTo(namesOfLayouts(layouts));
      Map<Origin, Integer> used = new HashMap<>();
      for (CutPlan plan : plans) {
        for (CutBar bar : plan.bars()) {
          // closed form: pieces + kerfs + both trims + drop = bar
          Length sum =
              bar.pieces().stream()
                  .map(CutPiece::length)
                  .reduce(Length.ZERO, Length::plus)
                  .plus(bar.kerf())
                  .plus(plan.pool().saw().endTrim().times(2))
                  .plus(bar.drop());
          assertThat(sum).as(text).isEqualTo(bar.stock());
          assertThat(bar.drop().signum()).isNotNegative();
          Length kerf = plan.pool().saw().kerf();
          assertThat(bar.kerf())
              .isBetween(kerf.times(bar.pieces().size() - 1L), kerf.times(bar.pieces().size()));
          bar.lot().ifPresent(lot -> used.merge(lot.origin(), 1, Integer::sum));
          fromTheRack += bar.lot().isPresent() ? 1 : 0;
        }
        assertThat(plan.waste().plus(plan.cutLength()).plus(sum(plan.kept())))
            .isEqualTo(plan.barLength());
        plan.result()
            .ifPresent(
                result -> {
                  assertThat(PlanCheck.faults(plan.problem(), result)).as(text).isEmpty();
                  assertThat(CertificateCheck.fault(plan.problem(), result.certificate()))
                      .as(text)
                      .isEmpty();
                });
        all++;
        proved += plan.proved() ? 1 : 0;
      }
      Map<Origin, Integer> told = new HashMap<>();
      layouts.forEach(
          layout ->
              layout
                  .wall()
                  .fabrication()
                  .onHand()
                  .forEach(bars -> told.put(bars.origin(), bars.count())));
      used.forEach((lot, count) -> assertThat(count).as(text).isLessThanOrEqualTo(told.get(lot)));
    }
    assertThat(fromTheRack).as("bars taken from the rack").isGreaterThan(40);
    assertThat(proved / (double) all).as("plans proved").isGreaterThan(0.9);
  }

  private static Length sum(List<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }

  /** Pieces on bars, left out as too long, or waiting for stock; each as often as it is there. */
  private static Map<String, Long> names(List<CutPlan> plans) {
    List<CutPiece> pieces = new ArrayList<>();
    for (CutPlan plan : plans) {
      if (plan.result().isPresent()) {
        pieces.addAll(plan.tooLong());
        plan.bars().forEach(bar -> pieces.addAll(bar.pieces()));
      } else {
        pieces.addAll(plan.pool().pieces());
      }
    }
    return pieces.stream()
        .collect(
            Collectors.groupingBy(
                piece -> piece.wall() + " " + piece.name() + " " + piece.length(),
                Collectors.counting()));
  }

  private static Map<String, Long> namesOfLayouts(List<WallLayout> layouts) {
    List<String> names = new ArrayList<>();
    for (WallLayout layout : layouts) {
      String wall = layout.wall().name() + " ";
      layout.verticals().forEach(p -> names.add(wall + p.name() + " " + p.length()));
      layout.horizontals().forEach(p -> names.add(wall + p.name() + " " + p.length()));
      layout.covers().forEach(p -> names.add(wall + p.name() + " " + p.length()));
    }
    return names.stream().collect(Collectors.groupingBy(name -> name, Collectors.counting()));
  }

  @Test
  void wallsOfOneFinishShareBars() {
    // three verticals of 100 1/2" a wall, by part: two jambs and one mullion; a bar of 288" holds 2
    String one = CutWalls.wall("One", 2, "60", "100", "finish bronze\n");
    String two = CutWalls.wall("Two", 2, "60", "100", "finish bronze\n");
    String other = CutWalls.wall("Two", 2, "60", "100", "finish clear\n");
    String catalog = CutWalls.catalog("stock 288", "stock 288", "stock 288");
    CutPlan together = plan(plans(catalog + one + two), "m");
    assertThat(together.pool().pieces()).extracting(CutPiece::wall).containsExactly("One", "Two");
    assertThat(together.bought()).isEqualTo(1);
    List<CutPlan> apart = plans(catalog + one + other);
    assertThat(apart.stream().filter(plan -> plan.pool().part().name().equals("m")))
        .hasSize(2)
        .allMatch(plan -> plan.bought() == 1);
  }

  @Test
  void aBarOnHandIsSpentOnce() {
    String catalog = CutWalls.catalog("stock 120", "stock 288", "stock 288");
    String project = "project \"P\" { fabrication {\non-hand 1 x 110 of m\n} }\n";
    // the mullions of two finishes are two pools, and both would take the one bar on hand
    List<CutPlan> plans =
        plans(
            catalog
                + project
                + CutWalls.wall("One", 2, "60", "100", "finish bronze\n")
                + CutWalls.wall("Two", 2, "60", "100", "finish clear\n"));
    List<CutPlan> mullions =
        plans.stream().filter(plan -> plan.pool().part().name().equals("m")).toList();
    assertThat(mullions).extracting(CutPlan::bought).containsExactly(0, 1);
    assertThat(mullions).allMatch(CutPlan::proved);
  }

  @Test
  void aBarOnHandOfAnotherFinishStays() {
    String catalog = CutWalls.catalog("stock 120", "stock 288", "stock 288");
    String project = "project \"P\" { fabrication {\non-hand 1 x 110 of m in bronze\n} }\n";
    String clear = CutWalls.wall("One", 2, "60", "100", "finish clear outside, black inside\n");
    String bronze = CutWalls.wall("One", 2, "60", "100", "finish bronze outside, black inside\n");
    assertThat(plan(plans(catalog + project + clear), "m").bought()).isEqualTo(1);
    assertThat(plan(plans(catalog + project + bronze), "m").bought()).isZero();
  }

  @Test
  void costDecidesWhereEveryLengthHasOne() {
    // one mullion of 99 1/2": the shorter bar is enough, but here it is the dearer one
    String wall = CutWalls.wall("One", 2, "60", "100", "");
    CutPlan byLength =
        plan(plans(CutWalls.catalog("stock 120, 240", "stock 288", "stock 288") + wall), "m");
    assertThat(byLength.goal()).isEqualTo(CutPlan.Goal.LENGTH);
    assertThat(byLength.bars().get(0).stock()).isEqualTo(in(120, 1));
    CutPlan byCost =
        plan(
            plans(
                CutWalls.catalog("stock 120 cost 80, 240 cost 60", "stock 288", "stock 288")
                    + wall),
            "m");
    assertThat(byCost.goal()).isEqualTo(CutPlan.Goal.COST);
    assertThat(byCost.bars().get(0).stock()).isEqualTo(in(240, 1));
    assertThat(byCost.proved()).isTrue();
    CutPlan halfKnown =
        plan(
            plans(CutWalls.catalog("stock 120 cost 80, 240", "stock 288", "stock 288") + wall),
            "m");
    assertThat(halfKnown.goal()).isEqualTo(CutPlan.Goal.LENGTH);
    CutPlan oneLength =
        plan(plans(CutWalls.catalog("stock 240", "stock 288", "stock 288") + wall), "m");
    assertThat(oneLength.goal()).isEqualTo(CutPlan.Goal.BARS);
  }

  @Test
  void reinforcementIsCutAsFarAsItReaches() {
    String catalog = CutWalls.catalog("stock 288", "stock 288", "stock 288");
    String wall =
        CutWalls.wall("One", 2, "60", "100", "")
            .replace(
                "vertical all",
                "vertical all\nreinforce 2 with bar from 12 above L1 to 60 above L1\n"
                    + "reinforce 1 with bar");
    CutPlan plan = plan(plans(catalog + wall), "bar");
    // closed form: 60 - 12 = 48"; full height: 100 + 1 1/4 - (2 - 1 1/4) = 100 1/2"
    assertThat(plan.pool().pieces())
        .extracting(CutPiece::length)
        .containsExactlyInAnyOrder(in(48, 1), in(201, 2));
    assertThat(plan.pool().pieces()).extracting(CutPiece::mark).allMatch(m -> m.startsWith("in V"));
    assertThat(plan.pool().finish()).isEmpty();
    assertThat(plan.bought()).isEqualTo(1);
  }

  @Test
  void whatCannotBeCutIsToldAndTheRestIsCut() {
    String wall = CutWalls.wall("One", 2, "60", "100", "");
    // 100 1/2" does not come off a bar of 101" trimmed 1/2" at each end
    CutPlan tooLong =
        plan(plans(CutWalls.catalog("stock 101", "stock 288", "stock 288") + wall), "m");
    assertThat(tooLong.tooLong()).hasSize(1);
    assertThat(tooLong.bars()).isEmpty();
    // and just comes off one of 101 1/2" (handbook CHECK 13d, closed form)
    CutPlan justFits =
        plan(plans(CutWalls.catalog("stock 101.5", "stock 288", "stock 288") + wall), "m");
    assertThat(justFits.tooLong()).isEmpty();
    assertThat(justFits.bars()).hasSize(1);
    assertThat(justFits.bars().get(0).drop()).isEqualTo(Length.ZERO);
    CutPlan noStock = plan(plans(CutWalls.catalog("", "stock 288", "stock 288") + wall), "m");
    assertThat(noStock.refusal()).contains(new Refusal.NoStock());
    CutPlan runsOut =
        plan(
            plans(
                CutWalls.catalog("", "stock 288", "stock 288")
                    + "project \"P\" { fabrication {\non-hand 1 x 110 of j\n} }\n"
                    + wall),
            "j");
    assertThat(runsOut.refusal()).contains(new Refusal.StockRunsOut(true));
  }

  @Test
  void aBarHoldsNoMorePiecesThanTheShopAllows() {
    String wall =
        CutWalls.wall("One", 6, "30", "100", "fabrication {\npieces-per-bar 3\nkerf 0\" }\n");
    CutPlan plan = plan(plans(CutWalls.catalog("stock 288", "stock 288", "stock 288") + wall), "r");
    // 18 rails of about 27 1/2": ten would fit a bar, three may
    assertThat(plan.bars()).hasSize(6).allMatch(bar -> bar.pieces().size() == 3);
    assertThat(plan.proved()).isTrue();
  }

  @Test
  void whatNoShopHasNeitherCrashesNorHangs() {
    String wall = CutWalls.wall("One", 2, "60", "100", "");
    String catalog = CutWalls.catalog("stock 9000 m, 24'", "stock 288", "stock 288");
    for (String shop :
        List.of(
            "kerf 9000 m",
            "end-trim 9000 m",
            "least-drop 9000 m",
            "kerf 100\"",
            "end-trim 144\"",
            "pieces-per-bar 100000",
            "on-hand 100000 x 9000 m of m",
            "on-hand 100000 x 1/64\" of m")) {
      List<CutPlan> plans =
          plans(catalog + "project \"P\" { fabrication {\n" + shop + "\n} }\n" + wall);
      assertThat(plans).as(shop).isNotEmpty();
      for (CutPlan plan : plans) {
        int placed = plan.bars().stream().mapToInt(bar -> bar.pieces().size()).sum();
        boolean told = plan.refusal().isPresent() || placed == 0;
        assertThat(told || placed + plan.tooLong().size() == plan.pool().pieces().size())
            .as(shop)
            .isTrue();
      }
    }
  }

  @Test
  void saysTheSameTwice() {
    String text = CutWalls.random(new Random(5));
    assertThat(plans(text)).isEqualTo(plans(text));
  }
}
