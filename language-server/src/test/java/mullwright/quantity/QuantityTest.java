package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import mullwright.quantity.QuantityProblem.Limit;
import mullwright.quantity.QuantityProblem.Operator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic that checks dimensions, temperatures among them, and its limits. */
class QuantityTest {
  private static Quantity read(String text) {
    return QuantityReader.read(text).value().orElseThrow();
  }

  private static Quantity value(Outcome<Quantity> outcome) {
    return outcome.value().orElseThrow();
  }

  private static QuantityProblem problem(Outcome<?> outcome) {
    assertThat(outcome.value()).isEmpty();
    return outcome.remarks().get(0).problem();
  }

  @Test
  void sumsOfBothSystemsAreExact() {
    assertThat(value(read("5'").plus(read("1524 mm"))).toLength().value())
        .contains(Length.ofInches(120));
    assertThat(value(read("5'").minus(read("1524 mm"))).toLength().value()).contains(Length.ZERO);
  }

  @Test
  void productsAndQuotientsCarryTheirDimension() {
    // 32 psf over a width of 5 ft is 160 lb/ft, or 13 1/3 lb/in (by hand)
    Quantity line = value(read("32 psf").times(read("5'")));
    assertThat(line.is(Kind.FORCE_PER_LENGTH)).isTrue();
    assertThat(line.in(Unit.POUND_FORCE_PER_FOOT)).isEqualTo(Rational.of(160));
    assertThat(line.in(Unit.POUND_FORCE_PER_INCH)).isEqualTo(Rational.of(40, 3));
    assertThat(value(line.dividedBy(read("5'")))).isEqualTo(read("32 psf"));
    assertThat(value(read("10'").dividedBy(read("4'")))).isEqualTo(Quantity.of(Rational.of(5, 2)));
    assertThat(value(read("3").times(read("4\""))).toLength().value())
        .contains(Length.ofInches(12));
  }

  @Test
  void unlikeQuantitiesDoNotAdd() {
    assertThat(problem(read("5'").plus(read("32 psf"))))
        .isEqualTo(
            new QuantityProblem.Unlike(
                Kind.LENGTH.dimension(), Operator.PLUS, Kind.PRESSURE.dimension()));
    assertThat(problem(read("5'").minus(read("3"))))
        .isEqualTo(
            new QuantityProblem.Unlike(Kind.LENGTH.dimension(), Operator.MINUS, Dimension.NONE));
  }

  @Test
  void zeroDividesNothing() {
    assertThat(problem(read("5'").dividedBy(read("0\""))))
        .isEqualTo(new QuantityProblem.DivisionByZero());
  }

  @Test
  void aLengthThatDoesNotComeOutIsRefusedWithTheNearest() {
    // 30 ft in 7: 9144 mm / 7 = 1306.285714 2857... mm (by hand)
    assertThat(problem(value(read("30'").dividedBy(read("7"))).toLength()))
        .isEqualTo(new QuantityProblem.NotExact(Length.ofNanometres(1_306_285_714)));
    assertThat(value(read("7/64\"").dividedBy(read("2"))).toLength().value())
        .contains(Length.ofInches(7, 128));
    assertThat(problem(value(read("9000 m").times(read("2"))).toLength()))
        .isEqualTo(new QuantityProblem.TooLarge(Limit.LENGTH));
    assertThat(problem(read("32 psf").toLength()))
        .isEqualTo(new QuantityProblem.WrongKind(Kind.LENGTH, Kind.PRESSURE.dimension()));
  }

  @Test
  void noChainOfProductsGrowsWithoutBound() {
    Outcome<Quantity> power = Outcome.of(read("1.1"));
    int steps = 0;
    while (power.value().isPresent()) {
      power = power.then(value -> value.times(value));
      steps++;
      assertThat(steps).isLessThan(20);
    }
    assertThat(problem(power)).isEqualTo(new QuantityProblem.TooLarge(Limit.COMPUTATION));
    Outcome<Quantity> volume = Outcome.of(read("1 m"));
    for (int i = 0; i < 20; i++) {
      volume = volume.then(value -> value.times(value));
    }
    assertThat(problem(volume)).isEqualTo(new QuantityProblem.TooLarge(Limit.COMPUTATION));
  }

  /** Fixed points of the scales: definition, and the crossing at -40. */
  @ParameterizedTest
  @CsvSource({"-40, -40", "32, 0", "212, 100", "-459.67, -273.15", "60, 140/9"})
  void thermometerReadings(String fahrenheit, String celsius) {
    Quantity reading = Quantity.of(Rational.of(fahrenheit), Unit.FAHRENHEIT);
    assertThat(reading.in(Unit.CELSIUS))
        .hasToString(celsius.equals("-273.15") ? "-5463/20" : celsius);
    assertThat(reading.in(Unit.FAHRENHEIT)).isEqualTo(Rational.of(fahrenheit));
  }

  @Test
  void readingsSubtractToADifferenceAndDoNotAdd() {
    Quantity hot = read("150 F");
    Quantity set = read("60 F");
    Quantity rise = value(hot.minus(set));
    assertThat(rise.is(Kind.TEMPERATURE_DIFFERENCE)).isTrue();
    assertThat(rise.in(Unit.KELVIN_DIFFERENCE)).isEqualTo(Rational.of(50));
    assertThat(value(set.plus(rise))).isEqualTo(hot);
    assertThat(value(rise.plus(set))).isEqualTo(hot);
    assertThat(value(hot.minus(rise))).isEqualTo(set);
    assertThat(value(rise.plus(rise)).in(Unit.CELSIUS_DIFFERENCE)).isEqualTo(Rational.of(100));
    assertThat(problem(hot.plus(set))).isInstanceOf(QuantityProblem.Unlike.class);
    assertThat(problem(rise.minus(set))).isInstanceOf(QuantityProblem.Unlike.class);
    assertThat(problem(hot.times(read("2")))).isInstanceOf(QuantityProblem.Unlike.class);
    assertThat(problem(read("2").dividedBy(hot))).isInstanceOf(QuantityProblem.Unlike.class);
    assertThat(problem(hot.negated())).isInstanceOf(QuantityProblem.Unlike.class);
  }

  @Test
  void expansionTimesRiseTimesLengthIsALength() {
    // 1.28e-5 /F x 90 F x 312 in = 0.359424 in (by hand)
    Quantity rise = value(read("150 F").minus(read("60 F")));
    Quantity movement = value(value(read("1.28e-5 /F").times(rise)).times(read("26'")));
    assertThat(movement.in(Unit.INCH)).isEqualTo(Rational.of("0.359424"));
  }

  @Test
  void askingForAUnitOfAnotherDimensionIsAMistakeInCode() {
    assertThatThrownBy(() -> read("5'").in(Unit.PASCAL))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void dimensionsHaveWords() {
    assertThat(read("9.85 in4").dimension().words()).isEqualTo("second moment of area");
    assertThat(read("1 m").dimension().words()).isEqualTo("length");
    assertThat(value(read("1 m").dividedBy(read("1 kg"))).dimension().words()).isEqualTo("m kg-1");
  }

  @Test
  void outcomesKeepTheirRemarks() {
    Outcome<Length> odd = LengthReader.read("5'-13\"");
    assertThat(odd.map(Quantity::of).remarks()).isEqualTo(odd.remarks());
    assertThat(odd.then(ignored -> LengthReader.read("6 3/2\"")).remarks()).hasSize(2);
    Outcome<Length> refused = LengthReader.read("5'-6");
    assertThat(refused.map(Quantity::of).remarks()).isEqualTo(refused.remarks());
    assertThat(odd.then(ignored -> refused)).isEqualTo(refused);
  }
}
