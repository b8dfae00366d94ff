package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import mullwright.quantity.Length;

/**
 * Which heights the verticals of each line pass, judged by the grid alone: from the lowest to the
 * highest row beside the line, or as stated, less the openings it stands strictly inside of.
 *
 * <p>A vertical is taken to reach the floor its end row is measured from: a sill 2" above L1 stands
 * on L1. Where the wall states no rows, or no verticals for a line, every height passes: what is
 * missing is reported elsewhere.
 */
final class LineSpans {
  private final GridNames names;
  private final List<List<Span>> byLine = new ArrayList<>();
  private final List<List<Span>> gaps = new ArrayList<>();

  /** By line its kind: lines of one kind pass the same heights, and most walls have few kinds. */
  private final int[] kinds;

  /** By kind the first line of it. */
  private final List<Integer> firsts = new ArrayList<>();

  /** A stretch of a line, both ends included. */
  private record Span(Length from, Length to) {
    boolean touches(Length low, Length high) {
      return !high.isShorterThan(from) && !low.isLongerThan(to);
    }

    boolean holds(Length height) {
      return height.isLongerThan(from) && height.isShorterThan(to);
    }
  }

  LineSpans(GridNames names, List<Members.Vertical> verticals) {
    this.names = names;
    int lines = names.lines().size();
    for (int line = 0; line < lines; line++) {
      byLine.add(new ArrayList<>(1));
      gaps.add(new ArrayList<>(0));
    }
    for (Members.Vertical vertical : verticals) {
      Span full = full(vertical.line());
      if (full != null) {
        Length from = vertical.from().map(Height::elevation).orElse(full.from());
        Length to = vertical.to().map(Height::elevation).orElse(full.to());
        byLine.get(vertical.line()).add(new Span(from, to));
      }
    }
    for (Grid.Opening opening : names.grid().openings()) {
      for (int i = 1; i < opening.bays().size(); i++) {
        Grid.Bay left = names.bays().get(opening.bays().get(i - 1));
        if (left.right() == names.bays().get(opening.bays().get(i)).left()) {
          Span gap = new Span(opening.bottom().elevation(), opening.top().elevation());
          gaps.get(left.right()).add(gap);
        }
      }
    }
    kinds = new int[lines];
    Map<List<List<Span>>, Integer> known = new HashMap<>();
    for (int line = 0; line < lines; line++) {
      List<List<Span>> passed = List.of(byLine.get(line), gaps.get(line));
      Integer kind = known.putIfAbsent(passed, known.size());
      if (kind == null) {
        kind = firsts.size();
        firsts.add(line);
      }
      kinds[line] = kind;
    }
  }

  private Span full(int line) {
    Length from = null;
    Length to = null;
    Length x = names.grid().lines().get(line).x();
    int[] sides = {names.bays().leftOf(line), names.bays().rightOf(line)};
    for (int bay : sides) {
      int[] rows = bay < 0 ? new int[0] : names.order().of(bay);
      if (rows.length > 0) {
        Length low = floorOr(rows[0], names.order().at(rows[0], x), true);
        int last = rows[rows.length - 1];
        Length high = floorOr(last, names.order().at(last, x), false);
        from = from == null ? low : Length.min(from, low);
        to = to == null ? high : Length.max(to, high);
      }
    }
    return from == null ? null : new Span(from, to);
  }

  private Length floorOr(int row, Length height, boolean lowest) {
    if (names.row(row).floor().isEmpty()) {
      return height;
    }
    Length floor = names.floor(names.row(row).floor().get()).elevation().value();
    return lowest ? Length.min(height, floor) : Length.max(height, floor);
  }

  /** Of which lines a vertical is at some height from low to high. */
  IntPredicate passing(Length low, Length high) {
    return byKind(line -> passes(line, low, high));
  }

  /** Of which lines a vertical goes on below and above the height. */
  IntPredicate crossing(Length height) {
    return byKind(line -> crosses(line, height));
  }

  private IntPredicate byKind(IntPredicate ofLine) {
    boolean[] holds = new boolean[firsts.size()];
    for (int kind = 0; kind < holds.length; kind++) {
      holds[kind] = ofLine.test(firsts.get(kind));
    }
    return line -> holds[kinds[line]];
  }

  /** True if a vertical of the line is at some height from low to high. */
  boolean passes(int line, Length low, Length high) {
    List<Span> spans = byLine.get(line);
    if (spans.isEmpty()) {
      return true;
    }
    for (Span gap : gaps.get(line)) {
      if (gap.holds(low) && gap.holds(high)) {
        return false;
      }
    }
    for (Span span : spans) {
      if (span.touches(low, high)) {
        return true;
      }
    }
    return false;
  }

  private boolean crosses(int line, Length height) {
    List<Span> spans = byLine.get(line);
    return spans.isEmpty() || holds(spans, height) && !holds(gaps.get(line), height);
  }

  private static boolean holds(List<Span> spans, Length height) {
    for (Span span : spans) {
      if (span.holds(height)) {
        return true;
      }
    }
    return false;
  }
}
