package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.beam.BeamResponse;
import mullwright.analysis.beam.Extremes;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;

/**
 * What nature does to one wall: the beams of its verticals, their deflections and reactions, and
 * the weight on its anchors.
 *
 * <p>Immutable. Aids to drafting: a licensed engineer and the local code govern.
 */
public final class WallAnalysis {
  private static final double NO_TIP = Double.NaN;

  private final WallLayout layout;
  private final List<VerticalRun> runs;
  private final int[] runOfPiece;

  /** By run, then by case. */
  private final List<List<List<BeamResponse.Reaction>>> reactions;

  private final DeadWeight weight;
  private final LineNeighbours neighbours;
  private final PartContacts contacts;
  private final Kept<LengthHold> holds;
  private final Kept<List<JointObstacle>> obstacles;

  private WallAnalysis(WallLayout layout, List<VerticalRun> runs) {
    this.layout = layout;
    this.runs = List.copyOf(runs);
    this.reactions =
        runs.stream()
            .map(run -> run.responses().stream().map(BeamResponse::reactions).toList())
            .toList();
    this.runOfPiece = new int[layout.verticals().size()];
    for (int run = 0; run < runs.size(); run++) {
      for (VerticalPiece piece : runs.get(run).pieces()) {
        runOfPiece[piece.index()] = run;
      }
    }
    this.weight = new DeadWeight(layout);
    this.neighbours = new LineNeighbours(layout);
    this.contacts = new PartContacts(layout);
    this.holds =
        new Kept<>(runOfPiece.length, piece -> LengthHold.of(this, layout.verticals().get(piece)));
    this.obstacles =
        new Kept<>(layout.wall().grid().lines().size(), line -> JointObstacle.of(this, line));
  }

  /** The analysis of a wall as laid out. */
  public static WallAnalysis of(WallLayout layout, BeamMemory memory) {
    return new WallAnalysis(layout, new RunBuilder(layout, memory).runs());
  }

  /** Where everything is. */
  public WallLayout layout() {
    return layout;
  }

  /** Every run of vertical, by line, then from below. */
  public List<VerticalRun> runs() {
    return runs;
  }

  /** The run a length belongs to. */
  public VerticalRun runOf(VerticalPiece piece) {
    return runs.get(runOfPiece[piece.index()]);
  }

  /** The anchors and clips of a line, from below. */
  public List<PlacedAnchor> anchorsOf(int line) {
    return neighbours.anchors(line);
  }

  /** The anchors and clips that hold a length, from below. */
  public List<PlacedAnchor> anchorsOn(VerticalPiece piece) {
    return neighbours.anchorsOn(piece.index());
  }

  /** What a length of vertical hangs from or stands on. */
  public LengthHold holdOf(VerticalPiece piece) {
    return holds.get(piece.index());
  }

  /** What is fixed to the vertical of a line, in no certain order. */
  List<JointObstacle> obstaclesOn(int line) {
    return obstacles.get(line);
  }

  /** What touches its verticals. */
  public PartContacts contacts() {
    return contacts;
  }

  /** The horizontals that end on a line, by row. */
  public List<HorizontalPiece> horizontalsOn(int line) {
    return neighbours.horizontals(line);
  }

  /** The cells beside a line, left and right, by bay and then from below. */
  public List<Cell> cellsBeside(int line) {
    return neighbours.cells(line);
  }

  /** The worst deflection of every span and overhang of a run that stands, from below. */
  public List<SpanDeflection> deflections(VerticalRun run) {
    List<SpanDeflection> found = new ArrayList<>();
    List<RunSupport> supports = run.supports();
    if (run.responses().isEmpty() || supports.isEmpty()) {
      return found;
    }
    double bottom = run.responses().get(0).beam().start();
    double top = run.responses().get(0).beam().end();
    double first = supports.get(0).y();
    double last = supports.get(supports.size() - 1).y();
    if (bottom < first) {
      found.add(worst(run, bottom, first, bottom));
    }
    for (int i = 1; i < supports.size(); i++) {
      found.add(worst(run, supports.get(i - 1).y(), supports.get(i).y(), NO_TIP));
    }
    if (last < top) {
      found.add(worst(run, last, top, top));
    }
    return found;
  }

  private static SpanDeflection worst(VerticalRun run, double from, double to, double tip) {
    boolean overhang = !Double.isNaN(tip);
    SpanDeflection worst = null;
    for (BeamResponse response : run.responses()) {
      Extremes.Extreme sag =
          overhang
              ? offTheTangent(response, tip == to ? from : to, tip)
              : response.sags(from, to).largest();
      SpanDeflection here = new SpanDeflection(run, from, to, overhang, sag, response);
      if (worst == null || here.deflection() > worst.deflection()) {
        worst = here;
      }
    }
    return worst;
  }

  // The turning of the whole member at its last support is the neighbouring span's, not the end's:
  // an inch beyond a clip would else trip where nothing bends.
  private static Extremes.Extreme offTheTangent(BeamResponse response, double support, double tip) {
    double straight = response.deflectionAt(support) + response.slopeAt(support) * (tip - support);
    return new Extremes.Extreme(tip, response.deflectionAt(tip) - straight);
  }

  /** What an anchor carries; empty if it holds no length or its vertical was not solved. */
  public Optional<AnchorLoad> loadOn(PlacedAnchor anchor) {
    if (anchor.vertical() < 0) {
      return Optional.empty();
    }
    VerticalPiece piece = layout.verticals().get(anchor.vertical());
    VerticalRun run = runOf(piece);
    List<List<BeamResponse.Reaction>> cases = reactions.get(runOfPiece[piece.index()]);
    if (cases.isEmpty()) {
      return Optional.empty();
    }
    double in = reaction(cases.get(0), anchor);
    double out = reaction(cases.get(1), anchor);
    return Optional.of(
        new AnchorLoad(
            Math.max(0, Math.max(in, out)),
            Math.max(0, -Math.min(in, out)),
            weight.on(anchor, run)));
  }

  private static double reaction(List<BeamResponse.Reaction> reactions, PlacedAnchor anchor) {
    double y = anchor.y().toMetres();
    for (BeamResponse.Reaction reaction : reactions) {
      if (Math.abs(reaction.at() - y) < 1e-4) {
        return reaction.force();
      }
    }
    return 0;
  }

  /** Weight of a length with what hangs on it [N]. */
  public double weightOf(VerticalPiece piece) {
    return weight.of(piece);
  }
}
