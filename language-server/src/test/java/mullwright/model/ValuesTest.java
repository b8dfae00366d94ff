package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import mullwright.model.ModelProblem.BadValue;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Values: exact arithmetic, dimensions, units of bare numbers, lets. */
class ValuesTest {
  /** The elevation of a floor stated with that text, in a file with that unit line. */
  private static Seen floor(String units, String value, String... lets) {
    return Seen.of(
        units + "\n" + String.join("\n", lets) + "\nwall W { grid { floor L1 at " + value + " } }");
  }

  private static Length elevation(String units, String value, String... lets) {
    return floor(units, value, lets).sound().grid().floors().get(0).elevation().value();
  }

  @Test
  void literalsAreExact() {
    assertThat(elevation("", "5'-6 1/2\"")).isEqualTo(Length.ofInches(133, 2));
    assertThat(elevation("", "1.524 m")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("", "-1'-6\"")).isEqualTo(Length.ofInches(-18));
    assertThat(elevation("", "0.001 mm")).isEqualTo(Length.ofNanometres(1000));
  }

  @Test
  void aBareNumberIsALengthInTheFilesUnit() {
    assertThat(elevation("units inches", "60")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units feet", "5")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units millimetres", "1524")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units mm", "1524")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units metres", "1.524")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units m", "1.524")).isEqualTo(Length.ofInches(60));
  }

  @Test
  void bareNumbersCountInProducts() {
    assertThat(elevation("", "2 * 30\"")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("", "120\" / 2")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units inches", "2 * 24 + 12")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units inches", "2 * (24 + 6\")")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units feet", "5 + 0\"")).isEqualTo(Length.ofInches(60));
  }

  @Test
  void productsComeBeforeSums() {
    assertThat(elevation("", "10\" + 20\" * 2 - 6\" / 3")).isEqualTo(Length.ofInches(48));
    assertThat(elevation("", "(10\" + 20\") * 2")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("", "100\" - 20\" - 20\"")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("", "360\" / 3 / 2")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("", "120\" - (30\" + 30\")")).isEqualTo(Length.ofInches(60));
  }

  @Test
  void lengthsDividedByLengthsCount() {
    assertThat(elevation("", "20\" * (30\" / 10\")")).isEqualTo(Length.ofInches(60));
  }

  @Test
  void letsMayComeInAnyOrder() {
    assertThat(elevation("", "a", "let a = b * 2", "let b = c + 10\"", "let c = 20\""))
        .isEqualTo(Length.ofInches(60));
  }

  @Test
  void aBareLetIsALengthWhereOneIsAskedFor() {
    assertThat(elevation("units inches", "n * 12\"", "let n = 5")).isEqualTo(Length.ofInches(60));
    assertThat(elevation("units inches", "n", "let n = 60")).isEqualTo(Length.ofInches(60));
  }

  @Test
  void aBareNumberWithoutUnits() {
    ModelProblem.UnitMissing missing = floor("", "60").problem(ModelProblem.UnitMissing.class);
    assertThat(missing.number()).isEqualTo("60");
    floor("", "60 + 5\"").problem(ModelProblem.UnitMissing.class);
  }

  @Test
  void unitsAreSaidOnceAFile() {
    Seen seen = Seen.of("units inches\nwall W {\nunits feet\ngrid { floor L1 at 1 }\n}");
    ModelProblem.Duplicate duplicate = seen.problem(ModelProblem.Duplicate.class);
    assertThat(duplicate.what()).isEqualTo("units");
    assertThat(seen.grid().floors().get(0).elevation().value()).isEqualTo(Length.ofInches(1));
  }

  @Test
  void unitsInsideABlockAreTheFiles() {
    Seen seen = Seen.of("project \"P\" { units feet }\nwall W { grid { floor L1 at 1 } }").sound();
    assertThat(seen.grid().floors().get(0).elevation().value()).isEqualTo(Length.ofInches(12));
  }

  @Test
  void unknownUnitsOfNumbers() {
    assertThat(floor("units cubits", "1\"").problem(ModelProblem.UnknownName.class).what())
        .isEqualTo("unit");
  }

  @Test
  void aQuantityOfTheWrongKind() {
    Seen seen = floor("", "32 psf");
    ModelProblem.WrongUnit wrong = seen.problem(ModelProblem.WrongUnit.class);
    assertThat(wrong.what()).isEqualTo("elevation");
    assertThat(wrong.expected()).isEqualTo("length");
    assertThat(wrong.found()).isEqualTo("pressure");
    assertThat(seen.text(wrong)).isEqualTo("32 psf");
    assertThat(floor("", "5\" * 5\"").problem(ModelProblem.WrongUnit.class).found())
        .isEqualTo("area");
  }

  @Test
  void kindsThatDoNotGoTogether() {
    Seen seen = floor("", "5\" + 32 psf");
    ModelProblem.WrongUnit wrong = seen.problem(ModelProblem.WrongUnit.class);
    assertThat(wrong.what() + " " + wrong.expected() + " " + wrong.found())
        .isEqualTo("value added length pressure");
  }

  @Test
  void aDivisionThatDoesNotComeOutOffersEqualSpaces() {
    Seen seen = Seen.grid("lines A..H spaced 7 @ 30'-0\" / 7");
    BadValue bad = seen.problem(BadValue.class);
    assertThat(bad.reason()).isEqualTo(BadValue.Reason.DIVISION_NOT_EXACT);
    assertThat(bad.offer()).contains("spaced 7 equal in 30'-0\"");
    assertThat(seen.text(bad)).isEqualTo("30'-0\" / 7");
  }

  @Test
  void aThirdOfTenFeetComesOut() {
    // 120" / 3
    assertThat(elevation("", "10'-0\" / 3")).isEqualTo(Length.ofInches(40));
  }

  @Test
  void intermediateResultsNeedNotComeOut() {
    assertThat(elevation("", "30'-0\" / 7 * 7")).isEqualTo(Length.ofInches(360));
  }

  @Test
  void divisionByZero() {
    assertThat(floor("", "5\" / 0").problem(BadValue.class).reason())
        .isEqualTo(BadValue.Reason.DIVISION_BY_ZERO);
    assertThat(floor("", "5\" / (3\" - 3\")").problem(BadValue.class).reason())
        .isEqualTo(BadValue.Reason.DIVISION_BY_ZERO);
  }

  @Test
  void outOfRange() {
    // the longest length is 10 km
    assertThat(floor("", "10001 m").problem(BadValue.class).reason())
        .isEqualTo(BadValue.Reason.OUT_OF_RANGE);
    assertThat(elevation("", "10000 m")).isEqualTo(Length.LIMIT);
    assertThat(Seen.grid("lines A..C spaced 2 @ -60").problem(BadValue.class).reason())
        .isEqualTo(BadValue.Reason.OUT_OF_RANGE);
  }

  @Test
  void countsAreWhole() {
    assertThat(Seen.grid("lines A..C spaced 0 @ 60").problem(BadValue.class).reason())
        .isEqualTo(BadValue.Reason.NOT_A_WHOLE_NUMBER);
  }

  @Test
  void unknownValuesOfferTheNearest() {
    Seen seen = floor("", "heigth", "let height = 5\"");
    ModelProblem.UnknownName unknown = (ModelProblem.UnknownName) seen.problems().get(0);
    assertThat(unknown.name()).isEqualTo("heigth");
    assertThat(seen.problems()).hasSize(1);
  }

  @Test
  void letsInACircle() {
    Seen seen = Seen.of("let a = b\nlet b = c + 1\"\nlet c = a\nwall W { grid { floor L1 at a } }");
    BadValue circle = seen.problem(BadValue.class);
    assertThat(circle.reason()).isEqualTo(BadValue.Reason.CIRCULAR);
    assertThat(circle.text()).isEqualTo("a = b = c = a");
    Seen self = Seen.of("let a = a + 1\"");
    assertThat(self.problem(BadValue.class).text()).isEqualTo("a = a");
  }

  @Test
  void aLetTwice() {
    assertThat(Seen.of("let a = 1\"\nlet a = 2\"").problem(ModelProblem.Duplicate.class).name())
        .isEqualTo("a");
  }

  @Test
  void aWallsLetGoesOverTheFiles() {
    assertThat(
            Seen.of("let a = 1\"\nwall W {\nlet a = 60\"\ngrid { floor L1 at a }\n}")
                .sound()
                .grid()
                .floors()
                .get(0)
                .elevation()
                .value())
        .isEqualTo(Length.ofInches(60));
  }

  @Test
  void letsOfAWallAreItsOwn() {
    Seen seen = Seen.of("wall V { let a = 1\" }\nwall W { grid { floor L1 at a + 0\" } }");
    assertThat(seen.problem(ModelProblem.UnknownName.class).name()).isEqualTo("a");
  }

  @Test
  void unusedLetsAreListed() {
    Seen seen =
        Seen.of(
            "let used = 1\"\nlet unused = 2\"\nwall W {\nlet own = 3\"\n"
                + "grid { floor L1 at used * 2 }\n}");
    assertThat(seen.model().unusedNames())
        .extracting(Symbol::name)
        .containsExactly("unused", "own");
  }
}
