package mullwright.check;

import mullwright.layout.Cell;

/** A rule that looks at one framed opening and what fills it at a time. */
public interface LiteRule extends Rule {
  /** Looks at one and tells what it found. */
  void check(Cell it, WallFacts facts, Findings found);
}
