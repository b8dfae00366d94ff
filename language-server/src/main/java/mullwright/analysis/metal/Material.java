package mullwright.analysis.metal;

import java.util.OptionalDouble;

/**
 * A surface that may touch another, with its place in the anodic index.
 *
 * <p>It is the surface that counts: galvanized steel stands with zinc, aluminized steel with
 * aluminum. Indices in volts, the more negative the more readily it corrodes; widely reprinted
 * anodic-index table.
 */
public enum Material {
  /** Gold and gold-platinum. */
  GOLD("gold", 0.00, Family.OTHER_METAL),
  /** Silver and nickel-copper alloys high in nickel. */
  SILVER("silver", -0.15, Family.OTHER_METAL),
  /** Nickel. */
  NICKEL("nickel", -0.30, Family.PASSIVE),
  /** Titanium. */
  TITANIUM("titanium", -0.30, Family.PASSIVE),
  /** Copper, low brass, nickel-chromium alloys. */
  COPPER("copper", -0.35, Family.COPPER),
  /** Brass. */
  BRASS("brass", -0.40, Family.COPPER),
  /** Bronze. */
  BRONZE("bronze", -0.40, Family.COPPER),
  /** High brass. */
  HIGH_BRASS("high brass", -0.45, Family.COPPER),
  /** Austenitic stainless steel; tables differ, some print −0.35 V. */
  STAINLESS_300("300-series stainless steel", -0.50, -0.35, Family.STAINLESS_300),
  /** Stainless steel of 18 % chromium that is not austenitic. */
  STAINLESS_18_CR("18 % chromium stainless steel", -0.50, Family.PASSIVE),
  /** Stainless steel of 12 % chromium. */
  STAINLESS_12_CR("12 % chromium stainless steel", -0.60, Family.PASSIVE),
  /** Chromium plate. */
  CHROMIUM_PLATE("chromium plate", -0.60, Family.OTHER_METAL),
  /** Tin plate. */
  TIN_PLATE("tin plate", -0.60, Family.OTHER_METAL),
  /** Tin-lead solder and terne plate. */
  TERNE("terne plate", -0.65, Family.OTHER_METAL),
  /** Lead. */
  LEAD("lead", -0.70, Family.OTHER_METAL),
  /** Wrought aluminum of the 2000 series. */
  ALUMINUM_2000("2000-series aluminum", -0.75, Family.ALUMINUM),
  /** Carbon and low-alloy steel, bare or primed only in the shop. */
  CARBON_STEEL("carbon steel", -0.85, Family.BARE_STEEL),
  /** Cast iron. */
  CAST_IRON("cast iron", -0.85, Family.BARE_STEEL),
  /** Wrought aluminum other than the 2000 series: 6063, 6061, 6005A and the sheet alloys. */
  ALUMINUM("aluminum", -0.90, Family.ALUMINUM),
  /** Steel coated with aluminum. */
  ALUMINIZED_STEEL("aluminized steel", -0.90, Family.ALUMINIZED_STEEL),
  /** Cast aluminum other than the silicon type. */
  CAST_ALUMINUM("cast aluminum", -0.95, Family.ALUMINUM),
  /** Cadmium plate. */
  CADMIUM_PLATE("cadmium plate", -0.95, Family.OTHER_METAL),
  /** Hot-dip zinc, galvanized steel. */
  GALVANIZED_STEEL("galvanized steel", -1.20, Family.ZINC),
  /** Steel with an electroplated coat of zinc. */
  ZINC_PLATED_STEEL("zinc-plated steel", -1.25, Family.ZINC),
  /** Zinc, wrought or die-cast. */
  ZINC("zinc", -1.25, Family.ZINC),
  /** Magnesium. */
  MAGNESIUM("magnesium", -1.75, Family.OTHER_METAL),
  /** Beryllium. */
  BERYLLIUM("beryllium", -1.85, Family.OTHER_METAL),
  /** Concrete. */
  CONCRETE("concrete", Family.ABSORBENT),
  /** Masonry. */
  MASONRY("masonry", Family.ABSORBENT),
  /** Wood and fibre that can absorb water. */
  WOOD("wood", Family.ABSORBENT);

  /** What the rules of contact tell apart. */
  enum Family {
    ALUMINUM,
    STAINLESS_300,
    ALUMINIZED_STEEL,
    ZINC,
    BARE_STEEL,
    COPPER,
    PASSIVE,
    OTHER_METAL,
    ABSORBENT
  }

  private final String words;
  private final double index;
  private final double otherIndex;
  private final Family family;

  Material(String words, double index, Family family) {
    this(words, index, index, family);
  }

  Material(String words, double index, double otherIndex, Family family) {
    this.words = words;
    this.index = index;
    this.otherIndex = otherIndex;
    this.family = family;
  }

  Material(String words, Family family) {
    this(words, Double.NaN, family);
  }

  /** The material in words. */
  public String words() {
    return words;
  }

  /** Anodic index [V]; empty for what is no metal. */
  public OptionalDouble anodicIndex() {
    return isMetal() ? OptionalDouble.of(index) : OptionalDouble.empty();
  }

  /** Whether it is a metal, and so has an index. */
  public boolean isMetal() {
    return family != Family.ABSORBENT;
  }

  double index() {
    return index;
  }

  /** The index other copies of the table print; mostly the same. */
  double otherIndex() {
    return otherIndex;
  }

  boolean is(Family other) {
    return family == other;
  }
}
