package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A small wall with its catalog, resolved end to end; every expectation was worked out by hand. */
class SampleWallTest {
  private static Walls files;
  private static Model model;
  private static Wall wall;

  @BeforeAll
  static void read() {
    files = Walls.withCatalog().with("east.wall", Walls.resource("east.wall"));
    model = files.read("east.wall");
    wall = model.walls().get(0);
  }

  private static Length inches(long inches) {
    return Length.ofInches(inches);
  }

  @Test
  void nothingIsWrongWithIt() {
    assertThat(model.problems()).isEmpty();
    assertThat(model.unusedNames()).isEmpty();
    assertThat(model.uses()).containsExactly("captured.wall");
  }

  @Test
  void linesStandFiveFeetApart() {
    // 6 @ 5'-0" from A: 0, 60, … 360 inches
    assertThat(wall.grid().lines())
        .extracting(Grid.Line::name)
        .containsExactly("A", "B", "C", "D", "E", "F", "G");
    assertThat(wall.grid().lines())
        .extracting(Grid.Line::x)
        .containsExactly(
            inches(0), inches(60), inches(120), inches(180), inches(240), inches(300), inches(360));
    assertThat(wall.grid().lines())
        .extracting(Grid.Line::end)
        .containsExactly(true, false, false, false, false, false, true);
    assertThat(wall.grid().bays()).hasSize(6).allMatch(bay -> bay.width().equals(inches(60)));
    assertThat(wall.grid().faces()).extracting(Grid.Face::name).containsExactly("");
  }

  @Test
  void rowsAreMeasuredFromTheirFloors() {
    // sill 2" above 0; R1 36"; R2 114"; R3 18" below 156" = 138"; R4 156 + 36 = 192"; R5 156 + 114
    // =
    // 270"; head 4" above 312" = 316"
    assertThat(wall.grid().rows())
        .extracting(row -> row.name() + " " + row.left().elevation().inches())
        .containsExactly("sill 2", "R1 36", "R2 114", "R3 138", "R4 192", "R5 270", "head 316");
    Grid.Row third = wall.grid().rows().get(3);
    assertThat(third.left().base()).contains("L2");
    assertThat(third.left().offset()).isEqualTo(inches(-18));
    assertThat(third.floor()).contains(1);
    assertThat(wall.grid().floors())
        .extracting(floor -> floor.slab().orElseThrow().value())
        .containsExactly(inches(6), inches(10), inches(10));
  }

  @Test
  void jambsStandAtTheEndsAndMullionsBetween() {
    assertThat(wall.members().verticals())
        .extracting(vertical -> vertical.profile().value())
        .containsExactly(
            "jamb-6", "mullion-6", "mullion-6", "mullion-6", "mullion-6", "mullion-6", "jamb-6");
    assertThat(wall.members().verticals())
        .allMatch(vertical -> vertical.from().isEmpty() && vertical.to().isEmpty());
    assertThat(files.text(wall.members().verticals().get(2).origin()))
        .isEqualTo("vertical   B..F        as mullion");
  }

  @Test
  void rowsNamedSillAndHeadTakeThoseProfiles() {
    // 7 rows × 6 bays
    assertThat(wall.members().horizontals()).hasSize(42);
    assertThat(
            wall.members().horizontals().stream()
                .filter(horizontal -> horizontal.bay() == 0)
                .map(horizontal -> horizontal.profile().value())
                .toList())
        .containsExactly("sill-6", "rail-6", "rail-6", "rail-6", "rail-6", "rail-6", "head-6");
  }

  @Test
  void splicesSitTwoFeetAboveL2() {
    // 156 + 24 = 180", lines B to F, the system's sleeve
    assertThat(wall.members().splices())
        .extracting(Members.Splice::line)
        .containsExactly(1, 2, 3, 4, 5);
    assertThat(wall.members().splices())
        .allMatch(splice -> splice.at().elevation().equals(inches(180)))
        .allMatch(splice -> splice.gap().value().equals(Length.ofInches(5, 8)))
        .allMatch(splice -> !splice.gap().assumed())
        .allMatch(splice -> splice.sleeve().orElseThrow().value().equals("sleeve-6"));
  }

  @Test
  void anchorsByLineFromBelow() {
    // A: clip at the sill, dead load at L2, wind load at Roof; C: clip, dead load at L2 and Roof
    assertThat(anchors(0))
        .containsExactly("clip sill clip-sill", "dead-load L2 angle-6", "wind-load Roof slot-6");
    assertThat(anchors(2))
        .containsExactly("clip sill clip-sill", "dead-load L2 angle-6", "dead-load Roof angle-6");
    AnchorUse atEnd = wall.anchors().get(1);
    assertThat(atEnd.spread().map(Given::value)).contains("plate-6");
    assertThat(atEnd.bolted().map(Members.Fixing::count)).contains(2);
    assertThat(atEnd.heightStated()).isFalse();
    assertThat(atEnd.floor()).contains(1);
    assertThat(wall.anchors()).hasSize(21);
  }

  private static List<String> anchors(int line) {
    return wall.anchors().stream()
        .filter(anchor -> anchor.line() == line)
        .map(
            anchor ->
                anchor.kind().spelling()
                    + " "
                    + anchor.place().base().orElse("")
                    + " "
                    + anchor.part().map(Given::value).orElse(""))
        .toList();
  }

  @Test
  void visionIsNarrowerThanSpandrel() {
    // cells from below: sill-R1 S1, R1-R2 V1, R2-R3 S1, R3-R4 S1, R4-R5 V1, R5-head S1
    for (int bay = 0; bay < 6; bay++) {
      int at = bay;
      assertThat(
              wall.lites().stream()
                  .filter(lite -> lite.bay() == at)
                  .map(lite -> lite.glass().value())
                  .collect(Collectors.joining(" ")))
          .isEqualTo("S1 V1 S1 S1 V1 S1");
    }
    assertThat(wall.lites()).filteredOn(LiteUse::vision).hasSize(12);
  }

  @Test
  void laddersThenSticks() {
    assertThat(wall.installation().stretches())
        .extracting(
            stretch -> stretch.method() + " " + stretch.firstLine() + " " + stretch.lastLine())
        .containsExactly("LADDER 0 2", "STICK 2 6");
  }

  @Test
  void criteriaComeFromTheProject() {
    Criteria criteria = wall.criteria();
    assertThat(criteria.windBasis().map(Given::value)).contains("service");
    assertThat(criteria.wind())
        .extracting(Criteria.WindZone::name)
        .containsExactly("field", "edge");
    Criteria.WindZone edge = criteria.wind().get(1);
    assertThat(edge.out().value())
        .isEqualTo(Quantity.of(Rational.of(48), Unit.POUND_PER_SQUARE_FOOT));
    assertThat(edge.withinEnds().map(Given::value)).contains(inches(60));
    Criteria.Temperature metal = criteria.temperature().orElseThrow().value();
    // -10 F, 150 F, 60 F
    assertThat(metal.least().in(Unit.FAHRENHEIT)).isEqualTo(Rational.of(-10));
    assertThat(metal.most().in(Unit.FAHRENHEIT)).isEqualTo(Rational.of(150));
    assertThat(metal.set().in(Unit.FAHRENHEIT)).isEqualTo(Rational.of(60));
    assertThat(criteria.slabDeflection().get("").value()).isEqualTo(Length.ofInches(3, 8));
    assertThat(criteria.storyDrift().map(Given::value)).contains(Length.ofInches(5, 8));
    assertThat(criteria.exposure().assumed()).isFalse();
    assertThat(model.project().orElseThrow().revision().map(Given::value)).contains("B");
    assertThat(wall.finish().get("outside").value()).isEqualTo("bronze");
  }

  @Test
  void defaultsSayThatTheyAreDefaults() {
    assertThat(wall.fabrication().kerf())
        .satisfies(
            kerf -> {
              assertThat(kerf.value()).isEqualTo(Length.ofInches(1, 8));
              assertThat(kerf.assumed()).isTrue();
              assertThat(kerf.source()).isEqualTo("common practice");
            });
    Part.Profile mullion = model.catalog().find(Part.Profile.class, "mullion-6").orElseThrow();
    assertThat(mullion.endAllowance().assumed()).isTrue();
    assertThat(mullion.sightline().value()).isEqualTo(mullion.face().value());
    assertThat(mullion.sightline().assumed()).isTrue();
    // 2.5 in² × 2700 kg/m³ = 0.0016129 m² × 2700 = 4.35483 kg/m (closed form)
    assertThat(mullion.massPerLength().orElseThrow().value())
        .isEqualTo(new Quantity(Rational.of("4.35483"), Kind.MASS_PER_LENGTH.dimension()));
    assertThat(mullion.massPerLength().orElseThrow().assumed()).isTrue();
    // the glass plane lies at the profile's depth from its back
    assertThat(wall.system().orElseThrow().glassPlane().value()).isEqualTo(inches(6));
  }

  @Test
  void glassKeepsItsLayersFromOutdoors() {
    Part.Glass glass = model.catalog().find(Part.Glass.class, "V1").orElseThrow();
    // 1/4" is the designation of nominal 6 mm (ASTM E1300, from memory); surface 2 is the inner
    // face
    // of the outer pane
    assertThat(glass.layers())
        .extracting(layer -> layer.what() + " " + layer.thickness() + " " + layer.words())
        .containsExactly(
            "ply 6 mm [clear, heat-strengthened, low-e surface 2]",
            "space 12.7 mm [air]",
            "ply 6 mm [clear]");
    assertThat(model.catalog().find(Part.Glass.class, "S1").orElseThrow().opacified().value())
        .isTrue();
  }

  @Test
  void everyNameInTheTextIsFound() {
    for (Reference reference : model.references()) {
      String text = files.text(reference.origin()).replace("\"", "");
      assertThat(text).isEqualTo(reference.symbol().name());
    }
    Optional<Reference> use =
        model.references().stream()
            .filter(reference -> !reference.definition())
            .filter(reference -> reference.symbol().name().equals("C"))
            .findFirst();
    // C has no text of its own where it is defined: the range makes it
    assertThat(files.text(use.orElseThrow().symbol().definition())).isEqualTo("A..G");
  }

  @Test
  void theMemoryReadsACatalogOnce() {
    ModelMemory memory = new ModelMemory();
    Model one = files.read("east.wall", memory);
    files.with("east.wall", Walls.resource("east.wall").replace("5'-0\"", "6'-0\""));
    Model other = files.read("east.wall", memory);
    files.with("east.wall", Walls.resource("east.wall"));
    assertThat(other.walls().get(0).grid().bays().get(0).width()).isEqualTo(inches(72));
    assertThat(other.catalog()).isSameAs(one.catalog());
  }
}
