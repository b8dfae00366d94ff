package mullwright.server.completion;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.UnitSystem;

/** What usually stands in the places of a property, to be written over. */
final class Samples {
  private Samples() {}

  /** In both unit systems. */
  private record Usual(List<String> inches, List<String> millimetres) {}

  /**
   * What stands in one of its places.
   *
   * @param place counted from 0
   * @param system the units of the file
   */
  static Optional<String> of(String property, int place, UnitSystem system) {
    Usual both = usual(property);
    List<String> usual = system == UnitSystem.US ? both.inches() : both.millimetres();
    return place < usual.size() ? Optional.of(usual.get(place)) : Optional.empty();
  }

  private static Usual usual(String property) {
    return switch (property) {
      case "face", "sightline", "width" -> new Usual(List.of("2 1/2\""), List.of("60 mm"));
      case "depth" -> new Usual(List.of("6\""), List.of("150 mm"));
      case "stock" -> new Usual(List.of("24'"), List.of("6500 mm"));
      case "bite", "edge-distance" -> new Usual(List.of("1/2\""), List.of("13 mm"));
      case "edge-clearance", "thickness", "ply" -> new Usual(List.of("1/4\""), List.of("6 mm"));
      case "space" -> new Usual(List.of("1/2\""), List.of("12 mm"));
      case "interlayer" -> new Usual(List.of("0.06\""), List.of("1.52 mm"));
      case "limit" -> new Usual(List.of("72\"", "120\""), List.of("1800 mm", "3000 mm"));
      case "least" -> new Usual(List.of("12\"", "12\""), List.of("300 mm", "300 mm"));
      case "coating" -> new Usual(List.of("low-e", "2"), List.of("low-e", "2"));
      case "largest-area" -> new Usual(List.of("50 ft2"), List.of("4.5 m2"));
      case "outline" ->
          new Usual(List.of("2 1/2\"", "6\"", "1/8\""), List.of("60 mm", "150 mm", "3 mm"));
      case "hole" -> new Usual(List.of("9/32\"", "1\"", "2\""), List.of("7 mm", "25 mm", "50 mm"));
      case "reach" -> new Usual(List.of("3/4\"", "3\""), List.of("20 mm", "75 mm"));
      case "bolt-line" -> new Usual(List.of("8\""), List.of("200 mm"));
      case "kerf" -> new Usual(List.of("1/8\""), List.of("3 mm"));
      case "end-trim", "perimeter-joint" -> new Usual(List.of("1/2\""), List.of("12 mm"));
      case "least-drop" -> new Usual(List.of("24\""), List.of("600 mm"));
      case "cut-tolerance", "hole-tolerance", "end-allowance" ->
          new Usual(List.of("1/32\""), List.of("0.8 mm"));
      case "on-hand" -> new Usual(List.of("1", "24'"), List.of("1", "6500 mm"));
      case "slab" -> new Usual(List.of("3/8\""), List.of("8 mm"));
      case "story" -> new Usual(List.of("5/8\""), List.of("15 mm"));
      default -> new Usual(List.of(), List.of());
    };
  }
}
