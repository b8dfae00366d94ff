package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
      while (last + 1 < bars.length && runsThrough(bars[last], bars[last + 1])) {
        last++;
      }
      add(bars[at], bars[last]);
      at = last + 1;
    }
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
      frame.impossible.add(Impossible.because(Impossible.Reason.NO_VERTICAL, name, first.origin()));
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
      frame.impossible.add(Impossible.noLength(name, apart, first.origin()));
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
