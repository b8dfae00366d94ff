package mullwright.drawing;

/** Which point of its line a text is placed by. */
public enum Align {
  LEFT(0),
  CENTRE(0.5),
  RIGHT(1);

  private final double share;

  Align(double share) {
    this.share = share;
  }

  /** How much of the text's width lies before that point, 0 to 1. */
  public double share() {
    return share;
  }
}
