package mullwright.analysis.wall;

/** Says that a portion of a wall was asked for what only the whole wall can tell. */
public final class OnlyOfWhole extends RuntimeException {
  private static final long serialVersionUID = 1;

  OnlyOfWhole(String what) {
    super(what + " are told by the whole wall only");
  }
}
