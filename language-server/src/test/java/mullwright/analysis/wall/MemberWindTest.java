package mullwright.analysis.wall;

import static mullwright.analysis.UsUnits.FT;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
import static mullwright.analysis.UsUnits.PSF;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.beam.BeamResponse;
import mullwright.derivation.Derivation;
import org.junit.jupiter.api.Test;

/**
 * Members take the wind of site data by their own effective area, not by that of the lites beside
 * them: span × max(width, span ÷ 3), ASCE 7, 26.2, from memory.
 */
class MemberWindTest {
  private static final double TENTH_PERCENT = 1e-3;

  private static WallText wall(String site, String grid, String anchors) {
    return new WallText(
        """
          criteria {
            wind ultimate
            wind speed 115 mph, exposure C, building width 80', enclosed, corners none
            %s
          }
          grid {
            lines A..C spaced 2 @ 60
            %s
          }
          members {
            vertical all as mullion
            horizontal all
          }
          anchors {
            clip all at sill, head
            %s
          }
          lites {
            vision G all
          }
        """
            .formatted(site, grid, anchors));
  }

  private static final String LOW = "wind roof height 50', roof slope 5 deg";
  private static final String ONE_FLOOR =
      "floor L1 at 0\nrow sill at 0\nrow rail at 36\nrow head at 144";

  private static void close(double computed, double expected) {
    assertThat(computed).isCloseTo(expected, within(Math.abs(expected) * TENTH_PERCENT));
  }

  private static double moment(BeamResponse response) {
    return Math.max(
            response.moments(0, 144 * IN).greatest().value(),
            -response.moments(0, 144 * IN).least().value())
        / (LB * IN);
  }

  @Test
  void aVerticalOf12FeetBy5TakesThePressureOf60SquareFeet() {
    WallText wall = wall(LOW, ONE_FLOOR, "");
    List<Tributary> loads = wall.run("B").tributaries();
    // CHECK 10a, times 0.6: +18.06 and −19.76 psf for 60 ft², whichever lite brings it
    assertThat(loads.size()).isGreaterThanOrEqualTo(4);
    for (Tributary load : loads) {
      close(load.wind().strip().orElseThrow().area().orElseThrow() / (FT * FT), 60);
      close(load.pressure().in() / PSF, 18.06);
      close(load.pressure().out() / PSF, 19.76);
    }
    // closed form wL²/8, recomputed: 18.06 psf × 5 ft over 12 ft
    SolvedBeam beam = wall.beam("B");
    close(beam.moments(0, 144 * IN).greatest().size() / (LB * IN), 18.06 * 5 / 12 * 144 * 144 / 8);
    // the lower lite of 3 ft by 5 ft takes more than the member: 15 ft² and less
    assertThat(wall.analysis().wind().on(loads.get(0).cell()).in())
        .isGreaterThan(loads.get(0).pressure().in());
  }

  @Test
  void anEndMemberIsNoNarrowerThanAThirdOfItsSpan() {
    WallText wall = wall(LOW, ONE_FLOOR, "");
    // ASCE 7, 26.2, from memory: 2.5 ft of width, but a third of 12 ft counts: 48 ft²
    Tributary load = wall.run("A").tributaries().get(0);
    close(load.wind().strip().orElseThrow().area().orElseThrow() / (FT * FT), 48);
    // CHECK 10a's q_h and its coefficient at 48 ft²; a flat roof does not reduce the internal 0.18
    double coefficient = 0.9 * (1.1766 - 0.1766 * Math.log10(48)) + 0.18;
    close(load.pressure().in() / PSF, 0.6 * 31.48 * coefficient);
  }

  @Test
  void aHighVerticalTakesThePressureOfItsHeightInward() {
    WallText wall =
        wall(
            "wind roof height 200'\nwind ground at 144 - 1200",
            "floor L1 at 0\nrow sill at 0\nrow rail at 36\nrow head at 144",
            "");
    List<Tributary> loads = wall.run("B").tributaries();
    Tributary upper = loads.get(loads.size() - 1);
    // CHECK 10b, times 0.6: +36.64 with z = 100 ft, −42.64 psf
    close(upper.pressure().in() / PSF, 0.6 * 36.64);
    close(upper.pressure().out() / PSF, 0.6 * 42.64);
  }

  @Test
  void eachSpanTakesItsOwn() {
    WallText wall =
        wall(
            LOW,
            "floor L1 at 0\nfloor L2 at 96\nrow sill at 0\nrow head at 240",
            "dead-load all at L2 part angle");
    List<Tributary> loads = wall.run("B").tributaries();
    // spans of 8 and 12 ft by 5 ft, split at the anchor though one lite passes it
    assertThat(loads).anySatisfy(load -> assertThat(load.to()).isCloseTo(96 * IN, within(1e-9)));
    close(loads.get(0).wind().strip().orElseThrow().area().orElseThrow() / (FT * FT), 40);
    Tributary upper = loads.get(loads.size() - 1);
    close(upper.wind().strip().orElseThrow().area().orElseThrow() / (FT * FT), 60);
    // CHECK 10a for the upper span
    close(upper.pressure().in() / PSF, 18.06);
    assertThat(loads.get(0).pressure().in()).isGreaterThan(upper.pressure().in());
  }

  @Test
  void aHorizontalIsLoadedBy45DegreeLinesAndAtLeastAThirdOfItsSpan() {
    WallText wall = wall(LOW, ONE_FLOOR, "");
    HorizontalLoads.Edge edge = wall.horizontal("horizontal rail, bay A-B").loads().edges().get(0);
    // 5 ft over 3 ft: under it a trapezoid of 1.5 × 3.5 ft², over it a triangle of 2.5 × 2.5 ft²
    close(edge.wind().strip().orElseThrow().area().orElseThrow() / (FT * FT), 5.25 + 6.25);
    // the sill has the trapezoid alone: a third of the span counts, 5 × 5 ÷ 3 ft²
    HorizontalLoads.Edge sill = wall.horizontal("horizontal sill, bay A-B").loads().edges().get(0);
    close(sill.wind().strip().orElseThrow().area().orElseThrow() / (FT * FT), 25 / 3.0);
    assertThat(sill.pressure().in()).isGreaterThan(edge.pressure().in());
  }

  @Test
  void theTraceTellsTheAreaAndLeadsToTheSpeed() {
    WallText wall = wall(LOW, ONE_FLOOR, "");
    SolvedBeam.Peak peak = wall.beam("B").moments(0, 144 * IN).largest();
    Derivation moment = RunTrace.moment(wall.run("B"), peak, "moment", peak.size());
    assertThat(moment.steps())
        .extracting(Derivation::name)
        .contains("pressure 1", "pressure 2", "effective area", "width", "speed");
    assertThat(
            moment.steps().stream()
                .filter(step -> step.name().equals("effective area"))
                .map(Derivation::formula))
        .containsOnly("span × max(width, span ÷ 3)");
  }

  @Test
  void pressuresThatAreGivenStandAsTheyAre() {
    WallText wall =
        new WallText(
            """
              criteria {
                wind service
                wind field 30 psf in, 30 psf out
              }
              grid {
                lines A..C spaced 2 @ 60
                floor L1 at 0
                row sill at 0
                row head at 144
              }
              members {
                vertical all as mullion
                horizontal all
              }
              anchors {
                clip all at sill, head
              }
              lites {
                vision G all
              }
            """);
    // CHECK 1.1a: 30 psf × 5 ft over 12 ft gives 32 400 lb·in
    close(moment(wall.beam("B").responses().get(0)), 32_400);
    assertThat(wall.run("B").tributaries().get(0).wind().strip()).isEmpty();
  }
}
