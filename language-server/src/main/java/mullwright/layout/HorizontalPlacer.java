package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/** Cuts the horizontals: each stops between the verticals that pass its height. */
final class HorizontalPlacer {
  private final Frame frame;
  private final List<HorizontalPiece> pieces = new ArrayList<>();

  private HorizontalPlacer(Frame frame) {
    this.frame = frame;
  }

  static List<HorizontalPiece> place(Frame frame) {
    HorizontalPlacer placer = new HorizontalPlacer(frame);
    for (int row = 0; row < frame.grid.rows().size(); row++) {
      placer.place(frame.bars.ofRow(row));
    }
    return placer.pieces;
  }

  private void place(Bar[] bars) {
    int at = 0;
    while (at < bars.length) {
      if (bars[at] == null) {
        at++;
        continue;
      }
      int last = at;
      boolean alike = true;
      while (last + 1 < bars.length && runsThrough(bars[last], bars[last + 1])) {
        last++;
        alike &= sameProfile(bars[at], bars[last]);
      }
      if (alike) {
        add(bars[at], bars[last]);
      } else {
        String name = frame.names.horizontal(bars[at].row(), bars[at].bay(), bars[last].bay());
        frame.impossible.add(
            Impossible.because(
                Impossible.Reason.TWO_PROFILES,
                name,
                frame.grid.bays().get(bars[at].bay()).left(),
                frame.grid.bays().get(bars[last].bay()).right(),
                odd(bars, at, last)));
      }
      at = last + 1;
    }
  }

  private static boolean sameProfile(Bar bar, Bar other) {
    Optional<String> profile = bar.widths().profile().map(Part.Profile::name);
    Optional<String> next = other.widths().profile().map(Part.Profile::name);
    return profile.isEmpty() || next.isEmpty() || profile.equals(next);
  }

  // the statement about fewer bays is the likelier slip
  private static Origin odd(Bar[] bars, int from, int to) {
    Origin first = bars[from].origin();
    int same = 0;
    Origin other = first;
    for (int at = from; at <= to; at++) {
      if (bars[at].origin().equals(first)) {
        same++;
      } else {
        other = bars[at].origin();
      }
    }
    return 2 * same > to - from + 1 ? other : first;
  }

  private boolean runsThrough(Bar bar, Bar next) {
    return next != null
        && frame.lines.adjoin(bar.bay(), next.bay())
        && holder(bar, frame.grid.bays().get(bar.bay()).right()).isEmpty();
  }

  private Optional<Run> holder(Bar bar, int line) {
    return frame.runs.at(line, bar.yAt(frame.lines.x(line)));
  }

  private void add(Bar first, Bar last) {
    int leftLine = frame.grid.bays().get(first.bay()).left();
    int rightLine = frame.grid.bays().get(last.bay()).right();
    Optional<Run> left = holder(first, leftLine);
    Optional<Run> right = holder(last, rightLine);
    String name = frame.names.horizontal(first.row(), first.bay(), last.bay());
    if (left.isEmpty() || right.isEmpty()) {
      frame.impossible.add(
          Impossible.because(
              Impossible.Reason.NO_VERTICAL, name, leftLine, rightLine, first.origin()));
      return;
    }
    if (!first.widths().known() || !left.get().widths().known() || !right.get().widths().known()) {
      return;
    }
    Part.Profile profile = first.widths().profile().get();
    Length allowance = profile.endAllowance().value();
    Length from =
        frame
            .lines
            .x(leftLine)
            .plus(left.get().widths().toMetal(Side.RIGHT, frame.lines.corner(leftLine)))
            .plus(allowance);
    Length to =
        frame
            .lines
            .x(rightLine)
            .minus(right.get().widths().toMetal(Side.LEFT, frame.lines.corner(rightLine)))
            .minus(allowance);
    Length apart = to.minus(from);
    if (apart.signum() <= 0) {
      frame.impossible.add(Impossible.noLength(name, apart, leftLine, rightLine, first.origin()));
      return;
    }
    pieces.add(
        new HorizontalPiece(
            pieces.size(),
            first.row(),
            first.bay(),
            last.bay(),
            leftLine,
            rightLine,
            profile,
            from,
            to,
            first.yAt(from),
            last.yAt(to),
            first.line().longest(apart, profile.face().value()),
            name,
            first.origin()));
  }
}
