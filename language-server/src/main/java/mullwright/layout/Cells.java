package mullwright.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.LiteUse;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * Finds the framed openings: between neighbouring rows of a bay, across bays where no vertical
 * stands between, and those of the grid's openings.
 */
final class Cells {
  private final Frame frame;
  private final CellMaker maker;
  private final List<List<LiteUse>> lites = new ArrayList<>();
  private final int[] next;
  private final Set<Long> taken = new HashSet<>();

  private Cells(Frame frame) {
    this.frame = frame;
    this.maker = new CellMaker(frame);
    this.next = new int[frame.grid.bays().size()];
    frame.grid.bays().forEach(bay -> lites.add(new ArrayList<>()));
    frame.wall.lites().forEach(lite -> lites.get(lite.bay()).add(lite));
  }

  static List<Cell> find(Frame frame) {
    Cells cells = new Cells(frame);
    for (int bay = 0; bay < frame.grid.bays().size(); bay++) {
      if (frame.openings.of(bay).isEmpty()) {
        List<Bar> bars = frame.bars.ofBay(bay);
        for (int i = 1; i < bars.size(); i++) {
          cells.lite(bars.get(i - 1), bars.get(i));
        }
      } else {
        cells.bayWithOpenings(bay);
      }
    }
    return cells.maker.cells();
  }

  private void bayWithOpenings(int bay) {
    List<Bar> bars = frame.bars.ofBay(bay);
    List<Span> spans = frame.openings.of(bay);
    int next = 0;
    for (int i = 1; i < bars.size(); i++) {
      Bar below = bars.get(i - 1);
      Bar above = bars.get(i);
      while (next < spans.size() && spans.get(next).bottom().isShorterThan(above.middle())) {
        opening(spans.get(next++));
      }
      if (free(below, above)) {
        lite(below, above);
      }
    }
    while (next < spans.size()) {
      opening(spans.get(next++));
    }
  }

  private boolean free(Bar below, Bar above) {
    return frame.openings.of(below.bay(), below.middle(), above.middle()).isEmpty();
  }

  private void opening(Span span) {
    int left = frame.grid.bays().get(span.bay()).left();
    int before = frame.lines.bay(left, Side.LEFT);
    if (before >= 0 && frame.openings.has(before, span.index())) {
      return;
    }
    int last = span.bay();
    int next = nextBay(last);
    while (next >= 0 && frame.openings.has(next, span.index())) {
      last = next;
      next = nextBay(last);
    }
    maker.opening(span, last);
    int right = frame.grid.bays().get(last).right();
    if ((span.sill().isEmpty() && !span.openBelow())
        || (span.head().isEmpty() && !span.openAbove())) {
      frame.impossible.add(
          Impossible.because(
              Impossible.Reason.NO_HORIZONTAL,
              frame.names.opening(span.opening()),
              left,
              right,
              span.opening().origin()));
    }
  }

  private int nextBay(int bay) {
    return frame.lines.bay(frame.grid.bays().get(bay).right(), Side.RIGHT);
  }

  private void lite(Bar below, Bar above) {
    if (!taken.isEmpty() && taken.contains(key(below))) {
      return;
    }
    int last = below.bay();
    while (!standsAtRight(last, below, above)) {
      int next = nextBay(last);
      if (next < 0 || !sameCell(next, below, above)) {
        noVertical(below, above, last);
        return;
      }
      last = next;
      taken.add(key(frame.bars.in(next, below.row())));
    }
    maker.lite(below, above, last, use(below, above, last));
  }

  private static long key(Bar below) {
    return (long) below.bay() << 32 | below.row();
  }

  private boolean standsAtRight(int bay, Bar below, Bar above) {
    int line = frame.grid.bays().get(bay).right();
    Length x = frame.lines.x(line);
    return frame.runs.beside(line, below.yAt(x), above.yAt(x)).isPresent();
  }

  private boolean sameCell(int bay, Bar below, Bar above) {
    List<Bar> bars = frame.bars.ofBay(bay);
    Bar lower = frame.bars.in(bay, below.row());
    int next = lower == null ? bars.size() : frame.bars.place(lower) + 1;
    return next < bars.size() && bars.get(next).row() == above.row() && free(lower, bars.get(next));
  }

  private void noVertical(Bar below, Bar above, int last) {
    Optional<LiteUse> use = use(below, above, last);
    Origin origin = use.map(LiteUse::origin).orElse(below.origin());
    frame.impossible.add(
        Impossible.because(
            Impossible.Reason.NO_VERTICAL,
            frame.names.cell(use.isPresent(), below.bay(), last, below.row(), above.row()),
            frame.grid.bays().get(below.bay()).left(),
            frame.grid.bays().get(last).right(),
            origin));
  }

  private Optional<LiteUse> use(Bar below, Bar above, int last) {
    for (int bay = below.bay(); bay <= last; bay++) {
      Optional<LiteUse> found = use(bay, below.row(), above.row());
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  // cells and lites both come from below, so the next one is nearly always the one asked for
  private Optional<LiteUse> use(int bay, int below, int above) {
    List<LiteUse> all = lites.get(bay);
    for (int i = 0; i < all.size(); i++) {
      int at = (next[bay] + i) % all.size();
      LiteUse lite = all.get(at);
      if (lite.below() == below && lite.above() == above) {
        next[bay] = at + 1;
        return Optional.of(lite);
      }
    }
    return Optional.empty();
  }
}
