package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamAnswer;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.HingedBeam;
import mullwright.analysis.beam.MovingStretch;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;

/**
 * Lengths of a vertical that can move in and out without bending: too little holds them.
 *
 * <p>Found whether or not wind is given: it hangs on supports and joints alone.
 *
 * @param pieces the lengths that move, from below
 * @param looseJoints joints among them that nothing holds
 * @param heldBy names of what holds them, too little: supports, and a joint at their end that the
 *     next length holds
 * @param motion how they move
 */
public record MovingLengths(
    List<VerticalPiece> pieces,
    List<SpliceJoint> looseJoints,
    List<String> heldBy,
    MovingStretch.Motion motion) {
  /** Rigidity is of no matter to whether a beam moves. */
  private static final double ANY_RIGIDITY = 1;

  public MovingLengths {
    pieces = List.copyOf(pieces);
    looseJoints = List.copyOf(looseJoints);
    heldBy = List.copyOf(heldBy);
  }

  /** What moves in a run, from below; nothing if it stands. */
  public static List<MovingLengths> of(VerticalRun run) {
    BeamAnswer answer = run.answer().orElseGet(() -> unloaded(run));
    List<MovingLengths> moving = new ArrayList<>();
    if (answer instanceof BeamAnswer.Mechanism mechanism) {
      for (MovingStretch stretch : mechanism.moving()) {
        moving.add(lengths(run, stretch));
      }
    }
    return moving;
  }

  private static BeamAnswer unloaded(VerticalRun run) {
    Beam beam =
        Beam.uniform(
            run.pieces().get(0).bottom().toMetres(),
            run.pieces().get(run.pieces().size() - 1).top().toMetres(),
            ANY_RIGIDITY,
            run.supports().stream().map(s -> Beam.Support.pin(s.y())).toList(),
            run.splices().stream().map(s -> new Beam.Hinge(s.y().toMetres())).toList());
    return HingedBeam.solve(new BeamProblem(beam, List.of()));
  }

  private static MovingLengths lengths(VerticalRun run, MovingStretch stretch) {
    return new MovingLengths(
        run.pieces().stream()
            .filter(piece -> middle(piece) > stretch.from() && middle(piece) < stretch.to())
            .toList(),
        run.splices().stream().filter(s -> holds(stretch.looseHinges(), s.y().toMetres())).toList(),
        stretch.heldAt().stream().map(place -> nameAt(run, place)).toList(),
        stretch.motion());
  }

  private static String nameAt(VerticalRun run, double place) {
    return run.supports().stream()
        .filter(s -> same(s.y(), place))
        .map(RunSupport::name)
        .findFirst()
        .or(
            () ->
                run.splices().stream()
                    .filter(s -> same(s.y().toMetres(), place))
                    .map(SpliceJoint::name)
                    .findFirst())
        .orElseThrow();
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) < HingedBeam.COINCIDENT;
  }

  private static double middle(VerticalPiece piece) {
    return (piece.bottom().toMetres() + piece.top().toMetres()) / 2;
  }

  private static boolean holds(List<Double> places, double place) {
    return places.stream().anyMatch(p -> same(p, place));
  }
}
