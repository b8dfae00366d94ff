package mullwright.check;

import mullwright.layout.HorizontalPiece;

/** A rule that looks at one horizontal at a time. */
public interface HorizontalRule extends Rule {
  /** Looks at one and tells what it found. */
  void check(HorizontalPiece it, WallFacts facts, Findings found);
}
