package mullwright.check;

import mullwright.layout.VerticalPiece;

/** A rule that looks at one length of a vertical at a time. */
public interface MemberRule extends Rule {
  /** Looks at one and tells what it found. */
  void check(VerticalPiece it, WallFacts facts, Findings found);
}
