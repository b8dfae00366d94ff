package mullwright.analysis.lite;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import mullwright.analysis.Outcome;
import mullwright.analysis.glass.GlassFailurePrediction;
import mullwright.analysis.glass.LargeDeflectionPlate;
import mullwright.layout.Cell;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * Remembers solved plates and lites by value: an edit that leaves a lite's size, make-up and load
 * as they were solves nothing anew, and equal lites are solved once.
 *
 * <p>Safe for use by several threads. Keeps the {@value #KEPT} of each used last.
 */
public final class GlassMemory {
  /** How many are kept of each. */
  public static final int KEPT = 4096;

  private final Map<Plate, Outcome<GlassFailurePrediction.Resistance>> resistances = last();
  private final Map<Loaded, Outcome<LargeDeflectionPlate.Response>> responses = last();
  private final Map<GlassUnit, Outcome<UnitStrength>> strengths = last();

  private final Map<Sized, Optional<UnitStrength>> charted = last();

  /** A glass, the very same part, in a size. */
  private record Sized(Part.Glass glass, Length width, Length height) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Sized same
          && glass == same.glass
          && width.equals(same.width)
          && height.equals(same.height);
    }

    @Override
    public int hashCode() {
      return width.hashCode() * 31 + height.hashCode();
    }
  }

  private record Loaded(Plate plate, double pressure) {}

  private static <K, V> Map<K, V> last() {
    return new LinkedHashMap<>(64, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > KEPT;
      }
    };
  }

  private synchronized <K, V> V known(Map<K, V> all, K key, Function<K, V> solve) {
    V known = all.get(key);
    if (known == null) {
      known = solve.apply(key);
      all.put(key, known);
    }
    return known;
  }

  Outcome<GlassFailurePrediction.Resistance> resistance(Plate plate) {
    return known(resistances, plate, Plate::resistance);
  }

  Outcome<LargeDeflectionPlate.Response> under(Plate plate, double pressure) {
    return known(responses, new Loaded(plate, pressure), it -> it.plate().under(it.pressure()));
  }

  Outcome<UnitStrength> strength(GlassUnit unit) {
    return known(strengths, unit, it -> UnitStrength.solve(it, this));
  }

  /** What a table says of the strength of a glass in the size of a cell. */
  Optional<UnitStrength> charted(Part.Glass glass, Cell cell) {
    return known(
        charted,
        new Sized(glass, cell.glassWidth(), cell.glassHeight()),
        key -> LiteBearing.charted(key.glass(), key.width(), key.height()));
  }
}
