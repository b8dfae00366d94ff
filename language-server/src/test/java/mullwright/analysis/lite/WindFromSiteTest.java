package mullwright.analysis.lite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.WindOnWall;
import mullwright.derivation.Derivation;
import mullwright.model.ModelMemory;
import mullwright.model.ModelProblem;
import mullwright.model.ModelReader;
import mullwright.syntax.ParsedFile;
import org.junit.jupiter.api.Test;

/** Pressures that follow from data of site and building, from the text to the lite. */
class WindFromSiteTest {
  private static final double PSF = 47.88026;
  private static final String LOW =
      "wind ultimate\n"
          + "wind speed 115 mph, exposure C, roof height 50', building width 80'\n"
          + "wind enclosed\n";

  /** Handbook 10a: A = 60 ft², 0.6 of what it gives, recomputed. */
  private static WindOnWall.Pressure on(String criteria) {
    OneLite lite = OneLite.of("5'", "12'", "ply 6 annealed", criteria);
    return lite.bearing().wind();
  }

  private static void holds(WindOnWall.Pressure pressure, double in, double out, String zone) {
    // ASCE 7-16 chapter 30, recomputed in psf
    assertThat(pressure.in() / PSF).isCloseTo(in, within(in * 1e-3));
    assertThat(pressure.out() / PSF).isCloseTo(out, within(out * 1e-3));
    assertThat(pressure.zoneOut()).isEqualTo(zone);
  }

  @Test
  void aLowBuildingByItsZones() {
    holds(on(LOW + "wind corners none"), 0.6 * 32.82, 0.6 * 35.96, "4");
    holds(on(LOW), 0.6 * 32.82, 0.6 * 41.08, "5");
  }

  @Test
  void aFlatRoofTakesATenthOff() {
    holds(on(LOW + "wind roof slope 5 deg, corners none"), 18.06, 19.76, "4");
    holds(on(LOW + "wind roof slope 5 deg"), 18.06, 22.52, "5");
    holds(on(LOW + "wind roof slope 15 deg"), 0.6 * 32.82, 0.6 * 41.08, "5");
  }

  @Test
  void aHighBuildingTakesThePressureOfTheHeightInward() {
    String high =
        "wind ultimate\n"
            + "wind speed 115 mph, exposure C, roof height 200', building width 80'\n"
            // the top of the daylight opening is 100 ft above ground
            + "wind enclosed, ground at 3762.6 - 30480";
    // ASCE 7-16 chapter 30, part 3, recomputed: +36.64, −42.64, −71.94 psf
    holds(on(high + ", corners none"), 0.6 * 36.64, 0.6 * 42.64, "4");
    holds(on(high), 0.6 * 36.64, 0.6 * 71.94, "5");
  }

  @Test
  void noPressureIsLessThanTheMinimum() {
    WindOnWall.Pressure light =
        on(
            "wind ultimate\n"
                + "wind speed 60 mph, exposure B, roof height 20', building width 80', enclosed");
    // ASCE 7, 30.2.2: 16 psf each way, from memory
    holds(light, 0.6 * 16, 0.6 * 16, "5");
  }

  @Test
  void givenUltimatePressuresAreTakenBySixTenths() {
    WindOnWall.Pressure given = on("wind ultimate\nwind field 30 psf in, 40 psf out");
    holds(given, 18, 24, "field");
  }

  @Test
  void whatIsAssumedIsToldAsAssumed() {
    OneLite lite = OneLite.of("5'", "12'", "ply 6 annealed", LOW);
    Derivation wind = lite.analysis().wind().explain(lite.cell()).orElseThrow();
    assertThat(wind.value().toSi()).isCloseTo(lite.bearing().wind().out(), within(1e-3));
    assertThat(wind.defaults()).extracting(Derivation::name).contains("Kzt", "Kd", "ground");
  }

  @Test
  void whatIsMissingOrCannotBeIsReported() {
    assertThat(problems("wind ultimate\nwind speed 115 mph, exposure C"))
        .extracting(ModelProblem.Missing.class::cast)
        .extracting(ModelProblem.Missing::what)
        .containsExactly(
            "the mean roof height", "the building's least width", "how the building is enclosed");
    assertThat(problems(LOW.replace("exposure C", "exposure E"))).hasSize(1);
    assertThat(problems(LOW + "wind Kzt 0.5")).hasSize(1);
    assertThat(problems(LOW + "wind edition 2010")).hasSize(1);
    assertThat(problems(LOW.replace("ultimate", "service")))
        .as("speeds of ASCE 7 give ultimate pressures")
        .hasSize(1);
    assertThat(problems(LOW + "wind field 30 psf in, 30 psf out")).hasSize(1);
    assertThat(problems("wind field 30 psf in, 30 psf out"))
        .as("service or ultimate is said, never guessed")
        .hasSize(1);
  }

  private static List<ModelProblem> problems(String criteria) {
    ParsedFile file = ParsedFile.parse("wall W {\n criteria {\n" + criteria + "\n }\n}\n");
    return ModelReader.read("w.wall", name -> Optional.of(file), new ModelMemory())
        .problems()
        .stream()
        .filter(problem -> problem.origin().range().start() > 0)
        .filter(
            problem ->
                problem instanceof ModelProblem.Missing missing
                        && missing.where().startsWith("wind")
                    || problem instanceof ModelProblem.OutOfPlace)
        .toList();
  }
}
