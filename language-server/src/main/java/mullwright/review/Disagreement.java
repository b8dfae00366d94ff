package mullwright.review;

import java.util.Optional;

/**
 * A place where two sides of a merge do not go together as a wall.
 *
 * @param what the fact, piece or finding
 * @param base what it was; so {@code ours, theirs} and what the merged text says, in words
 */
public record Disagreement(
    Kind kind,
    String what,
    Optional<String> base,
    Optional<String> ours,
    Optional<String> theirs,
    Optional<String> merged) {

  /** How two sides can disagree, worst first. */
  public enum Kind {
    /** Both sides changed one fact, each to something else. */
    CONTRADICTION("both say otherwise"),
    /** The merged text does not say what one side changed. */
    LOST("lost in the merge"),
    /** A rule trips on the merged wall that trips on neither side's. */
    TRIPPED("trips only together"),
    /** Both sides altered one piece, and it came out as neither has it. */
    SHAPED_BY_BOTH("made by both");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** As a table says it. */
    public String words() {
      return words;
    }
  }
}
