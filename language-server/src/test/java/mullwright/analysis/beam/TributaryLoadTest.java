package mullwright.analysis.beam;

import static mullwright.analysis.Outcomes.refused;
import static mullwright.analysis.Outcomes.solved;
import static mullwright.analysis.UsUnits.FT;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
import static mullwright.analysis.UsUnits.PSF;
import static mullwright.analysis.beam.BeamFixtures.poundInches;
import static mullwright.analysis.beam.BeamFixtures.pounds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TributaryLoadTest {
  private static final Percentage TENTH = withinPercentage(0.1);

  private static TributaryLoad.Result edge(double pressure, double edge, double other) {
    return solved(TributaryLoad.solve(new TributaryLoad.Input(pressure, edge, other)));
  }

  /** A simple span with the shape on it; inches, pounds. */
  private static BeamResponse span(TributaryLoad.Result shape, double rigidity) {
    Beam beam =
        Beam.uniform(
            0,
            shape.input().edge(),
            rigidity * LB * IN * IN,
            List.of(Beam.Support.pin(0), Beam.Support.pin(shape.input().edge())),
            List.of());
    return BeamFixtures.solve(beam, shape.loads(0).toArray(BeamLoad[]::new));
  }

  @Nested
  class FromOutside {

    @Test
    void trapezoidOnAWideHorizontal() {
      // Closed form, recomputed: peak 12.5 lb/in, L 144, ramps 30 in, EI 80e6
      double pressure = 12.5 * LB / IN / (30 * IN);
      TributaryLoad.Result shape = edge(pressure, 144 * IN, 60 * IN);
      assertThat(shape.peak() / (LB / IN)).isCloseTo(12.5, TENTH);
      assertThat(shape.ramp() / IN).isCloseTo(30, TENTH);
      assertThat(shape.triangle()).isFalse();
      BeamResponse r = span(shape, 80e6);
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(30_525, TENTH);
      assertThat(r.deflections(0, 144 * IN).greatest().value() / IN).isCloseTo(0.8151, TENTH);
      assertThat(pounds(r)[0]).isCloseTo(712.5, TENTH);
    }

    @Test
    void triangleOnANarrowHorizontal() {
      // Closed form, recomputed: peak 12.5 lb/in, L 60 in, EI 15e6
      double pressure = 12.5 * LB / IN / (30 * IN);
      TributaryLoad.Result shape = edge(pressure, 60 * IN, 72 * IN);
      assertThat(shape.triangle()).isTrue();
      BeamResponse r = span(shape, 15e6);
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(3750, TENTH);
      assertThat(r.deflections(0, 60 * IN).greatest().value() / IN).isCloseTo(0.0900, TENTH);
      assertThat(pounds(r)[0]).isCloseTo(187.5, TENTH);
    }

    @Test
    void uniformLineLoadOnAVertical() {
      // Closed form, recomputed: 30 psf, 5 ft bays: 12.5 lb/in
      assertThat(TributaryLoad.lineLoad(30 * PSF, 5 * FT, 30 * PSF, 5 * FT) / (LB / IN))
          .isCloseTo(12.5, TENTH);
      assertThat(TributaryLoad.lineLoad(30 * PSF, 5 * FT, 0, 0) / (LB / IN)).isCloseTo(6.25, TENTH);
    }

    @Test
    void glassOnAHorizontal() {
      // Closed form, recomputed: L 60 in, glass 184 lb, I 0.60 in⁴, E 10.0e6 psi
      assertThat(sag(15, 0).byGlass() / IN).isCloseTo(0.0949, TENTH);
      assertThat(sag(7.5, 0).byGlass() / IN).isCloseTo(0.0507, TENTH);
      // Closed form, recomputed; printed with two figures.
      assertThat(sag(15, 2.2 * LB / FT).byOwnWeight() / IN).isCloseTo(0.0052, within(0.00005));
    }

    private DeadLoadSag.Result sag(double block, double ownWeight) {
      return solved(
          DeadLoadSag.solve(
              new DeadLoadSag.Input(
                  60 * IN, 10e6 * 0.60 * LB * IN * IN, 184 * LB, block * IN, ownWeight, 0)));
    }

    @Test
    void quarterPointsByTheirOwnFormula() {
      // Closed form, recomputed: 11·P·L³/(384·E·I)
      DeadLoadSag.Result r =
          solved(DeadLoadSag.solve(new DeadLoadSag.Input(2, 5000, 900, 0.5, 0, 0)));
      assertThat(r.byGlass()).isCloseTo(11 * 450 * 8.0 / (384 * 5000), within(1e-12));
    }
  }

  @Nested
  class Contract {

    @ParameterizedTest
    @CsvSource({"1.5, 3.6", "3.6, 1.5", "2, 2", "0.3, 4", "1.2, 1.19"})
    void theFourEdgesTakeTheWholePressure(double width, double height) {
      double taken = 2 * edge(1436, width, height).total() + 2 * edge(1436, height, width).total();
      assertThat(taken).isCloseTo(1436 * width * height, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1.5, 3.6", "3.6, 1.5", "2, 2"})
    void theShapeIsItsResultant(double length, double other) {
      TributaryLoad.Result shape = edge(-900, length, other);
      double sum = 0;
      for (BeamLoad load : shape.loads(7)) {
        BeamLoad.Distributed d = (BeamLoad.Distributed) load;
        sum += (d.atFrom() + d.atTo()) / 2 * (d.to() - d.from());
      }
      assertThat(sum).isCloseTo(shape.total(), within(1e-9));
    }

    @Test
    void aVeryFlatLiteLoadsItsLongEdgeEvenly() {
      TributaryLoad.Result shape = edge(1000, 4, 1e-6);
      assertThat(shape.total()).isCloseTo(shape.peak() * 4, within(1e-8));
    }

    @Test
    void aSquareIsWhereTrapezoidAndTriangleMeet() {
      double wide = edge(1000, 2 + 1e-9, 2).total();
      double narrow = edge(1000, 2, 2 + 1e-9).total();
      assertThat(wide).isCloseTo(narrow, within(1e-5));
    }

    @Test
    void sagAgreesWithTheGeneralSolver() {
      DeadLoadSag.Result r =
          solved(DeadLoadSag.solve(new DeadLoadSag.Input(1.5, 4200, 830, 0.3, 33, 0.02)));
      Beam beam =
          Beam.uniform(
              0, 1.5, 4200, List.of(Beam.Support.pin(0), Beam.Support.pin(1.5)), List.of());
      BeamResponse solver =
          BeamFixtures.solve(
              beam,
              new BeamLoad.PointForce(0.3, 415),
              new BeamLoad.PointForce(1.2, 415),
              BeamLoad.Distributed.uniform(0, 1.5, 33));
      assertThat(r.sag()).isCloseTo(solver.deflectionAt(0.75), within(1e-12));
      assertThat(r.moment()).isCloseTo(solver.momentAt(0.75), within(1e-9));
      assertThat(r.endReaction()).isCloseTo(solver.reactions().get(0).force(), within(1e-9));
      assertThat(r.torque()).isCloseTo(16.6, within(1e-12));
    }

    @Test
    void blocksAtTheEndsSagNothing() {
      DeadLoadSag.Result r =
          solved(DeadLoadSag.solve(new DeadLoadSag.Input(1.5, 4200, 830, 0, 0, 0)));
      assertThat(r.sag()).isZero();
    }

    @Test
    void outOfRangeIsRefused() {
      assertThat(refused(TributaryLoad.solve(new TributaryLoad.Input(1000, 0, 2))))
          .startsWith("edge of the lite is 0 m");
      assertThat(refused(DeadLoadSag.solve(new DeadLoadSag.Input(1.5, 4200, 830, 0.76, 0, 0))))
          .startsWith("distance of a setting block from the end is 0.76 m");
    }
  }
}
