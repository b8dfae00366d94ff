package mullwright.layout;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Catalog;
import mullwright.model.Part;
import mullwright.model.PartKind;

/** Looks parts up by name, each once for one wall. */
final class Profiles {
  private final Catalog catalog;
  private final Map<String, Widths> widths = new HashMap<>();
  private final Map<String, Optional<Part.Glass>> glasses = new HashMap<>();

  Profiles(Catalog catalog) {
    this.catalog = catalog;
  }

  Widths widths(String profile) {
    Widths known = widths.get(profile);
    if (known == null) {
      known =
          find(PartKind.PROFILE, Part.Profile.class, profile)
              .map(Widths::of)
              .orElse(Widths.UNKNOWN);
      widths.put(profile, known);
    }
    return known;
  }

  Optional<Part.Glass> glass(String name) {
    Optional<Part.Glass> known = glasses.get(name);
    if (known == null) {
      known = find(PartKind.GLASS, Part.Glass.class, name);
      glasses.put(name, known);
    }
    return known;
  }

  <P extends Part> Optional<P> find(PartKind kind, Class<P> type, String name) {
    return catalog.find(kind, name).filter(type::isInstance).map(type::cast);
  }
}
