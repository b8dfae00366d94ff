package mullwright.review;

/** What a fact is about, in the order changes are told. */
public enum Topic {
  FACE("face"),
  LINE("line"),
  FLOOR("floor"),
  ROW("row"),
  OPENING("opening"),
  CORNER("corner"),
  JOINT("joint"),
  VERTICAL("vertical"),
  HORIZONTAL("horizontal"),
  SPLICE("splice"),
  REINFORCEMENT("reinforcement"),
  BRACKET("bracket"),
  ANCHOR("anchor"),
  LITE("lite"),
  WALL("wall"),
  CRITERIA("criteria"),
  WIND("wind"),
  FABRICATION("fabrication"),
  ON_HAND("bars on hand"),
  INSTALLATION("installation"),
  PART("part"),
  REMARK("remark");

  private final String word;

  Topic(String word) {
    this.word = word;
  }

  /** As a sentence says it. */
  public String word() {
    return word;
  }
}
