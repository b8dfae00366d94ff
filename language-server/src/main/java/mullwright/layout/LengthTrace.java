package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.quantity.Length;

/**
 * Tells of every printed length how it came about: formula, numbers put in, where they are stated.
 *
 * <p>Made when asked for, from the same bones as the layout, so that value and telling cannot
 * differ. The pieces given must be of the layout it was made for.
 */
public final class LengthTrace {
  private final Frame frame;
  private final Trace trace;
  private final EndTrace ends;
  private final CoverTrace covers;
  private final CellTrace cells;
  private final WallLayout layout;

  private LengthTrace(WallLayout layout) {
    this.layout = layout;
    this.frame = new Frame(layout.wall(), layout.catalog());
    this.trace = new Trace(frame);
    this.ends = new EndTrace(frame);
    this.covers = new CoverTrace(this, frame, trace, ends);
    this.cells = new CellTrace(frame, trace);
  }

  /** The trace of a layout. */
  public static LengthTrace of(WallLayout layout) {
    return new LengthTrace(layout);
  }

  /** Cut length of a length of vertical. */
  public Derivation vertical(VerticalPiece piece) {
    return Derivation.computed(
        "cut length",
        piece.length(),
        "upper end − lower end",
        Trace.PRACTICE,
        upperEnd(piece),
        lowerEnd(piece));
  }

  /** Where its upper end is. */
  Derivation upperEnd(VerticalPiece piece) {
    return piece.spliceAbove() >= 0
        ? atSplice("upper end", piece.top(), piece.spliceAbove(), " − ")
        : end("upper end", run(piece).upper());
  }

  /** Where its lower end is. */
  Derivation lowerEnd(VerticalPiece piece) {
    return piece.spliceBelow() >= 0
        ? atSplice("lower end", piece.bottom(), piece.spliceBelow(), " + ")
        : end("lower end", run(piece).lower());
  }

  private Derivation atSplice(String name, Length value, int joint, String sign) {
    Members.Splice splice = layout.splices().get(joint).splice();
    return Derivation.computed(
        name,
        value,
        "splice" + sign + "½ gap",
        Trace.PRACTICE,
        trace.place("splice", splice.at()),
        Trace.given("gap", splice.gap()));
  }

  private Derivation end(String name, RunEnd end) {
    if (end.bar().isPresent()) {
      return trace.edge(name, end.bar().get(), end.x(), end.lowerEdge());
    }
    return trace.place(name, end.stated().orElseThrow());
  }

  private Run run(VerticalPiece piece) {
    Length middle = piece.bottom().plus(piece.top()).half();
    return frame.runs.at(piece.line(), middle).orElseThrow();
  }

  /** Cut length of a horizontal. */
  public Derivation horizontal(HorizontalPiece piece) {
    Bar bar = frame.bars.in(piece.firstBay(), piece.row());
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(trace.spacing(piece.leftLine(), piece.rightLine()));
    String formula =
        "line spacing"
            + ends.metal(piece, Side.RIGHT, inputs)
            + ends.metal(piece, Side.LEFT, inputs)
            + " − 2 × end allowance";
    inputs.add(Trace.given("end allowance", piece.profile().endAllowance()));
    Given<Length> face = piece.profile().face();
    return along(bar, piece.right().minus(piece.left()), face, piece.length(), formula, inputs);
  }

  /** The formula as it is for a level row; along the slope for a sloped one. */
  static Derivation along(
      Bar bar,
      Length apart,
      Given<Length> width,
      Length length,
      String formula,
      List<Derivation> inputs) {
    Derivation[] numbers = inputs.toArray(Derivation[]::new);
    if (bar.line().isLevel()) {
      return Derivation.computed("cut length", length, formula, Trace.PRACTICE, numbers);
    }
    return Derivation.computed(
        "cut length",
        length,
        "clear length ÷ cos(slope) + width × tan(slope)",
        Trace.GEOMETRY,
        Derivation.computed("clear length", apart, formula, Trace.PRACTICE, numbers),
        Trace.given("width", width),
        Trace.slope(bar));
  }

  /** Cut length of a pressure plate or face cap. */
  public Derivation cover(CoverPiece cover) {
    return cover.vertical()
        ? covers.onVertical(cover, layout.verticals().get(cover.carrier()))
        : covers.onHorizontal(cover, layout.horizontals().get(cover.carrier()));
  }

  /** Width of a cell's daylight opening. */
  public Derivation daylightWidth(Cell cell) {
    return cells.daylightWidth(cell);
  }

  /** Height of a cell's daylight opening; of the bounding rectangle if an edge slopes. */
  public Derivation daylightHeight(Cell cell) {
    return cells.daylightHeight(cell);
  }

  /** Width of the glass, or of what fills an opening of the grid. */
  public Derivation glassWidth(Cell cell) {
    return cells.glassWidth(cell);
  }

  /** Height of the glass, or of what fills an opening of the grid. */
  public Derivation glassHeight(Cell cell) {
    return cells.glassHeight(cell);
  }

  /** Height of an anchor's bolt line, or of the row's centre a clip sits at. */
  public Derivation height(PlacedAnchor anchor) {
    return trace.anchor(anchor);
  }
}
