package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import org.junit.jupiter.api.Test;

/** What project and wall ask: layers, zones, floors. */
class CriteriaTest {
  private static final String FLOORS = "grid { floors L1..L4 spaced 3 @ 156 }";

  private static Seen project(String criteria, String wall) {
    return Seen.of(
        "project \"P\" {\nunits inches\ncriteria {\n"
            + criteria
            + "\n}\n}\nwall W {\n"
            + FLOORS
            + "\n"
            + wall
            + "\n}");
  }

  private static Quantity psf(long number) {
    return Quantity.of(Rational.of(number), Unit.POUND_PER_SQUARE_FOOT);
  }

  @Test
  void aWallGoesOverItsProject() {
    Seen seen =
        project(
                "wind ultimate\nwind field 32 psf in, 36 psf out\nexposure outdoor\nstory drift 1/2\"",
                "criteria {\nwind field 40 psf in, 44 psf out\nexposure coastal\n}")
            .sound();
    Criteria own = seen.wall().criteria();
    assertThat(own.windBasis().orElseThrow().value()).isEqualTo("ultimate");
    assertThat(own.wind()).hasSize(1);
    assertThat(own.wind().get(0).in().value()).isEqualTo(psf(40));
    assertThat(own.exposure().value()).isEqualTo("coastal");
    assertThat(own.storyDrift()).isPresent();
    Criteria projects = seen.model().project().orElseThrow().criteria();
    assertThat(projects.wind().get(0).in().value()).isEqualTo(psf(32));
  }

  @Test
  void zonesOfHeightsAreFoundInTheWall() {
    Seen seen =
        project(
                "wind service\nwind low 28 psf in, 31 psf out from L1 to L3\n"
                    + "wind high 32 psf in, 36 psf out from L3 to 50'-0\"",
                "")
            .sound();
    Criteria.WindZone low = seen.wall().criteria().wind().get(0);
    assertThat(low.from().orElseThrow().elevation()).isEqualTo(Length.ZERO);
    assertThat(low.to().orElseThrow().elevation()).isEqualTo(Length.ofInches(312));
    assertThat(low.to().orElseThrow().base()).contains("L3");
    Criteria.WindZone high = seen.wall().criteria().wind().get(1);
    assertThat(high.to().orElseThrow().elevation()).isEqualTo(Length.ofInches(600));
    // the project by itself knows no floors
    assertThat(seen.model().project().orElseThrow().criteria().wind().get(0).from()).isEmpty();
  }

  @Test
  void aFloorSomeWallHasIsRight() {
    Seen seen =
        Seen.of(
                """
            project "P" {
              units inches
              criteria {
                wind service
                wind low  28 psf in, 31 psf out from L1 to L3
                wind high 32 psf in, 36 psf out from L3 to L4
              }
            }
            wall Tower { grid { floors L1..L4 spaced 3 @ 156 } }
            wall Podium { grid { floors L1..L2 spaced 156 } }
            """)
            .sound();
    assertThat(seen.model().walls().get(0).criteria().wind()).hasSize(2);
    // the podium ends below L3, so it has no upper zone, and its lower one is not bounded above
    assertThat(seen.wall().criteria().wind()).hasSize(1);
    assertThat(seen.wall().criteria().wind().get(0).to()).isEmpty();
  }

  @Test
  void aFloorNoWallHasIsUnknown() {
    Seen seen = project("wind service\nwind low 28 psf in, 31 psf out from L1 to L9", "");
    assertThat(seen.problem(ModelProblem.UnknownName.class).name()).isEqualTo("L9");
  }

  @Test
  void slabDeflectionByFloor() {
    Seen seen =
        project("slab deflection 3/8\"\nslab deflection 1/2\" L2..L3\nslab deflection 1\" L4", "")
            .sound();
    assertThat(seen.wall().criteria().slabDeflection())
        .hasSize(4)
        .satisfies(
            slab -> {
              assertThat(slab.get("").value()).isEqualTo(Length.ofInches(3, 8));
              assertThat(slab.get("L2").value()).isEqualTo(Length.ofInches(1, 2));
              assertThat(slab.get("L3").value()).isEqualTo(Length.ofInches(1, 2));
              assertThat(slab.get("L4").value()).isEqualTo(Length.ofInches(1));
            });
  }

  @Test
  void slabDeflectionThatDisagrees() {
    Seen seen = project("slab deflection 1/2\" L2..L3\nslab deflection 1\" L3", "");
    assertThat(seen.problem(ModelProblem.Conflict.class).where()).isEqualTo("L3");
  }

  @Test
  void driftAsAShare() {
    assertThat(
            project("story drift 0.25 %", "")
                .sound()
                .wall()
                .criteria()
                .storyDriftRatio()
                .orElseThrow()
                .value())
        .isEqualTo(0.0025);
    assertThat(
            project("story drift H/400", "")
                .sound()
                .wall()
                .criteria()
                .storyDriftRatio()
                .orElseThrow()
                .value())
        .isEqualTo(0.0025);
  }

  @Test
  void aStricterLimit() {
    assertThat(
            project("deflection limit L/240", "")
                .sound()
                .wall()
                .criteria()
                .deflectionLimit()
                .orElseThrow()
                .value())
        .isEqualTo(240.0);
    assertThat(
            project("deflection limit 240", "")
                .sound()
                .wall()
                .criteria()
                .deflectionLimit()
                .orElseThrow()
                .value())
        .isEqualTo(240.0);
  }

  /** A slip of the pen does not stand for the default in silence. */
  @Test
  void anExposureThatIsNoneIsTold() {
    assertThat(project("exposure costal", "").problem(ModelProblem.BadProperty.class).pattern())
        .isEqualTo("outdoor|sheltered|coastal|indoor");
  }

  @Test
  void whatIsNotSaidIsNotGuessed() {
    Criteria criteria = Seen.of("wall W { }").sound().wall().criteria();
    assertThat(criteria.windBasis()).isEmpty();
    assertThat(criteria.wind()).isEmpty();
    assertThat(criteria.temperature()).isEmpty();
    // exposure has a default, the severe one, that says so
    assertThat(criteria.exposure().value()).isEqualTo("outdoor");
    assertThat(criteria.exposure().assumed()).isTrue();
  }

  @Test
  void onePressureIsHalfAZone() {
    Seen seen = project("wind field 32 psf in", "");
    assertThat(seen.problem(ModelProblem.Missing.class).what()).isEqualTo("the pressure out");
  }

  @Test
  void aZoneTwice() {
    Seen seen =
        project(
            "wind service\nwind edge 32 psf in, 36 psf out\nwind edge 40 psf in, 44 psf out", "");
    assertThat(seen.problem(ModelProblem.Duplicate.class).name()).isEqualTo("edge");
  }

  @Test
  void temperaturesInOrder() {
    assertThat(
            project("metal temperature 150 F to -10 F, set at 60 F", "")
                .problem(ModelProblem.OutOfPlace.class)
                .why())
        .startsWith("write the least temperature first");
    assertThat(
            project("metal temperature -10 F to 150 F", "")
                .problem(ModelProblem.Missing.class)
                .offer())
        .contains("set at 60 F");
  }

  @Test
  void aTemperatureIsNoPressure() {
    Seen seen = project("wind field 32 F in, 36 psf out", "");
    assertThat(seen.problems()).anyMatch(ModelProblem.WrongUnit.class::isInstance);
  }

  @Test
  void theShopsRules() {
    Seen seen =
        Seen.of(
                "project \"P\" { fabrication {\nkerf 3/16\"\nend-trim 1\"\nsaw double mitre\n} }\n"
                    + "wall W { fabrication { end-trim 2\" } }")
            .sound();
    Fabrication shop = seen.wall().fabrication();
    assertThat(shop.kerf().value()).isEqualTo(Length.ofInches(3, 16));
    assertThat(shop.endTrim().value()).isEqualTo(Length.ofInches(2));
    // common practice
    assertThat(shop.leastDrop().value()).isEqualTo(Length.ofInches(24));
    assertThat(shop.leastDrop().assumed()).isTrue();
    assertThat(shop.facts().get("saw").value()).isEqualTo("double mitre");
  }

  @Test
  void theRackAndTheSaw() {
    Fabrication shop =
        Seen.of(
                "project \"P\" { fabrication {\n"
                    + "pieces-per-bar 6\n"
                    + "on-hand 3 x 11'-4\" of mullion-6, 1 x 8'-0\" of cap-2 in bronze\n"
                    + "on-hand 2 x 5'-0\" of plate-2\n} }\nwall W { }")
            .sound()
            .wall()
            .fabrication();
    assertThat(shop.piecesPerBar().orElseThrow().value()).isEqualTo(6);
    assertThat(shop.onHand()).extracting(Fabrication.OnHand::count).containsExactly(3, 1, 2);
    assertThat(shop.onHand())
        .extracting(bars -> bars.part().value())
        .containsExactly("mullion-6", "cap-2", "plate-2");
    assertThat(shop.onHand().get(0).length().value()).isEqualTo(Length.ofInches(136));
    assertThat(shop.onHand().get(0).finish()).isEmpty();
    assertThat(shop.onHand().get(1).finish().orElseThrow().value()).isEqualTo("bronze");
    // a wall that tells of its own rack does not look at the project's
    Fabrication own =
        Seen.of(
                "project \"P\" { fabrication {\non-hand 3 x 11'-4\" of mullion-6\n} }\n"
                    + "wall W { fabrication { on-hand 1 x 7'-0\" of mullion-6\n } }")
            .sound()
            .wall()
            .fabrication();
    assertThat(own.onHand()).extracting(Fabrication.OnHand::count).containsExactly(1);
  }

  @Test
  void negativeLengthsOfTheShopAreTold() {
    for (String line :
        new String[] {
          "kerf -1/8\"", "end-trim -1\"", "least-drop -2'-0\"", "on-hand 2 x 0\" of m"
        }) {
      Seen seen =
          Seen.of("project \"P\" { fabrication {\n" + line + "\n} }\nwall W { }\nwall X { }");
      ModelProblem.OutOfPlace told = seen.problem(ModelProblem.OutOfPlace.class);
      assertThat(told.why()).as(line).contains("0\"");
      assertThat(seen.wall().fabrication().kerf().value().signum()).isPositive();
      assertThat(seen.wall().fabrication().onHand()).isEmpty();
    }
  }

  @Test
  void aRackLineWithoutItsPartIsTold() {
    Seen seen = Seen.of("project \"P\" { fabrication {\non-hand 3 x 11'-4\"\n} }\nwall W { }");
    ModelProblem.BadProperty bad = seen.problem(ModelProblem.BadProperty.class);
    assertThat(bad.pattern()).contains("NUMBER x LENGTH of WORD");
    Seen many =
        Seen.of("project \"P\" { fabrication {\non-hand 3000000 x 11'-4\" of m\n} }\nwall W { }");
    assertThat(many.problems()).isNotEmpty();
    assertThat(many.wall().fabrication().onHand()).isEmpty();
  }

  @Test
  void anUnknownCriterion() {
    ModelProblem.BadProperty bad =
        project("winds service", "").problem(ModelProblem.BadProperty.class);
    assertThat(bad.known()).startsWith("wind");
  }
}
