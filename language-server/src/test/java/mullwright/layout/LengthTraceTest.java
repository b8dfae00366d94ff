package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.derivation.Standing;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** Every printed length can say how it came about, and the formula gives the number. */
class LengthTraceTest {
  private final WallLayout layout = SampleWallTest.wall().layOut();
  private final LengthTrace trace = LengthTrace.of(layout);

  @Test
  void aHorizontalSaysItsFormulaAndItsDefaults() {
    Derivation length = trace.horizontal(layout.horizontals().get(0));
    assertThat(length.length()).isEqualTo(layout.horizontals().get(0).length());
    // the row of the table of conventions
    assertThat(length.formula())
        .isEqualTo("line spacing − ½ left face − ½ right face − 2 × end allowance");
    assertThat(length.defaults()).extracting(Derivation::name).containsExactly("end allowance");
    assertThat(length.inputs().get(1).standing()).isEqualTo(Standing.STATED);
    assertThat(DerivationText.lines(length, UnitSystem.US))
        .contains("  = 5'-0\" − ½ (2 1/4\") − ½ (2 1/2\") − 2 × 1/32\"");
  }

  @Test
  void aVerticalSaysWhereItEnds() {
    Derivation upper = trace.vertical(layout.verticals().get(2));
    assertThat(upper.formula()).isEqualTo("upper end − lower end");
    assertThat(upper.inputs().get(0).formula()).isEqualTo("row head + ½ face of head");
    assertThat(upper.inputs().get(1).formula()).isEqualTo("splice + ½ gap");
    // the splice is 2'-0" above L2
    assertThat(upper.inputs().get(1).inputs().get(0).formula()).isEqualTo("L2 + distance above");
  }

  @Test
  void aLiteSaysItsDaylightOpeningAndItsBites() {
    Cell cell = layout.cells().get(1);
    assertThat(trace.daylightWidth(cell).formula())
        .isEqualTo("line spacing − ½ left sightline − ½ right sightline");
    assertThat(trace.daylightHeight(cell).formula())
        .isEqualTo("row R2 − row R1 − ½ lower sightline − ½ upper sightline");
    assertThat(trace.glassWidth(cell).formula())
        .isEqualTo("daylight width + left bite + right bite");
    assertThat(trace.glassHeight(cell).length()).isEqualTo(in(153, 2));
  }

  @Test
  void platesAndCapsSayTheirGaps() {
    CoverPiece lower = layout.covers().get(0);
    assertThat(trace.cover(lower).inputs().get(0).formula()).isEqualTo("row R5 − ½ stock joint");
    CoverPiece across =
        layout.covers().stream().filter(cover -> !cover.vertical()).findFirst().orElseThrow();
    assertThat(trace.cover(across).formula()).isEqualTo("line spacing − plate width − 2 × end gap");
  }

  @Test
  void anAnchorSaysItsBoltLine() {
    PlacedAnchor anchor = layout.anchors().get(1);
    assertThat(trace.height(anchor).length()).isEqualTo(anchor.y());
    assertThat(trace.height(anchor).formula()).isEqualTo("L2 − distance of bolt line");
  }

  @Test
  void everyFormulaGivesItsNumber() {
    checkAll(layout);
    for (long seed = 0; seed < 150; seed++) {
      checkAll(new RandomWalls(seed, false).wall(1).layOut());
    }
  }

  private static void checkAll(WallLayout layout) {
    LengthTrace trace = LengthTrace.of(layout);
    for (VerticalPiece piece : layout.verticals()) {
      assertThat(trace.vertical(piece).length()).isEqualTo(piece.length());
      check(trace.vertical(piece));
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      assertThat(trace.horizontal(piece).length()).isEqualTo(piece.length());
      check(trace.horizontal(piece));
    }
    for (Cell cell : layout.cells()) {
      for (Derivation size :
          List.of(
              trace.daylightWidth(cell),
              trace.daylightHeight(cell),
              trace.glassWidth(cell),
              trace.glassHeight(cell))) {
        check(size);
      }
      assertThat(trace.glassWidth(cell).length()).isEqualTo(cell.glassWidth());
      assertThat(trace.glassHeight(cell).length()).isEqualTo(cell.glassHeight());
    }
    for (CoverPiece cover : layout.covers()) {
      assertThat(trace.cover(cover).length()).isEqualTo(cover.length());
      check(trace.cover(cover));
    }
    for (PlacedAnchor anchor : layout.anchors()) {
      assertThat(trace.height(anchor).length()).isEqualTo(anchor.y());
      check(trace.height(anchor));
    }
  }

  // a formula without numbers, or one of the bounding size, only tells in words what it is
  private static void check(Derivation derivation) {
    for (Derivation step : derivation.steps()) {
      if (step.standing() == Standing.COMPUTED
          && !step.inputs().isEmpty()
          && !step.formula().startsWith("bounding")) {
        assertThat(Formula.value(step))
            .as(step.name() + " = " + step.formula())
            .isCloseTo(step.value().toSi(), within(2e-10));
      }
    }
  }
}
