package mullwright.derivation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Derivations as trees, and their text. */
class DerivationTest {
  private record Line(int number) implements Locus {}

  private static final Derivation SPACING =
      Derivation.stated("spacing", Length.ofInches(60), new Line(3));
  private static final Derivation LEFT =
      Derivation.stated("left", Length.ofInches(5, 2), new Line(7));
  private static final Derivation RIGHT =
      Derivation.stated("right", Length.ofInches(5, 2), new Line(8));
  private static final Derivation ALLOWANCE =
      Derivation.assumed("end allowance", Length.ofInches(1, 32), "common practice");

  /** 60 less two halves of 2 1/2 less two times 1/32 is 57 7/16 (by hand). */
  private static final Derivation CUT =
      Derivation.computed(
          "cut length",
          Length.ofInches(919, 16),
          "spacing − ½ left − ½ right − 2 × end allowance",
          "common practice",
          SPACING,
          LEFT,
          RIGHT,
          ALLOWANCE);

  @Test
  void knowsWhereItsNumbersWereStated() {
    assertThat(SPACING.locus()).contains(new Line(3));
    assertThat(SPACING.standing()).isEqualTo(Standing.STATED);
    assertThat(SPACING.source()).isEmpty();
    assertThat(ALLOWANCE.source()).contains(Source.COMMON_PRACTICE);
    assertThat(ALLOWANCE.locus()).isEmpty();
    assertThat(CUT.length()).isEqualTo(Length.ofInches(919, 16));
    assertThat(CUT.inputs()).containsExactly(SPACING, LEFT, RIGHT, ALLOWANCE);
  }

  @Test
  void listsEveryDefaultItLeansOnOnceAndInOrder() {
    Derivation joint = Derivation.assumed("joint", Length.ofInches(1, 2), "common practice");
    Derivation sameAllowance =
        Derivation.assumed("end allowance", Length.ofInches(1, 32), "common practice");
    Derivation total =
        Derivation.computed(
            "total",
            Length.ofInches(60),
            "cut length + end allowance + joint",
            "common practice",
            joint,
            CUT,
            sameAllowance,
            CUT);
    assertThat(total.defaults()).containsExactly(joint, ALLOWANCE);
    assertThat(ALLOWANCE.defaults()).containsExactly(ALLOWANCE);
    assertThat(SPACING.defaults()).isEmpty();
    assertThat(total.steps()).startsWith(total, joint, CUT, SPACING).hasSize(8);
  }

  @Test
  void sharedInputsAreWalkedOnce() {
    Derivation tower = ALLOWANCE;
    for (int storey = 0; storey < 200; storey++) {
      tower =
          Derivation.computed(
              "height " + storey, Length.ZERO, "below + below", "common practice", tower, tower);
    }
    Derivation top = tower;
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> {
          assertThat(top.defaults()).containsExactly(ALLOWANCE);
          assertThat(top.steps()).hasSize(201);
          assertThat(DerivationText.allLines(top, UnitSystem.US)).hasSizeGreaterThan(200);
        });
  }

  @Test
  void refusesWhatDoesNotHangTogether() {
    Quantity length = Quantity.of(Length.ZERO);
    Optional<Source> source = Optional.of(Source.COMMON_PRACTICE);
    Optional<Locus> locus = Optional.of(new Line(1));
    assertRefused(length, Kind.FORCE, "", List.of(), source, Standing.DEFAULT, Optional.empty());
    assertRefused(length, Kind.LENGTH, "a", List.of(), source, Standing.DEFAULT, Optional.empty());
    assertRefused(length, Kind.LENGTH, "", List.of(), source, Standing.COMPUTED, Optional.empty());
    assertRefused(
        length, Kind.LENGTH, "", List.of(CUT), source, Standing.DEFAULT, Optional.empty());
    assertRefused(length, Kind.LENGTH, "", List.of(), source, Standing.DEFAULT, locus);
    assertRefused(length, Kind.LENGTH, "", List.of(), source, Standing.STATED, locus);
    assertRefused(
        length, Kind.LENGTH, "", List.of(), Optional.empty(), Standing.STATED, Optional.empty());
    assertRefused(
        length, Kind.LENGTH, "", List.of(), Optional.empty(), Standing.DEFAULT, Optional.empty());
    assertThatThrownBy(() -> new Source(" ")).isInstanceOf(IllegalArgumentException.class);
  }

  private static void assertRefused(
      Quantity value,
      Kind kind,
      String formula,
      List<Derivation> inputs,
      Optional<Source> source,
      Standing standing,
      Optional<Locus> locus) {
    assertThatThrownBy(
            () -> new Derivation("thing", value, kind, formula, inputs, source, standing, locus))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("thing");
  }

  @Test
  void aPressureIsNoLength() {
    Derivation wind =
        Derivation.stated(
            "wind",
            Quantity.of(Rational.of(32), Unit.POUND_PER_SQUARE_FOOT),
            Kind.PRESSURE,
            new Line(1));
    assertThatThrownBy(wind::length)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("pressure");
  }

  @Test
  void writesFormulaNumbersResultAndSource() {
    assertThat(DerivationText.lines(CUT, UnitSystem.US))
        .containsExactly(
            "cut length = 4'-9 7/16\" (1458.9 mm)",
            "  = spacing − ½ left − ½ right − 2 × end allowance",
            "  = 5'-0\" − ½ (2 1/2\") − ½ (2 1/2\") − 2 × 1/32\"",
            "  spacing = 5'-0\" (1524 mm), stated",
            "  left = 2 1/2\" (63.5 mm), stated",
            "  right = 2 1/2\" (63.5 mm), stated",
            "  end allowance = 1/32\" (0.79 mm), default (common practice)",
            "  source: common practice");
    assertThat(DerivationText.lines(CUT, UnitSystem.SI))
        .startsWith(
            "cut length = 1458.9 mm (4'-9 7/16\")",
            "  = spacing − ½ left − ½ right − 2 × end allowance",
            "  = 1524 mm − ½ (63.5 mm) − ½ (63.5 mm) − 2 × 0.79 mm");
  }

  @Test
  void writesALeafInOneLine() {
    assertThat(DerivationText.lines(SPACING, UnitSystem.US))
        .containsExactly("spacing = 5'-0\" (1524 mm), stated");
    assertThat(DerivationText.lines(ALLOWANCE, UnitSystem.US))
        .containsExactly("end allowance = 1/32\" (0.79 mm), default (common practice)");
  }

  @Test
  void writesAnalysisWithPowersAndQuotients() {
    // w L² / 8 with w = 160 lb/ft and L = 13 ft is 3380 lb·ft = 40560 lb·in (by hand)
    Derivation load =
        Derivation.stated(
            "w",
            Quantity.of(Rational.of(160), Unit.POUND_FORCE_PER_FOOT),
            Kind.FORCE_PER_LENGTH,
            new Line(2));
    Derivation span = Derivation.stated("L", Length.ofInches(156), new Line(4));
    Derivation moment =
        Derivation.computed(
            "bending moment",
            load.value().toSi() * Math.pow(span.length().toMetres(), 2) / 8,
            Kind.MOMENT,
            "w L² / 8",
            "simple span, closed form",
            load,
            span);
    assertThat(DerivationText.lines(moment, UnitSystem.US))
        .containsExactly(
            "bending moment = 40560 lb·in (4.583 kN·m)",
            "  = w L² / 8",
            "  = (13.33 lb/in) (13'-0\")² / 8",
            "  w = 13.33 lb/in (2.335 kN/m), stated",
            "  L = 13'-0\" (3962.4 mm), stated",
            "  source: simple span, closed form");
  }

  @Test
  void takesTheLongestNameAndWholeWordsOnly() {
    Derivation face = Derivation.stated("face", Length.ofInches(1), new Line(1));
    Derivation leftFace = Derivation.stated("left face", Length.ofInches(2), new Line(1));
    Derivation sum =
        Derivation.computed(
            "sum",
            Length.ofInches(3),
            "max(face, left face) + face of surface",
            "closed form",
            face,
            leftFace);
    assertThat(DerivationText.lines(sum, UnitSystem.US))
        .contains("  = max(1\", 2\") + (1\") of surface");
  }

  @Test
  void putsNoNumberInWhereANameMeansTwo() {
    Derivation inner = Derivation.stated("ply", Length.ofInches(1, 4), new Line(1));
    Derivation outer = Derivation.stated("ply", Length.ofInches(3, 8), new Line(2));
    Derivation sum =
        Derivation.computed(
            "glass", Length.ofInches(5, 8), "sum of each ply", "closed form", inner, outer);
    assertThat(DerivationText.lines(sum, UnitSystem.US))
        .containsExactly(
            "glass = 5/8\" (15.88 mm)",
            "  = sum of each ply",
            "  ply = 1/4\" (6.35 mm), stated",
            "  ply = 3/8\" (9.53 mm), stated",
            "  source: closed form");
  }

  @Test
  void writesEveryComputedStepOnce() {
    Derivation pair =
        Derivation.computed(
            "pair", Length.ofInches(919, 8), "cut length + cut length", "closed form", CUT, CUT);
    List<String> lines = DerivationText.allLines(pair, UnitSystem.US);
    assertThat(lines).startsWith("pair = 9'-6 7/8\" (2917.8 mm)");
    assertThat(lines).containsOnlyOnce("  = spacing − ½ left − ½ right − 2 × end allowance");
    assertThat(lines).endsWith("  source: common practice");
  }
}
