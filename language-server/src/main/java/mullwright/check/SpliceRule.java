package mullwright.check;

import mullwright.layout.SpliceJoint;

/** A rule that looks at one splice at a time. */
public interface SpliceRule extends Rule {
  /** Looks at one and tells what it found. */
  void check(SpliceJoint it, WallFacts facts, Findings found);
}
