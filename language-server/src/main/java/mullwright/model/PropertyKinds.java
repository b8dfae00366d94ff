package mullwright.model;

import java.util.List;
import java.util.Optional;
import mullwright.model.PartSchema.Property;

/** Properties as they are written down, and those that several kinds of part share. */
final class PropertyKinds {
  static final String PRACTICE = "common practice";

  private PropertyKinds() {}

  static Property of(String word, String meaning, String... patterns) {
    return new Property(word, List.of(patterns), meaning, Optional.empty(), false);
  }

  static Property metal(String assumed) {
    Property metal = of("metal", "what it is made of", "WORD");
    return assumed.isEmpty() ? metal : metal.assumed(assumed, PRACTICE);
  }

  static Property stock() {
    return of(
            "stock",
            "lengths it is bought in, each with what a bar costs if that is to count",
            "LENGTH [cost NUMBER]")
        .repeated();
  }

  static Property hole() {
    return of(
            "hole",
            "a hole: diameter, place along from the part's datum, depth back from the glass face",
            "LENGTH at LENGTH back LENGTH [for FASTENER]")
        .repeated();
  }

  static Property outline() {
    return of(
            "outline",
            "rectangles the section is made of, the first from its back, on its centre line",
            "[plus] hollow LENGTH x LENGTH wall LENGTH [at LENGTH]",
            "[plus] solid LENGTH x LENGTH [at LENGTH]")
        .repeated();
  }
}
