package mullwright.check;

/** A rule that must see a whole wall at once. */
public interface WallRule extends Rule {
  /** Looks at the wall and tells what it found. */
  void check(WallFacts facts, Findings found);
}
