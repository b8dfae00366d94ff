package mullwright.derivation;

/** Where a number comes from. */
public enum Standing {
  /** Somebody wrote it. */
  STATED,
  /** Nobody wrote it; it is assumed, and its source says on what ground. */
  DEFAULT,
  /** It follows from other numbers. */
  COMPUTED
}
