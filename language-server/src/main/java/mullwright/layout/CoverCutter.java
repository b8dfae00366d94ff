package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;

/**
 * Cuts pressure plates and face caps.
 *
 * <p>On a vertical they run as the vertical does, with its splice gaps, and break at stock joints
 * at the centre of the highest horizontal within the stock length. On a horizontal they stop short
 * of the vertical's. Beside doors and voids there are none.
 */
final class CoverCutter {
  /** Gap of a stock joint where no plate says another. */
  private static final Length STOCK_JOINT = Length.ofInches(1, 8);

  /**
   * A plate or cap of the system.
   *
   * @param half half its width
   * @param end clearance of a horizontal one at each end
   * @param joint gap of a stock joint
   * @param stock longest stock length, if any is stated
   */
  record Cover(
      CoverPiece.What what,
      String part,
      Given<Length> width,
      Length half,
      Given<Length> end,
      Given<Length> joint,
      Optional<Length> stock) {
    private static Optional<Length> longest(List<Part.Stock> stock) {
      Length longest = null;
      for (Part.Stock each : stock) {
        Length length = each.length().value();
        longest = longest == null ? length : Length.max(longest, length);
      }
      return Optional.ofNullable(longest);
    }

    static Cover of(
        CoverPiece.What what,
        Part part,
        Given<Length> width,
        Given<Length> end,
        Given<Length> joint,
        List<Part.Stock> stock) {
      return new Cover(what, part.name(), width, width.value().half(), end, joint, longest(stock));
    }
  }

  private final Frame frame;
  private final BareStretches bare;
  private final List<CoverPiece> pieces = new ArrayList<>();

  private CoverCutter(Frame frame) {
    this.frame = frame;
    this.bare = new BareStretches(frame);
  }

  static List<CoverPiece> cut(
      Frame frame, List<VerticalPiece> verticals, List<HorizontalPiece> horizontals) {
    CoverCutter cutter = new CoverCutter(frame);
    List<Cover> covers = covers(frame);
    if (covers.isEmpty()) {
      return cutter.pieces;
    }
    List<HorizontalPiece> covered = new ArrayList<>(horizontals.size());
    for (HorizontalPiece piece : horizontals) {
      if (cutter.bare.covered(piece)) {
        covered.add(piece);
      }
    }
    for (Cover cover : covers) {
      verticals.forEach(piece -> cutter.vertical(cover, piece));
      covered.forEach(piece -> cutter.horizontal(cover, piece));
    }
    return cutter.pieces;
  }

  /** The system's plate and cap, as far as it has them. */
  static List<Cover> covers(Frame frame) {
    List<Cover> covers = new ArrayList<>(2);
    Optional<Part.PressurePlate> plate =
        frame.systemPart(PartKind.PRESSURE_PLATE, Part.PressurePlate.class);
    Given<Length> joint =
        plate
            .map(Part.PressurePlate::endGap)
            .orElseGet(() -> Given.assumed(STOCK_JOINT, frame.wall.origin(), "common practice"));
    plate.ifPresent(
        it ->
            covers.add(
                Cover.of(
                    CoverPiece.What.PRESSURE_PLATE,
                    it,
                    it.width(),
                    it.endGap(),
                    joint,
                    it.stock())));
    frame
        .systemPart(PartKind.FACE_CAP, Part.FaceCap.class)
        .ifPresent(
            it ->
                covers.add(
                    Cover.of(
                        CoverPiece.What.FACE_CAP, it, it.face(), it.endGap(), joint, it.stock())));
    return covers;
  }

  private void vertical(Cover cover, VerticalPiece piece) {
    List<Length> ends = new ArrayList<>();
    bare.covered(piece, (from, to) -> breakAtStock(cover, piece.line(), from, to, ends));
    int count = ends.size() / 2;
    for (int i = 0; i < count; i++) {
      Length from = ends.get(2 * i);
      Length to = ends.get(2 * i + 1);
      pieces.add(
          new CoverPiece(
              cover.what(),
              true,
              piece.index(),
              cover.part(),
              from,
              to,
              to.minus(from),
              piece.name(),
              i,
              count));
    }
  }

  private void breakAtStock(Cover cover, int line, Length from, Length to, List<Length> ends) {
    Length start = from;
    Length half = cover.joint().value().half();
    while (cover.stock().isPresent() && to.minus(start).isLongerThan(cover.stock().get())) {
      Optional<Length> joint =
          highest(line, start.plus(half), start.plus(cover.stock().get()).plus(half));
      if (joint.isEmpty()) {
        break;
      }
      ends.add(start);
      ends.add(joint.get().minus(half));
      start = joint.get().plus(half);
    }
    ends.add(start);
    ends.add(to);
  }

  // the highest centre of a horizontal beside the line, above one height and not above another
  private Optional<Length> highest(int line, Length above, Length most) {
    Length x = frame.lines.x(line);
    Length highest = above;
    for (Side side : Side.values()) {
      int bay = frame.lines.bay(line, side);
      if (bay < 0) {
        continue;
      }
      Optional<Length> y = highest(frame.bars.ofBay(bay), x, most);
      if (y.isPresent() && y.get().isLongerThan(highest)) {
        highest = y.get();
      }
    }
    return highest.equals(above) ? Optional.empty() : Optional.of(highest);
  }

  private static Optional<Length> highest(List<Bar> bars, Length x, Length most) {
    int under = Ascending.leading(bars.size(), i -> !bars.get(i).yAt(x).isLongerThan(most));
    return under == 0 ? Optional.empty() : Optional.of(bars.get(under - 1).yAt(x));
  }

  private void horizontal(Cover cover, HorizontalPiece piece) {
    Length left = frame.lines.x(piece.leftLine()).plus(reach(cover, piece, Side.RIGHT));
    Length right = frame.lines.x(piece.rightLine()).minus(reach(cover, piece, Side.LEFT));
    Length apart = right.minus(left);
    Length length =
        apart.signum() <= 0
            ? apart
            : frame
                .bars
                .in(piece.firstBay(), piece.row())
                .line()
                .longest(apart, cover.width().value());
    CoverPiece made =
        new CoverPiece(
            cover.what(),
            false,
            piece.index(),
            cover.part(),
            left,
            right,
            length,
            piece.name(),
            0,
            1);
    if (apart.signum() <= 0) {
      frame.impossible.add(
          Impossible.noLength(
              made.name(), apart, piece.leftLine(), piece.rightLine(), piece.origin()));
    } else {
      pieces.add(made);
    }
  }

  // from the line to the end of the cover: half the vertical's cover, or a corner's leg, and the
  // gap
  private Length reach(Cover cover, HorizontalPiece piece, Side side) {
    int line = side == Side.RIGHT ? piece.leftLine() : piece.rightLine();
    boolean corner = frame.lines.corner(line);
    if (!corner) {
      return cover.half().plus(cover.end().value());
    }
    Length y = side == Side.RIGHT ? piece.yLeft() : piece.yRight();
    Widths widths = frame.runs.at(line, y).map(Run::widths).orElse(Widths.UNKNOWN);
    return widths.toCover(side, true, cover.half()).plus(cover.end().value());
  }
}
