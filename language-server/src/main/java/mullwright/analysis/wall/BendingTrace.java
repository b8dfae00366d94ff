package mullwright.analysis.wall;

import mullwright.derivation.Derivation;

/** Tells how the moments of a member came about, when somebody asks. */
public interface BendingTrace {
  /** The moment about the strong axis [N·m] under a name. */
  Derivation strong(String name, double moment);

  /** The moment about the weak axis [N·m] under a name. */
  Derivation weak(String name, double moment);
}
