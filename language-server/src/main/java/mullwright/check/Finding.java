package mullwright.check;

import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.model.Origin;

/**
 * What a rule found: what, where, why, and how to mend it.
 *
 * @param rule the rule's name, {@code splice-unsupported}
 * @param origin the place in the text it is shown at; never an empty range
 * @param piece the piece as the shop names it, or "" for a finding about the text
 * @param what what is wrong, with the number that tripped it and its limit
 * @param mend how to mend it, one sentence
 * @param measured the number that tripped it, with how it came about
 * @param limit the limit it is held against
 * @param related other places that have a part in it, each with a word
 * @param fixes edits that mend it, best first
 */
public record Finding(
    String rule,
    Severity severity,
    Origin origin,
    String piece,
    String what,
    String mend,
    Optional<Derivation> measured,
    Optional<Derivation> limit,
    List<Related> related,
    List<Fix> fixes) {
  public Finding {
    related = List.copyOf(related);
    fixes = List.copyOf(fixes);
  }

  /** The whole sentence: piece, what, mend. */
  public String message() {
    return (piece.isEmpty() ? "" : piece + ": ") + what + (mend.isEmpty() ? "" : " " + mend);
  }

  /** By rule and place; a derivation's own would go through all its numbers. */
  @Override
  public int hashCode() {
    return 31 * (31 * rule.hashCode() + origin.hashCode()) + piece.hashCode();
  }

  /** Another place that has a part in it. */
  public record Related(Origin origin, String word) {}
}
