package mullwright.check;

import mullwright.layout.PlacedAnchor;

/** A rule that looks at one anchor or clip at a time. */
public interface AnchorRule extends Rule {
  /** Looks at one and tells what it found. */
  void check(PlacedAnchor it, WallFacts facts, Findings found);
}
