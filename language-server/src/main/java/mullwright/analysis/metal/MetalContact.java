package mullwright.analysis.metal;

import java.util.OptionalDouble;
import mullwright.analysis.metal.Material.Family;

/**
 * Decides whether two materials in contact need isolation, and by which rule.
 *
 * <p>Order of the rules: the Aluminum Design Manual's section M.7, which names pairs outright; then
 * the ratio of areas, since a small base part in a large noble face corrodes fast and the reverse
 * is borne; then the difference of potential against the threshold of the exposure, which alone
 * would flag too much. One step out of that order: M.7's leave for aluminum with stainless steel or
 * coated steel is not taken for a small aluminum part in a large nobler face. Where copies of the
 * anodic-index table differ, the greater difference is compared.
 */
public final class MetalContact {
  private MetalContact() {}

  /** Which of the two parts is small against the other. */
  public enum Areas {
    /** Neither is small. */
    SIMILAR,
    /** The first is a fastener, rivet or other small part in a large face of the second. */
    FIRST_SMALL,
    /** The second is a small part in a large face of the first. */
    SECOND_SMALL
  }

  /**
   * A contact.
   *
   * @param first one material
   * @param second the other
   * @param areas which of the two is small
   * @param exposure how wet it gets
   * @param runOff whether water runs from one on to the other
   * @param isolated whether something nonconducting and nonabsorbent parts them
   */
  public record Input(
      Material first,
      Material second,
      Areas areas,
      Exposure exposure,
      boolean runOff,
      boolean isolated) {}

  /** What the pair needs. */
  public enum Verdict {
    /** Nothing. */
    NOT_NEEDED,
    /** Nothing, but a reviewer should see it. */
    NOT_NEEDED_WITH_NOTE,
    /** Isolation. */
    NEEDED,
    /** Another choice of metal; isolation alone does not cure it. */
    AVOID,
    /** Unknown: no rule here speaks of the pair. */
    NOT_DECIDED
  }

  /** How what is there compares with what is needed. */
  public enum State {
    /** As it should be. */
    RIGHT,
    /** Isolation is needed and there is none. */
    MISSING,
    /** Isolation is there and none is needed. */
    OVERDONE,
    /** The pair should not meet, isolated or not. */
    WRONG_METAL,
    /** Unknown. */
    NOT_DECIDED
  }

  /**
   * The decision.
   *
   * @param input what was put in
   * @param verdict what the pair needs
   * @param rule the rule that decided
   * @param difference difference of potential by the table [V]; empty if one is no metal
   * @param greatestDifference the same, the greatest over the table's copies [V]
   */
  public record Result(
      Input input,
      Verdict verdict,
      ContactRule rule,
      OptionalDouble difference,
      OptionalDouble greatestDifference) {

    /** How what is there compares with what is needed. */
    public State state() {
      return switch (verdict) {
        case NEEDED -> input.isolated() ? State.RIGHT : State.MISSING;
        case NOT_NEEDED, NOT_NEEDED_WITH_NOTE -> input.isolated() ? State.OVERDONE : State.RIGHT;
        case AVOID -> State.WRONG_METAL;
        case NOT_DECIDED -> State.NOT_DECIDED;
      };
    }
  }

  /** Decides a contact. */
  public static Result solve(Input in) {
    if (in.first() == in.second() || both(in, Family.ALUMINUM)) {
      return decide(in, Verdict.NOT_NEEDED, ContactRule.SAME_METAL);
    }
    if (one(in, Family.ALUMINUM)) {
      return withAluminum(in);
    }
    if (!in.first().isMetal() || !in.second().isMetal()) {
      return decide(in, Verdict.NOT_DECIDED, ContactRule.NONE);
    }
    if (one(in, Family.ZINC) && (one(in, Family.BARE_STEEL) || both(in, Family.ZINC))) {
      return decide(in, Verdict.NOT_NEEDED, ContactRule.ZINC_ON_STEEL);
    }
    return byArea(in);
  }

  private static Result withAluminum(Input in) {
    Material other = in.first().is(Family.ALUMINUM) ? in.second() : in.first();
    if (in.runOff() && (other.is(Family.COPPER) || other == Material.LEAD)) {
      return decide(in, Verdict.AVOID, ContactRule.RUN_OFF);
    }
    if (other.is(Family.ABSORBENT)) {
      return decide(in, Verdict.NEEDED, ContactRule.ALUMINUM_ON_ABSORBENT);
    }
    Material small = small(in);
    if (small != null && small.is(Family.ALUMINUM) && tooFarApart(in) && nobler(other, small)) {
      return decide(in, Verdict.AVOID, ContactRule.SMALL_ALUMINUM_PART);
    }
    if (small != null && small.is(Family.BARE_STEEL)) {
      return decide(in, Verdict.AVOID, ContactRule.SMALL_STEEL_PART);
    }
    if (other.is(Family.STAINLESS_300)) {
      boolean chloride = in.exposure() == Exposure.COASTAL;
      Verdict leave = small == other ? Verdict.NOT_NEEDED_WITH_NOTE : Verdict.NOT_NEEDED;
      return decide(in, chloride ? Verdict.NEEDED : leave, ContactRule.ALUMINUM_STAINLESS);
    }
    if (other.is(Family.ZINC) || other.is(Family.ALUMINIZED_STEEL)) {
      return decide(in, Verdict.NOT_NEEDED, ContactRule.ALUMINUM_COATED_STEEL);
    }
    if (other.is(Family.BARE_STEEL)) {
      return decide(in, Verdict.NEEDED, ContactRule.ALUMINUM_BARE_STEEL);
    }
    return byArea(in);
  }

  private static Result byArea(Input in) {
    Material small = small(in);
    if (small != null && tooFarApart(in)) {
      Material large = small == in.first() ? in.second() : in.first();
      boolean passive = small.is(Family.PASSIVE) || small.is(Family.STAINLESS_300);
      if (nobler(large, small)) {
        return decide(in, Verdict.AVOID, ContactRule.SMALL_BASE_PART);
      }
      if (passive) {
        return decide(in, Verdict.NOT_NEEDED_WITH_NOTE, ContactRule.SMALL_NOBLE_PART);
      }
    }
    Verdict verdict = tooFarApart(in) ? Verdict.NEEDED : Verdict.NOT_NEEDED;
    return decide(in, verdict, ContactRule.POTENTIAL);
  }

  private static Result decide(Input in, Verdict verdict, ContactRule rule) {
    return new Result(
        in,
        verdict,
        rule,
        GalvanicSeries.difference(in.first(), in.second()),
        GalvanicSeries.greatestDifference(in.first(), in.second()));
  }

  private static boolean tooFarApart(Input in) {
    // Indices are printed to 0.05 V; a hair keeps their binary images from deciding.
    double hair = 1e-9;
    return GalvanicSeries.greatestDifference(in.first(), in.second()).orElse(0)
        > in.exposure().threshold() + hair;
  }

  private static boolean nobler(Material one, Material other) {
    return one.index() > other.index();
  }

  private static Material small(Input in) {
    return switch (in.areas()) {
      case SIMILAR -> null;
      case FIRST_SMALL -> in.first();
      case SECOND_SMALL -> in.second();
    };
  }

  private static boolean both(Input in, Family family) {
    return in.first().is(family) && in.second().is(family);
  }

  private static boolean one(Input in, Family family) {
    return in.first().is(family) || in.second().is(family);
  }
}
