package mullwright.review;

import static mullwright.layout.PieceRef.Kind.CELL;
import static mullwright.layout.PieceRef.Kind.HORIZONTAL;
import static mullwright.layout.PieceRef.Kind.VERTICAL;
import static mullwright.review.PieceChange.What.CHANGED;
import static mullwright.review.PieceChange.What.GONE;
import static mullwright.review.PieceChange.What.NEW;
import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import java.util.List;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each kind of change of a wall, said as one change with what follows from it. */
class ChangesTest {
  private static final String LINES = "lines A..G  spaced 6 @ 5'-0\"";

  @Test
  void nothingDiffersFromItself() {
    assertThat(Compared.of(Compared.ferry(), Compared.ferry()).review().empty()).isTrue();
  }

  @Test
  void layoutOfTheTextAndUnitsOfItsNumbersAreNoChange() {
    Compared compared =
        Compared.ferry(LINES, "lines A..G  spaced 6 @ 1524 mm", "32 psf in, 36", "32 psf in,  36");
    assertThat(compared.review().empty()).isTrue();
  }

  @Test
  void aMovedLineIsOneChange() {
    Compared compared =
        Compared.ferry(LINES, "lines A..G  spaced 2 @ 5'-0\", 5'-3\", 4'-9\", 2 @ 5'-0\"");
    assertThat(compared.words())
        .containsExactly("line D moved 3\" to the right, 15'-0\" → 15'-3\"");
    // seven rows on either side
    assertThat(compared.pieces(CHANGED, HORIZONTAL)).isEqualTo(14);
    assertThat(compared.pieces(CHANGED, CELL)).isEqualTo(12);
    assertThat(compared.pieces(CHANGED, VERTICAL)).isZero();
    PieceChange sill =
        compared.review().pieces().stream()
            .filter(piece -> piece.state().name().equals("horizontal sill, bay C-D"))
            .findFirst()
            .orElseThrow();
    // spacing − ½ face left − ½ face right − 2 × 1/32": 60 − 2 1/2 − 1/16 (conventions of measure)
    assertThat(sill.before().orElseThrow().make().length())
        .isEqualTo(Length.ofInches(60 * 16 - 40 - 1, 16));
    assertThat(sill.longer()).isEqualTo(Length.ofInches(3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "glass least bite 3/16\"     | criteria: glass bite, least",
        "glass deflection limit L/90 | criteria: glass deflection, short side over",
        "glass deflection limit 1\"  | criteria: glass deflection, most",
        "importance 1.25             | criteria: importance",
        "safety floor line L2        | criteria: safety floor line, no. 1"
      })
  void whatIsAskedOfTheGlassIsTold(String line, String told) {
    assertThat(Compared.ferry("exposure outdoor", "exposure outdoor\n    " + line).words())
        .singleElement(as(STRING))
        .startsWith(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "pieces-per-bar 3                 | fabrication: pieces-per-bar",
        "cut-tolerance 1/32\"             | fabrication: cut-tolerance",
        "hole-tolerance 1/32\"            | fabrication: hole-tolerance",
        "perimeter-joint 3/4\"            | fabrication: perimeter-joint",
        "waste 5%                         | fabrication: waste",
        "attic 2% glass                   | fabrication: attic glass",
        "on-hand 4 x 13'-0\" of mullion-6 | bars on hand of mullion-6 added: count 4, length 13'-0\""
      })
  void howTheShopCutsIsTold(String line, String told) {
    String shop = "fabrication { " + line + " }";
    List<String> words = Compared.ferry("revision B", "revision B\n  " + shop).words();
    assertThat(words).singleElement(as(STRING)).startsWith(told);
  }

  @Test
  void whatTheWindFollowsFromIsTold() {
    String site = "wind speed 115 mph, exposure C, roof height 50', building width 80', enclosed";
    String[] zones = {
      "wind    field   32 psf in, 36 psf out",
      "",
      "wind    edge    32 psf in, 48 psf out within 5'-0\" of ends",
      site
    };
    String[] windier = zones.clone();
    windier[3] = site.replace("115", "120");
    Compared compared = Compared.of(Compared.replaced(zones), Compared.replaced(windier));
    assertThat(compared.words()).containsExactly("criteria: site wind speed 115 mph → 120 mph");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "least 1'-0\" x 2'-0\"",
        "largest-area 40 ft2",
        "shear-modulus 1 MPa",
        "edge-psi 0.05 W/mK",
        "billed 2\""
      })
  void eachPropertyOfAGlassIsTold(String line) {
    String catalog = Compared.example("catalog/captured.wall");
    String other = catalog.replace("glass V1 {", "glass V1 {\n    " + line);
    String ferry = Compared.ferry();
    Compared compared = Compared.of(Compared.read(ferry, catalog), Compared.read(ferry, other));
    assertThat(compared.words()).isNotEmpty().allSatisfy(it -> assertThat(it).contains("V1"));
  }

  @Test
  void linesThatMoveTogetherAreOneChange() {
    assertThat(Compared.ferry(LINES, "lines A..G  spaced 5'-6\", 5 @ 5'-0\"").words())
        .containsExactly("lines B..G moved 6\" to the right");
  }

  @Test
  void baysOfAnotherWidthAreOneChange() {
    assertThat(Compared.ferry(LINES, "lines A..G  spaced 6 @ 5'-3\"").words())
        .containsExactly("bays A-G each 5'-0\" → 5'-3\" wide");
  }

  @Test
  void aRenamedLineIsOneChangeWithoutEffects() {
    Compared compared = Compared.ferry("lines A..G ", "lines A, B, C, D1, E, F, G ");
    assertThat(compared.words()).containsExactly("line D is now called D1");
    assertThat(compared.review().pieces()).isEmpty();
    assertThat(compared.review().reactions()).isEmpty();
    assertThat(compared.review().tripped()).isEmpty();
    assertThat(compared.review().mended()).isEmpty();
  }

  @Test
  void anInsertedLineTakesWhatStandsOnItAlong() {
    Compared compared = Compared.ferry(LINES, LINES + "\n    line C.5 at 2'-6\" right of C");
    assertThat(compared.words()).containsExactly("line C.5 added: at 12'-6\"");
    // the vertical itself in two lengths, if a range includes it
    assertThat(compared.pieces(GONE, HORIZONTAL)).isEqualTo(7);
    assertThat(compared.pieces(NEW, HORIZONTAL)).isEqualTo(14);
    assertThat(compared.pieces(GONE, CELL)).isEqualTo(6);
    assertThat(compared.pieces(NEW, CELL)).isEqualTo(12);
  }

  @Test
  void aRowTakenOutMakesTwoLitesOne() {
    Compared compared = Compared.ferry("    row R3      at 1'-6\"    below L2\n", "");
    assertThat(compared.words()).first().asString().startsWith("row R3 removed");
    assertThat(compared.words()).hasSize(1);
    assertThat(compared.pieces(GONE, CELL)).isEqualTo(12);
    assertThat(compared.pieces(NEW, CELL)).isEqualTo(6);
  }

  @Test
  void aRaisedRowResizesTheLitesOnEitherSide() {
    Compared compared = Compared.ferry("row R1      at 3'-0\"", "row R1      at 3'-6\"");
    assertThat(compared.words()).containsExactly("row R1 moved: 3'-0\" above L1 → 3'-6\" above L1");
    assertThat(compared.pieces(CHANGED, CELL)).isEqualTo(12);
    assertThat(compared.review().pieces())
        .filteredOn(piece -> piece.key().kind() == CELL)
        .extracting(PieceChange::taller)
        .containsOnly(Length.ofInches(6), Length.ofInches(6).negated());
  }

  @Test
  void aRaisedFloorTakesItsRowsAlong() {
    Compared compared = Compared.ferry("floor   Roof    at 26'-0\"", "floor   Roof    at 26'-6\"");
    assertThat(compared.words()).containsExactly("floor Roof moved 6\" up, 26'-0\" → 26'-6\"");
    assertThat(compared.review().pieces())
        .filteredOn(piece -> piece.key().kind() == VERTICAL)
        .filteredOn(piece -> !piece.onlyFixings())
        .extracting(PieceChange::longer)
        .containsOnly(Length.ofInches(6));
  }

  @Test
  void splicesElsewhere() {
    assertThat(Compared.ferry("at 2'-0\" above L2", "at 1'-6\" above L2").words())
        .containsExactly("splices of B..F at L2 moved: 2'-0\" above L2 → 1'-6\" above L2");
    assertThat(Compared.ferry("at 2'-0\" above L2", "at 3'-0\" above L1").words())
        .containsExactly("splices of B..F at L2 moved to 3'-0\" above L1 (was 2'-0\" above L2)");
  }

  @Test
  void anchorsOfAnotherKindOrIsolation() {
    Compared compared =
        Compared.ferry(
            "wind-load A, G  at Roof  part slot-6  bolted 2 x hex-half  isolated by nylon-pad",
            "wind-load A, G  at Roof  part slot-6  bolted 2 x hex-half  isolated by"
                + " bituminous-paint");
    assertThat(compared.words())
        .containsExactly(
            "wind-load anchors of A, G at Roof: isolated by nylon-pad → bituminous-paint",
            "isolation nylon-pad is no longer used");
    Compared kind =
        Compared.ferry(
            "dead-load   A, G    at L2           part angle-6",
            "wind-load   A, G    at L2           part slot-6 ");
    assertThat(kind.words())
        .containsExactly(
            "anchors of A, G at L2: kind dead-load → wind-load, part angle-6 → slot-6");
    assertThat(kind.review().tripped())
        .extracting(change -> change.finding().rule())
        .contains("splice-unsupported");
    assertThat(kind.review().tripped())
        .allSatisfy(change -> assertThat(change.causes()).contains(0));
  }

  @Test
  void glassChangedInPartAndMaterialWithIt() {
    Compared compared = Compared.ferry("vision V1  rows R1..R2, R4..R5", "vision V1  rows R1..R2");
    assertThat(compared.words())
        .containsExactly("lites R4 to R5, bays A-G: as vision → spandrel, glass V1 → S1");
    assertThat(compared.review().goods())
        .filteredOn(change -> change.item().group() == Goods.Group.GLASS)
        .extracting(change -> change.item().name() + " " + change.count())
        .containsExactly("S1 6", "V1 -6");
  }

  @Test
  void aProfileOfTheCatalogThatBecomesWider() {
    String catalog = Compared.example("catalog/captured.wall");
    int at = catalog.indexOf("profile rail-6");
    String wider =
        catalog.substring(0, at) + catalog.substring(at).replaceFirst("face 2 1/2\"", "face 3\"");
    Compared compared =
        Compared.of(Compared.read(Compared.ferry()), Compared.read(Compared.ferry(), wider));
    assertThat(compared.words())
        .containsExactly("profile rail-6: face 2 1/2\" → 3\", sightline 2 1/2\" → 3\"");
    assertThat(compared.review().pieces()).isNotEmpty();
  }

  @Test
  void criteriaAndReactionsThatGrow() {
    Compared compared = Compared.ferry("wind    field   32 psf in", "wind    field   40 psf in");
    assertThat(compared.words()).containsExactly("wind zone field: in 32 psf → 40 psf");
    assertThat(compared.review().pieces()).isEmpty();
    // reactions grow with the pressure: 40 ÷ 32, where the field zone governs alone
    assertThat(compared.review().reactions())
        .anySatisfy(
            reaction ->
                assertThat(reaction.growth())
                    .isCloseTo(0.25, org.assertj.core.data.Offset.offset(1e-9)));
  }

  @Test
  void holdsAndRevisionsAreTold() {
    Compared compared =
        Compared.ferry(
            "revision B",
            "revision C",
            "gap 5/8\"",
            "gap 5/8\" hold \"await the movement report\"");
    assertThat(compared.words())
        .containsExactly("wall: revision B → C", "hold “await the movement report” added");
  }

  @Test
  void severalAtOnceAreToldOneByOne() {
    assertThat(
            Compared.ferry(
                    LINES,
                    "lines A..G  spaced 2 @ 5'-0\", 5'-3\", 4'-9\", 2 @ 5'-0\"",
                    "row R1      at 3'-0\"",
                    "row R1      at 3'-6\"",
                    "at 2'-0\" above L2",
                    "at 1'-6\" above L2")
                .words())
        .isEqualTo(
            List.of(
                "line D moved 3\" to the right, 15'-0\" → 15'-3\"",
                "row R1 moved: 3'-0\" above L1 → 3'-6\" above L1",
                "splices of B..F at L2 moved: 2'-0\" above L2 → 1'-6\" above L2"));
  }
}
