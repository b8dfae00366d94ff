package mullwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import mullwright.derivation.Derivation;
import mullwright.derivation.Standing;
import mullwright.quantity.Kind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class RefusalTest {

  @Nested
  class Contract {

    @Test
    void sentenceSaysWhatWasGivenAndWhatIsAccepted() {
      assertThat(new Refusal("span", -1.25, "m", "greater than 0").sentence())
          .isEqualTo("span is -1.25 m; it must be greater than 0.");
      assertThat(new Refusal("share", 0, "", "more than 0").sentence())
          .isEqualTo("share is 0; it must be more than 0.");
      assertThat(new Refusal("load", 1.23456789e9, "N", "less").sentence())
          .isEqualTo("load is 1234570000 N; it must be less.");
    }

    @Test
    void firstRefusalIsKept() {
      Outcome<String> outcome =
          Guard.range()
              .positive("a", 1, "m")
              .positive("b", 0, "m")
              .positive("c", -1, "m")
              .then(() -> "computed");
      assertThat(Outcomes.refused(outcome)).startsWith("b is 0 m");
      assertThat(Outcomes.refused(outcome.then(x -> Guard.range().then(() -> x + "!"))))
          .startsWith("b is 0 m");
    }

    @Test
    void notANumberIsRefusedEverywhere() {
      assertThat(Guard.range().positive("a", Double.NaN, "m").then(() -> 1).solved()).isEmpty();
      assertThat(Guard.range().notNegative("a", Double.NaN, "m").then(() -> 1).solved()).isEmpty();
      assertThat(Guard.range().finite("a", Double.NaN, "m").then(() -> 1).solved()).isEmpty();
      assertThat(Guard.range().positive("a", Double.POSITIVE_INFINITY, "m").then(() -> 1).solved())
          .isEmpty();
    }

    @Test
    void resultGoesOnIntoTheNextMethod() {
      Outcome<Integer> one = Guard.range().positive("a", 1, "m").then(() -> 2);
      int next = Outcomes.solved(one.then(x -> Guard.range().then(() -> 3 * x)));
      assertThat(next).isEqualTo(6);
    }

    @Test
    void formulaCarriesTheNumbersOfAResult() {
      Derivation span =
          Derivation.assumed(
              "span", mullwright.quantity.Quantity.ofSi(3.5, Kind.LENGTH), Kind.LENGTH, "test");
      Derivation limit =
          new Formula("span ÷ 175", "closed form").explain("limit", 0.02, Kind.LENGTH, span);
      assertThat(limit.standing()).isEqualTo(Standing.COMPUTED);
      assertThat(limit.formula()).isEqualTo("span ÷ 175");
      assertThat(limit.source().orElseThrow().words()).isEqualTo("closed form");
      assertThat(limit.inputs()).containsExactly(span);
    }

    @Test
    void formulaWithoutASourceIsNone() {
      assertThatThrownBy(() -> new Formula("a × b", " "))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
