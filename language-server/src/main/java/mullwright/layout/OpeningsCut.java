package mullwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.quantity.Length;

/**
 * The openings bay by bay, and what they take: horizontals strictly inside drop out, those on the
 * edge stay.
 */
final class OpeningsCut {
  private final List<List<Span>> byBay = new ArrayList<>();

  OpeningsCut(Grid grid, Bars bars, PieceNames names, List<Impossible> impossible) {
    grid.bays().forEach(bay -> byBay.add(new ArrayList<>(0)));
    for (int index = 0; index < grid.openings().size(); index++) {
      Grid.Opening opening = grid.openings().get(index);
      Optional<Length> none = Optional.empty();
      for (int bay : opening.bays()) {
        Span span = span(index, opening, bay, bars);
        Length height = span.top().minus(span.bottom());
        if (height.signum() > 0) {
          byBay.get(bay).add(span);
        } else {
          none = Optional.of(height);
        }
      }
      none.ifPresent(
          height ->
              impossible.add(
                  Impossible.noLength(names.opening(opening), height, opening.origin())));
    }
    byBay.forEach(spans -> spans.sort(Comparator.comparing(Span::bottom)));
    take(bars);
  }

  private static Span span(int index, Grid.Opening opening, int bay, Bars bars) {
    Optional<Bar> sill = edge(opening.bottom(), bay, bars);
    Optional<Bar> head = edge(opening.top(), bay, bars);
    Length bottom = sill.map(Bar::middle).orElse(opening.bottom().elevation());
    Length top = head.map(Bar::middle).orElse(opening.top().elevation());
    List<Bar> all = bars.ofBay(bay);
    boolean below = !all.isEmpty() && !all.get(0).middle().isLongerThan(bottom);
    boolean above = !all.isEmpty() && !all.get(all.size() - 1).middle().isShorterThan(top);
    return new Span(index, opening, bay, bottom, top, sill, head, !below, !above);
  }

  private static Optional<Bar> edge(Height height, int bay, Bars bars) {
    Optional<Bar> named = bars.named(height, bay);
    return named.isPresent() ? named : bars.at(height.elevation(), bay);
  }

  private void take(Bars bars) {
    for (int bay = 0; bay < byBay.size(); bay++) {
      for (Span span : byBay.get(bay)) {
        for (Bar bar : List.copyOf(bars.ofBay(bay))) {
          if (span.inside(bar.middle())) {
            bars.drop(bar);
          }
        }
      }
    }
  }

  /** The openings of a bay, from below. */
  List<Span> of(int bay) {
    return byBay.get(bay);
  }

  /** True if no bay has any. */
  boolean none() {
    return byBay.stream().allMatch(List::isEmpty);
  }
}
