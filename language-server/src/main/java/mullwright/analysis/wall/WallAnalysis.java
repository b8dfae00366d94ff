package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.lite.CellEdges;
import mullwright.analysis.lite.GlassMemory;
import mullwright.layout.Cell;
import mullwright.layout.HolePlaces;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Wall;
import mullwright.quantity.Length;

/**
 * What nature does to one wall: the beams of its verticals and horizontals, their deflections and
 * reactions, and the weight on its anchors.
 *
 * <p>Immutable. Aids to drafting: a licensed engineer and the local code govern.
 */
public final class WallAnalysis {
  private final WallLayout layout;
  private final CellWeight fillings;
  private final LineNeighbours neighbours;
  private final PartContacts contacts;
  private final LineHeights heights;
  private final WindOnWall wind;
  private final GlassMemory glass;
  private final Once<SolvedFrame> frame;
  private final Once<Kept<List<List<BendingCheck>>>> bending;
  private final Once<CellEdges> edges;
  private final Once<HolePlaces> holes;
  private final Once<AnchorsInUse> anchors;

  private WallAnalysis(WallLayout layout, BeamMemory memory, GlassMemory glass, Wall whole) {
    this.layout = layout;
    this.wind = new WindOnWall(layout);
    this.glass = glass;
    this.fillings = new CellWeight(layout);
    this.neighbours = new LineNeighbours(layout);
    this.contacts = new PartContacts(layout);
    this.heights = new LineHeights(this);
    this.frame = new Once<>(() -> new SolvedFrame(layout, wind, fillings, memory));
    this.bending =
        new Once<>(
            () -> new Kept<>(runs().size(), run -> VerticalBending.of(this, runs().get(run))));
    this.edges = new Once<>(() -> new CellEdges(layout));
    this.holes = new Once<>(() -> HolePlaces.of(layout));
    this.anchors = new Once<>(() -> new AnchorsInUse(layout, whole));
  }

  /** The analysis of a wall as laid out. */
  public static WallAnalysis of(WallLayout layout, BeamMemory memory) {
    return of(layout, memory, new GlassMemory());
  }

  /** The analysis of a wall as laid out, with what is remembered of beams and of glass. */
  public static WallAnalysis of(WallLayout layout, BeamMemory beams, GlassMemory glass) {
    return new WallAnalysis(layout, beams, glass, layout.wall());
  }

  /**
   * The analysis of a portion of a wall. What it is asked about lines or bays at the portion's ends
   * is not what the whole wall tells of them.
   *
   * @param whole the wall it is of
   */
  public static WallAnalysis ofPortion(
      WallLayout layout, Wall whole, BeamMemory beams, GlassMemory glass) {
    return new WallAnalysis(layout, beams, glass, whole);
  }

  /** The wind on its cells. */
  public WindOnWall wind() {
    return wind;
  }

  /** The members round its cells. */
  public CellEdges edges() {
    return edges.get();
  }

  /** The plates and lites solved so far. */
  public GlassMemory glass() {
    return glass;
  }

  /** Where everything is. */
  public WallLayout layout() {
    return layout;
  }

  /** Where every hole is; found when first asked for. */
  public HolePlaces holes() {
    return holes.get();
  }

  /** The anchors of the whole wall by what mends ask of them; made when first asked for. */
  public AnchorsInUse anchorsInUse() {
    return anchors.get();
  }

  /**
   * Solves the frame, if nobody has asked for it yet: its beams and weights are by far the longest
   * part, which what leans on places and holes alone need not wait for.
   */
  public void solveFrame() {
    frame.get();
  }

  /** Every run of vertical, by line, then from below. */
  public List<VerticalRun> runs() {
    return frame.get().runs();
  }

  /** The run a length belongs to. */
  public VerticalRun runOf(VerticalPiece piece) {
    return runs().get(frame.get().runOf(piece));
  }

  /** The checks of bending of a length. */
  List<BendingCheck> bendingOf(VerticalPiece piece) {
    // the lengths of a run follow one another
    int place = piece.index() - runOf(piece).pieces().get(0).index();
    return bending.get().get(frame.get().runOf(piece)).get(place);
  }

  /** The anchors and clips of a line, from below. */
  public List<PlacedAnchor> anchorsOf(int line) {
    return neighbours.anchors(line);
  }

  /**
   * The anchors and clips of a line that sit between two heights or belong to a floor between them,
   * and perhaps some more, from below.
   */
  List<PlacedAnchor> anchorsNear(int line, Length from, Length to) {
    return heights.anchors(line, from, to);
  }

  /** The anchors and clips that hold a length, from below. */
  public List<PlacedAnchor> anchorsOn(VerticalPiece piece) {
    return neighbours.anchorsOn(piece.index());
  }

  /** What a length of vertical hangs from or stands on. */
  public LengthHold holdOf(VerticalPiece piece) {
    return frame.get().holdOf(piece);
  }

  /** What is fixed to the vertical of a line and touches a stretch of height. */
  List<JointObstacle> obstaclesOn(int line, Length from, Length to) {
    return heights.obstacles(line, from, to);
  }

  /** What touches its verticals. */
  public PartContacts contacts() {
    return contacts;
  }

  /** The horizontals that end on a line, by row. */
  public List<HorizontalPiece> horizontalsOn(int line) {
    return neighbours.horizontals(line);
  }

  /** Half the widest face of its horizontals. */
  Length widestHalfFace() {
    return neighbours.widestHalfFace();
  }

  /** The horizontals whose centre meets a line between two heights, by row. */
  public List<HorizontalPiece> horizontalsOn(int line, Length from, Length to) {
    return heights.horizontals(line, from, to);
  }

  /** The cells beside a line that touch a stretch of height, by bay and then from below. */
  public List<Cell> cellsBeside(int line, Length from, Length to) {
    return heights.cells(line, from, to);
  }

  /** The cells beside a line, left and right, by bay and then from below. */
  public List<Cell> cellsBeside(int line) {
    return neighbours.cells(line);
  }

  /** The horizontals as beams, in the order of the layout. */
  public List<HorizontalSpan> spans() {
    return frame.get().spans();
  }

  /** A horizontal as a beam. */
  public HorizontalSpan spanOf(HorizontalPiece piece) {
    return spans().get(piece.index());
  }

  /** The worst deflection of every span and overhang of a run that stands, from below. */
  public List<SpanDeflection> deflections(VerticalRun run) {
    List<SpanDeflection> found = new ArrayList<>();
    List<RunSupport> supports = run.supports();
    if (run.standing().isEmpty() || supports.isEmpty()) {
      return found;
    }
    SolvedBeam beam = run.standing().get();
    double bottom = beam.responses().get(0).beam().start();
    double top = beam.responses().get(0).beam().end();
    double first = supports.get(0).y();
    double last = supports.get(supports.size() - 1).y();
    if (bottom < first) {
      found.add(new SpanDeflection(run, bottom, first, true, beam.offTheTangent(first, bottom)));
    }
    for (int i = 1; i < supports.size(); i++) {
      double from = supports.get(i - 1).y();
      double to = supports.get(i).y();
      found.add(new SpanDeflection(run, from, to, false, beam.sag(from, to)));
    }
    if (last < top) {
      found.add(new SpanDeflection(run, last, top, true, beam.offTheTangent(last, top)));
    }
    return found;
  }

  /**
   * What an anchor carries; empty if it holds no length. Without a solved beam it is weight alone.
   */
  public Optional<AnchorLoad> loadOn(PlacedAnchor anchor) {
    if (anchor.vertical() < 0) {
      return Optional.empty();
    }
    VerticalRun run = runOf(layout.verticals().get(anchor.vertical()));
    double y = anchor.y().toMetres();
    Optional<SolvedBeam.Peaks> wind = run.standing().map(beam -> beam.reactions(y));
    return Optional.of(
        new AnchorLoad(
            Math.max(0, wind.map(peaks -> peaks.greatest().value()).orElse(0.0)),
            Math.max(0, -wind.map(peaks -> peaks.least().value()).orElse(0.0)),
            frame.get().weight().on(anchor)));
  }

  /** Weight of a length with what hangs on it [N]. */
  public double weightOf(VerticalPiece piece) {
    return frame.get().weight().of(piece).total();
  }

  /** Weight of a length with what hangs on it, by where it comes from. */
  public LengthWeight weightPartsOf(VerticalPiece piece) {
    return frame.get().weight().of(piece);
  }

  /** What each horizontal brings to a length of vertical. */
  List<WeightPath.Brought> broughtTo(VerticalPiece piece) {
    return frame.get().weight().brought(piece);
  }

  /** What a horizontal brings down to its left end, the verticals under it, its right end [N]. */
  public double[] weightFrom(HorizontalPiece piece) {
    return frame.get().weight().reactions(piece);
  }

  /** The lengths under a horizontal that hold it up between its ends, from the left. */
  public List<VerticalPiece> under(HorizontalPiece piece) {
    return frame.get().weight().under(piece);
  }

  /** What the wall weighs, and where it comes down. */
  public WallWeight weightOfWall() {
    return WallWeight.of(layout, fillings, frame.get().weight());
  }
}
