package mullwright.model;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import mullwright.quantity.Unit;

/** What a name in an expression means, and what a bare number is: lets by name, inner first. */
final class Scope {
  private final Map<String, Let> lets;
  private final Scope outer;
  private final Unit unit;

  /**
   * @param lets shared, not copied: it may still grow
   * @param outer where to look next, or null
   * @param unit of bare numbers, or null if the file does not say
   */
  Scope(Map<String, Let> lets, Scope outer, Unit unit) {
    this.lets = lets;
    this.outer = outer;
    this.unit = unit;
  }

  static Scope of(Unit unit) {
    return new Scope(new LinkedHashMap<>(), null, unit);
  }

  /** The let of that name, or null. */
  Let find(String name) {
    Let let = lets.get(name);
    return let != null || outer == null ? let : outer.find(name);
  }

  Map<String, Let> own() {
    return lets;
  }

  Unit unit() {
    return unit;
  }

  Set<String> names() {
    Set<String> names = new LinkedHashSet<>(lets.keySet());
    if (outer != null) {
      names.addAll(outer.names());
    }
    return names;
  }
}
