package mullwright.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.quantity.Length;

/**
 * The openings bay by bay, and what they take: horizontals strictly inside drop out, those on the
 * edge stay. A row on the edge frames the opening only if it runs through all its bays.
 */
final class OpeningsCut {
  private final List<List<Span>> byBay = new ArrayList<>();
  private final List<ByHeight<Span>> byHeight = new ArrayList<>();

  /** By bay: the openings it is part of, by index. */
  private final List<BitSet> indices = new ArrayList<>();

  OpeningsCut(Grid grid, Bars bars, PieceNames names, List<Impossible> impossible) {
    grid.bays().forEach(bay -> byBay.add(new ArrayList<>(0)));
    if (grid.openings().isEmpty()) {
      return;
    }
    List<List<Span>> openings = new ArrayList<>();
    for (int index = 0; index < grid.openings().size(); index++) {
      Grid.Opening opening = grid.openings().get(index);
      List<Span> spans = new ArrayList<>();
      for (int bay : opening.bays()) {
        spans.add(span(index, opening, bay, bars));
      }
      tellEmpty(spans, grid, names, impossible);
      spans.removeIf(span -> !span.bottom().isShorterThan(span.top()));
      openings.add(spans);
    }
    openings.forEach(
        spans -> spans.forEach(span -> bars.drop(span.bay(), span.bottom(), span.top())));
    openings.forEach(spans -> frame(spans, bars));
    for (List<Span> spans : byBay) {
      spans.sort((one, other) -> one.bottom().compareTo(other.bottom()));
      find(spans);
    }
  }

  private void find(List<Span> spans) {
    long[] bottoms = new long[spans.size()];
    long[] tops = new long[spans.size()];
    BitSet openings = new BitSet();
    for (int i = 0; i < tops.length; i++) {
      bottoms[i] = spans.get(i).bottom().ticks();
      tops[i] = spans.get(i).top().ticks();
      openings.set(spans.get(i).index());
    }
    byHeight.add(new ByHeight<>(spans, bottoms, tops));
    indices.add(openings);
  }

  private static void tellEmpty(
      List<Span> spans, Grid grid, PieceNames names, List<Impossible> impossible) {
    spans.stream()
        .filter(span -> !span.bottom().isShorterThan(span.top()))
        .findFirst()
        .ifPresent(
            span ->
                impossible.add(
                    Impossible.noLength(
                        names.opening(span.opening()),
                        span.top().minus(span.bottom()),
                        grid.bays().get(span.bay()).left(),
                        grid.bays().get(span.bay()).right(),
                        span.opening().origin())));
  }

  // another opening may have taken a row on the edge of this one
  private void frame(List<Span> spans, Bars bars) {
    boolean sill = spans.stream().allMatch(span -> stays(span.sill(), bars));
    boolean head = spans.stream().allMatch(span -> stays(span.head(), bars));
    spans.forEach(span -> byBay.get(span.bay()).add(span.framed(sill, head)));
  }

  private static boolean stays(Optional<Bar> edge, Bars bars) {
    return edge.isPresent() && bars.in(edge.get().bay(), edge.get().row()) != null;
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

  /** The openings of a bay, from below. */
  List<Span> of(int bay) {
    return byBay.get(bay);
  }

  /** The openings of a bay that overlap a stretch of height, from below. */
  List<Span> of(int bay, Length from, Length to) {
    List<Span> found = new ArrayList<>(1);
    if (!byBay.get(bay).isEmpty()) {
      for (Span span : byHeight.get(bay).touching(from, to)) {
        if (span.overlaps(from, to)) {
          found.add(span);
        }
      }
    }
    return found;
  }

  /** True if an opening, by its index in the grid, takes part of a bay. */
  boolean has(int bay, int opening) {
    return !byBay.get(bay).isEmpty() && indices.get(bay).get(opening);
  }

  /** True if no bay has any. */
  boolean none() {
    return byBay.stream().allMatch(List::isEmpty);
  }
}
