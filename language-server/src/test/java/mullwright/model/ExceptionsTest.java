package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Which of several statements about one thing holds, and when they are in each other's way. */
class ExceptionsTest {
  private static final String MEMBERS = "members {\nvertical all\nhorizontal all\n}";

  private static Seen anchors(String... lines) {
    return Seen.frame(MEMBERS, "anchors {\n" + String.join("\n", lines) + "\n}");
  }

  private static Seen lites(String... lines) {
    return Seen.frame(MEMBERS, "lites {\n" + String.join("\n", lines) + "\n}");
  }

  @Test
  void aProperSubsetWins() {
    Seen seen =
        anchors("dead-load all at L2 part angle-6", "dead-load B..D at L2 part slot-6").sound();
    assertThat(seen.anchors())
        .containsExactly(
            "A L2 dead-load angle-6",
            "B L2 dead-load slot-6",
            "C L2 dead-load slot-6",
            "D L2 dead-load slot-6",
            "E L2 dead-load angle-6");
  }

  @Test
  void theOrderOfTheTextDoesNotMatter() {
    List<String> one =
        anchors("dead-load all at L2 part angle-6", "dead-load B..D at L2 part slot-6").anchors();
    List<String> other =
        anchors("dead-load B..D at L2 part slot-6", "dead-load all at L2 part angle-6").anchors();
    assertThat(other).isEqualTo(one);
  }

  @Test
  void fewerButNotASubsetDoesNotWin() {
    // one line against four: a count decides nothing, so the shared line is in dispute
    Seen seen = anchors("dead-load A..D at L2 part angle-6", "dead-load D, E at L2 part slot-6");
    ModelProblem.Conflict conflict = seen.problem(ModelProblem.Conflict.class);
    assertThat(conflict.what()).isEqualTo("anchor");
    assertThat(conflict.where()).isEqualTo("line D at L2");
    assertThat(conflict.clause()).isEqualTo("part");
    assertThat(conflict.one()).isEqualTo("part angle-6");
    assertThat(conflict.other()).isEqualTo("part slot-6");
    assertThat(seen.text(conflict.first())).startsWith("dead-load A..D");
    assertThat(seen.text(conflict.origin())).startsWith("dead-load D, E");
  }

  @Test
  void crossingStatementsMaySayDifferentThings() {
    Seen seen =
        anchors(
                "dead-load A..D at L2 part angle-6",
                "dead-load C..E at L2 isolated by nylon-pad",
                "dead-load E at L2 part angle-6")
            .sound();
    AnchorUse third = seen.wall().anchors().get(2);
    assertThat(third.part().orElseThrow().value()).isEqualTo("angle-6");
    assertThat(third.isolation().orElseThrow().value()).isEqualTo("nylon-pad");
    assertThat(seen.wall().anchors().get(0).isolation()).isEmpty();
  }

  @Test
  void crossingStatementsMayAgree() {
    anchors("dead-load A..D at L2 part angle-6", "dead-load C..E at L2 part angle-6").sound();
  }

  @Test
  void aConflictIsToldOnceForAPair() {
    Seen seen =
        anchors(
            "dead-load A..D at L2, L3 part angle-6 isolated by nylon-pad",
            "dead-load B..E at L2, L3 part slot-6 isolated by bituminous-paint");
    seen.problem(ModelProblem.Conflict.class);
  }

  @Test
  void equalReachThatDisagreesIsAConflict() {
    Seen seen = lites("vision V1 all", "spandrel S1 all");
    ModelProblem.Conflict conflict = seen.problem(ModelProblem.Conflict.class);
    assertThat(conflict.clause()).isEqualTo("kind");
    assertThat(conflict.one() + " " + conflict.other()).isEqualTo("vision spandrel");
    assertThat(seen.text(conflict.first())).isEqualTo("vision V1 all");
  }

  @Test
  void placesCountAsWellAsLines() {
    // {A..E × L2} lies within {A..E × L2, L3}
    Seen seen =
        anchors("dead-load all at L2, L3 part angle-6", "dead-load all at L2 part slot-6").sound();
    assertThat(seen.anchors()).contains("A L2 dead-load slot-6", "A L3 dead-load angle-6");
  }

  @Test
  void anotherKindReplacesAndInheritsNothing() {
    Seen seen =
        anchors(
                "dead-load all at L2 part angle-6 isolated by nylon-pad",
                "wind-load A, E at L2 part slot-6")
            .sound();
    assertThat(seen.anchors()).contains("A L2 wind-load slot-6", "B L2 dead-load angle-6");
    assertThat(seen.wall().anchors().get(0).isolation()).isEmpty();
    assertThat(seen.wall().anchors().get(1).isolation()).isPresent();
  }

  @Test
  void narrowerInNarrowerInNarrower() {
    Seen seen =
        anchors(
                "dead-load all at L2 part angle-6 isolated by nylon-pad bolted 2 x hex-half",
                "dead-load B..D at L2 part slot-6",
                "dead-load C at L2 bolted 4 x hex-half")
            .sound();
    AnchorUse third = seen.wall().anchors().get(2);
    // bolts from C, part from B..D, isolation from all
    assertThat(third.bolted().orElseThrow().count()).isEqualTo(4);
    assertThat(third.part().orElseThrow().value()).isEqualTo("slot-6");
    assertThat(third.isolation().orElseThrow().value()).isEqualTo("nylon-pad");
    assertThat(seen.text(third.origin())).isEqualTo("dead-load C at L2 bolted 4 x hex-half");
  }

  @Test
  void whatIsOverriddenEverywhereIsShadowed() {
    Seen seen = lites("spandrel S1 all", "vision V1 rows sill..L2.R", "vision V1 rows L2.R..head");
    ModelProblem.Shadowed shadowed = seen.problem(ModelProblem.Shadowed.class);
    assertThat(seen.text(shadowed)).isEqualTo("spandrel S1 all");
    assertThat(shadowed.by())
        .extracting(seen::text)
        .containsExactly("vision V1 rows sill..L2.R", "vision V1 rows L2.R..head");
  }

  @Test
  void aStatementSaidTwiceSaysNothingNew() {
    Seen seen = lites("vision V1 all", "vision V1 all");
    assertThat(seen.problem(ModelProblem.Shadowed.class).by()).hasSize(1);
  }

  @Test
  void aWiderStatementThatStillGivesAClauseIsNotShadowed() {
    anchors(
            "dead-load B..D at L2 isolated by nylon-pad",
            "dead-load B, C at L2 part angle-6",
            "dead-load D at L2 part angle-6")
        .sound();
  }

  @Test
  void splicesAreFoundByFloor() {
    Seen seen =
        Seen.frame(
                "members {\nvertical all\nhorizontal all\n"
                    + "splice all at 24 above L2 gap 1/2\"\n"
                    + "splice C at 30 above L2\n}")
            .sound();
    List<Members.Splice> splices = seen.wall().members().splices();
    assertThat(splices).hasSize(5);
    // 156 + 30 with the wider statement's gap
    assertThat(splices.get(2).at().elevation()).isEqualTo(Length.ofInches(186));
    assertThat(splices.get(2).gap().value()).isEqualTo(Length.ofInches(1, 2));
  }

  @Test
  void overlappingRunsOfEqualRightAreAConflict() {
    Seen seen =
        Seen.frame(
            "members {\nhorizontal all\n"
                + "vertical all from sill to L2.R as mullion\n"
                + "vertical all from L2 to head as jamb\n}");
    ModelProblem.Conflict conflict = seen.problem(ModelProblem.Conflict.class);
    assertThat(conflict.clause()).isEqualTo("from");
    assertThat(conflict.where()).isEqualTo("line A");
  }

  @Test
  void aRowGivenTwiceIsADuplicate() {
    Seen seen = Seen.grid("floor L1 at 0", "row R1 at 36 above L1", "row R1 at 40 above L1");
    ModelProblem.Duplicate duplicate = seen.problem(ModelProblem.Duplicate.class);
    assertThat(duplicate.name()).isEqualTo("R1");
    assertThat(seen.text(duplicate.first())).isEqualTo("row R1 at 36 above L1");
    assertThat(seen.rows()).isEqualTo("R1 36");
  }

  @Test
  void rowPatternsThatCrossAreAConflict() {
    Seen seen =
        Seen.grid(
            "floors L1..L4 spaced 3 @ 156",
            "row rail at 36 above L1..L3",
            "row rail at 40 above L3..L4");
    ModelProblem.Conflict conflict = seen.problem(ModelProblem.Conflict.class);
    assertThat(conflict.where()).startsWith("L3.rail");
  }

  @Test
  void slabsThatDisagreeAreAConflict() {
    Seen seen = Seen.grid("floor L1 at 0 slab 10", "slab 12 L1");
    ModelProblem.Conflict conflict = seen.problem(ModelProblem.Conflict.class);
    assertThat(conflict.one() + " " + conflict.other()).isEqualTo("10 12");
  }

  @Test
  void stretchesOfTheWorkMayNotOverlap() {
    Seen seen = Seen.frame(MEMBERS, "installation {\nladder A..C\nstick B..E\n}");
    ModelProblem.Conflict conflict = seen.problem(ModelProblem.Conflict.class);
    assertThat(conflict.where()).isEqualTo("bay B-C");
  }
}
