package mullwright.drawing;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.UnitSystem;

/**
 * How much smaller than the thing a drawing is.
 *
 * @param ratio millimetres of the thing to one of paper
 * @param words as a title block says it: {@code 1/4" = 1'-0"}, {@code 1:50}
 */
public record Scale(double ratio, String words) {
  private static final List<Scale> SI =
      List.of(
          of(1), of(2), of(5), of(10), of(20), of(25), of(50), of(75), of(100), of(200), of(500));

  // Source: scales of architects' rules, common practice
  private static final List<Scale> US =
      List.of(
          new Scale(1, "full size"),
          new Scale(2, "half size"),
          new Scale(4, "3\" = 1'-0\""),
          new Scale(8, "1 1/2\" = 1'-0\""),
          new Scale(12, "1\" = 1'-0\""),
          new Scale(16, "3/4\" = 1'-0\""),
          new Scale(24, "1/2\" = 1'-0\""),
          new Scale(32, "3/8\" = 1'-0\""),
          new Scale(48, "1/4\" = 1'-0\""),
          new Scale(64, "3/16\" = 1'-0\""),
          new Scale(96, "1/8\" = 1'-0\""),
          new Scale(128, "3/32\" = 1'-0\""),
          new Scale(192, "1/16\" = 1'-0\""),
          new Scale(384, "1/32\" = 1'-0\""));

  /** A ratio one to so many. */
  public static Scale of(int ratio) {
    return new Scale(ratio, "1:" + ratio);
  }

  /** The usual scales, the largest drawing first. */
  public static List<Scale> usual(UnitSystem units) {
    return units == UnitSystem.US ? US : SI;
  }

  /**
   * Reads a scale: {@code 1:50}, {@code 1/4"}, {@code 1/4" = 1'-0"}. Empty if it is none, or beyond
   * 1:1 or 1:5000.
   */
  public static Optional<Scale> read(String text) {
    String bare = text.strip();
    for (Scale scale : US) {
      if (bare.equals(scale.words) || scale.words.startsWith(bare + " = ")) {
        return Optional.of(scale);
      }
    }
    if (bare.matches("1:[1-9][0-9]{0,3}")) {
      return Optional.of(of(Integer.parseInt(bare.substring(2)))).filter(it -> it.ratio <= 5000);
    }
    return Optional.empty();
  }

  /** Millimetres of the thing on paper. */
  public double paper(double millimetres) {
    return millimetres / ratio;
  }
}
