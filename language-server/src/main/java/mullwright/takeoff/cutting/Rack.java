package mullwright.takeoff.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.layout.WallLayout;
import mullwright.model.Fabrication;
import mullwright.model.Given;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * Bars on hand that walls may be cut from, lot by lot.
 *
 * @param lots in the order of the text
 */
public record Rack(List<Lot> lots) {
  /**
   * Equal bars.
   *
   * @param finish empty if they do for any
   * @param finishes finishes of the walls that may use them
   * @param count bars left
   */
  public record Lot(
      Origin origin, String part, Length length, String finish, Set<String> finishes, int count) {
    public Lot {
      finishes = Set.copyOf(finishes);
    }

    /** True if the lot's bars do for a pool. */
    boolean fits(CutPool pool) {
      return part.equals(pool.part().name())
          && (finish.isEmpty() || pool.hidden() || finishes.contains(pool.finish()));
    }
  }

  public Rack {
    lots = List.copyOf(lots);
  }

  static Rack of(List<WallLayout> layouts) {
    Map<Origin, Fabrication.OnHand> told = new LinkedHashMap<>();
    for (WallLayout layout : layouts) {
      layout.wall().fabrication().onHand().forEach(bars -> told.put(bars.origin(), bars));
    }
    List<Lot> lots = new ArrayList<>();
    told.forEach(
        (origin, bars) -> {
          String finish = bars.finish().map(Given::value).orElse("");
          Set<String> finishes = new LinkedHashSet<>();
          for (WallLayout layout : layouts) {
            if (layout.wall().finish().values().stream()
                .anyMatch(side -> side.value().equals(finish))) {
              finishes.add(CutList.finish(layout.wall()));
            }
          }
          lots.add(
              new Lot(
                  origin,
                  bars.part().value(),
                  bars.length().value(),
                  finish,
                  finishes,
                  bars.count()));
        });
    return new Rack(lots);
  }

  /** The lots whose bars do for a pool. */
  List<Lot> of(CutPool pool) {
    return lots.stream().filter(lot -> lot.fits(pool) && lot.count() > 0).toList();
  }

  /** The rack once {@code used} bars of each lot are gone. */
  Rack without(Map<Origin, Integer> used) {
    return new Rack(
        lots.stream()
            .map(
                lot ->
                    new Lot(
                        lot.origin(),
                        lot.part(),
                        lot.length(),
                        lot.finish(),
                        lot.finishes(),
                        lot.count() - used.getOrDefault(lot.origin(), 0)))
            .toList());
  }
}
