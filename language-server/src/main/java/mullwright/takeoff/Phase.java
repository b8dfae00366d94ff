package mullwright.takeoff;

/** When what is bought is needed on the site, in that order. */
public enum Phase {
  FRAME("Frame"),
  ANCHORS("Anchors"),
  WEATHER("Weather"),
  GLASS("Glass"),
  FINISH("Finish");

  private final String words;

  Phase(String words) {
    this.words = words;
  }

  /** As it heads a table. */
  public String words() {
    return words;
  }
}
