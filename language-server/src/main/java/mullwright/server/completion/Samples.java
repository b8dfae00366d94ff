package mullwright.server.completion;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.UnitSystem;

/** What usually stands in the places of a property, to be written over. */
final class Samples {
  private Samples() {}

  /**
   * What stands in one of its places.
   *
   * @param place counted from 0
   * @param system the units of the file
   */
  static Optional<String> of(String property, int place, UnitSystem system) {
    List<String> usual = system == UnitSystem.US ? us(property) : millimetres(property);
    return place < usual.size() ? Optional.of(usual.get(place)) : Optional.empty();
  }

  private static List<String> us(String property) {
    return switch (property) {
      case "face", "sightline", "width" -> List.of("2 1/2\"");
      case "depth" -> List.of("6\"");
      case "stock" -> List.of("24'");
      case "bite", "edge-distance" -> List.of("1/2\"");
      case "edge-clearance", "thickness", "ply" -> List.of("1/4\"");
      case "space" -> List.of("1/2\"");
      case "interlayer" -> List.of("0.06\"");
      case "limit" -> List.of("72\"", "120\"");
      case "least" -> List.of("12\"", "12\"");
      case "coating" -> List.of("low-e", "2");
      case "largest-area" -> List.of("50 ft2");
      case "outline" -> List.of("2 1/2\"", "6\"", "1/8\"");
      case "hole" -> List.of("9/32\"", "1\"", "2\"");
      case "reach" -> List.of("3/4\"", "3\"");
      case "bolt-line" -> List.of("8\"");
      case "kerf" -> List.of("1/8\"");
      case "end-trim", "perimeter-joint" -> List.of("1/2\"");
      case "least-drop" -> List.of("24\"");
      case "cut-tolerance", "hole-tolerance", "end-allowance" -> List.of("1/32\"");
      case "on-hand" -> List.of("1", "24'");
      case "slab" -> List.of("3/8\"");
      case "story" -> List.of("5/8\"");
      default -> List.of();
    };
  }

  private static List<String> millimetres(String property) {
    return switch (property) {
      case "face", "sightline", "width" -> List.of("60 mm");
      case "depth" -> List.of("150 mm");
      case "stock" -> List.of("6500 mm");
      case "bite", "edge-distance" -> List.of("13 mm");
      case "edge-clearance", "thickness", "ply" -> List.of("6 mm");
      case "space" -> List.of("12 mm");
      case "interlayer" -> List.of("1.52 mm");
      case "limit" -> List.of("1800 mm", "3000 mm");
      case "least" -> List.of("300 mm", "300 mm");
      case "coating" -> List.of("low-e", "2");
      case "largest-area" -> List.of("4.5 m2");
      case "outline" -> List.of("60 mm", "150 mm", "3 mm");
      case "hole" -> List.of("7 mm", "25 mm", "50 mm");
      case "reach" -> List.of("20 mm", "75 mm");
      case "bolt-line" -> List.of("200 mm");
      case "kerf" -> List.of("3 mm");
      case "end-trim", "perimeter-joint" -> List.of("12 mm");
      case "least-drop" -> List.of("600 mm");
      case "cut-tolerance", "hole-tolerance", "end-allowance" -> List.of("0.8 mm");
      case "on-hand" -> List.of("1", "6500 mm");
      case "slab" -> List.of("8 mm");
      case "story" -> List.of("15 mm");
      default -> List.of();
    };
  }
}
