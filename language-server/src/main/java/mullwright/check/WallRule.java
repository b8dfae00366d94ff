package mullwright.check;

/**
 * A rule that must see a whole wall at once.
 *
 * <p>A wide wall is checked again around what changed only, with a portion of the wall in the place
 * of the whole. What such a rule tells there is told by the whole wall after all, which takes
 * longer; one that says by {@link Findings#near} on which lines a finding hangs spares that. Where
 * it tells nothing of a portion, the whole wall must not make it tell anything of what lies there.
 */
public interface WallRule extends Rule {
  /** Looks at the wall and tells what it found. */
  void check(WallFacts facts, Findings found);
}
