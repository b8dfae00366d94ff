package mullwright.analysis.metal;

/** The rules by which a contact is decided, in the order they are asked, each with its source. */
public enum ContactRule {
  /** A material against itself, or one aluminum against another. */
  SAME_METAL("the two are one metal", "closed form"),
  /** Water from copper or another heavy metal runs on to aluminum. */
  RUN_OFF(
      "no run-off from copper or other heavy metals may reach aluminum",
      "Aluminum Design Manual, section M.7"),
  /** Aluminum on concrete, masonry or wood. */
  ALUMINUM_ON_ABSORBENT(
      "aluminum on concrete, masonry or absorbent wood needs bituminous or alkali-resistant"
          + " coating, or plastic tape",
      "Aluminum Design Manual, section M.7"),
  /** A small aluminum part in a large noble face. */
  SMALL_ALUMINUM_PART(
      "a small aluminum part in a large nobler face corrodes fast",
      "common practice (corrosion texts)"),
  /** A small bare steel part in a large aluminum face. */
  SMALL_STEEL_PART(
      "a bare steel fastener in a large aluminum face rusts away",
      "common practice (corrosion texts)"),
  /** Aluminum with 300-series stainless steel. */
  ALUMINUM_STAINLESS(
      "aluminum and 300-series stainless steel need no isolation, except high in chloride",
      "Aluminum Design Manual, section M.7"),
  /** Aluminum with zinc-coated or aluminized steel. */
  ALUMINUM_COATED_STEEL(
      "aluminum and galvanized, zinc-plated or aluminized steel need no isolation",
      "Aluminum Design Manual, section M.7"),
  /** Aluminum with any other steel. */
  ALUMINUM_BARE_STEEL(
      "steel without such a coat must be primed and painted, or kept off aluminum by nonporous"
          + " tape or gasket",
      "Aluminum Design Manual, section M.7"),
  /** Zinc with the steel it is there to protect. */
  ZINC_ON_STEEL("zinc is there to protect the steel", "common practice"),
  /** A small noble part in a large baser face. */
  SMALL_NOBLE_PART(
      "a small passive part in a large baser face is borne, with a note",
      "common practice (corrosion texts)"),
  /** A small base part in a large nobler face. */
  SMALL_BASE_PART(
      "a small base part in a large nobler face corrodes fast",
      "common practice (corrosion texts)"),
  /** Difference of potential within or over the threshold of the exposure. */
  POTENTIAL(
      "the difference of potential against the threshold of the exposure", "anodic-index practice"),
  /** Two materials of which no rule here speaks. */
  NONE("no rule here speaks of this pair", "none");

  private final String words;
  private final String source;

  ContactRule(String words, String source) {
    this.words = words;
    this.source = source;
  }

  /** What the rule says. */
  public String words() {
    return words;
  }

  /** Where it stands. */
  public String source() {
    return source;
  }
}
