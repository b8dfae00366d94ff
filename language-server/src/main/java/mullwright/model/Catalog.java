package mullwright.model;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The parts a wall may name, from the file itself and from the files it uses.
 *
 * @param parts by kind, then by name, in the order read
 */
public record Catalog(Map<PartKind, Map<String, Part>> parts) {
  public Catalog {
    Map<PartKind, Map<String, Part>> copy = new LinkedHashMap<>();
    parts.forEach(
        (kind, byName) -> copy.put(kind, Collections.unmodifiableMap(new LinkedHashMap<>(byName))));
    parts = Collections.unmodifiableMap(copy);
  }

  /** No parts at all. */
  public static Catalog empty() {
    return new Catalog(Map.of());
  }

  /** The part of that kind and name. */
  public Optional<Part> find(PartKind kind, String name) {
    return Optional.ofNullable(parts.getOrDefault(kind, Map.of()).get(name));
  }

  /** The part of that type and name, for instance {@code find(Part.Profile.class, "jamb-6")}. */
  public <P extends Part> Optional<P> find(Class<P> type, String name) {
    for (Map<String, Part> byName : parts.values()) {
      Part part = byName.get(name);
      if (type.isInstance(part)) {
        return Optional.of(type.cast(part));
      }
    }
    return Optional.empty();
  }

  /** All parts of that kind, in the order read. */
  public Collection<Part> all(PartKind kind) {
    return List.copyOf(parts.getOrDefault(kind, Map.of()).values());
  }
}
