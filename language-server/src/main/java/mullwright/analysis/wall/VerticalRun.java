package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import mullwright.analysis.beam.BeamAnswer;
import mullwright.analysis.beam.BeamResponse;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;

/**
 * One run of vertical with all its lengths, as a beam over its true supports with its splices as
 * hinges.
 *
 * @param pieces its lengths, from below
 * @param splices its joints, from below
 * @param supports what holds it in and out, from below, none twice at one height
 * @param bears horizontals its ends butt and hold in and out, since it stands without them
 * @param tributaries the loads it takes, by height
 * @param bars reinforcement in it
 * @param points forces at single places: brackets, and horizontals that carry another vertical
 * @param beam what the beam method answers for its {@linkplain RunLoads cases}; empty if nothing
 *     loads it or its profile states no second moment
 */
public record VerticalRun(
    List<VerticalPiece> pieces,
    List<SpliceJoint> splices,
    List<RunSupport> supports,
    List<RunSupport> bears,
    List<Tributary> tributaries,
    List<RunBar> bars,
    List<RunPoint> points,
    Optional<SolvedBeam> beam) {
  public VerticalRun {
    pieces = List.copyOf(pieces);
    splices = List.copyOf(splices);
    supports = List.copyOf(supports);
    bears = List.copyOf(bears);
    tributaries = List.copyOf(tributaries);
    bars = List.copyOf(bars);
    points = List.copyOf(points);
  }

  /** The line it stands on, by index. */
  public int line() {
    return pieces.get(0).line();
  }

  /** What the beam method answers, if it was asked. */
  public Optional<BeamAnswer> answer() {
    return beam.map(SolvedBeam::answer);
  }

  /** The beam, if it was asked for and stands. */
  public Optional<SolvedBeam> standing() {
    return beam.filter(SolvedBeam::stands);
  }

  /** The responses, one for each case, if the run stands. */
  public List<BeamResponse> responses() {
    return beam.map(SolvedBeam::responses).orElse(List.of());
  }

  /** The motion, if the run can move without bending. */
  public Optional<BeamAnswer.Mechanism> mechanism() {
    return answer()
        .filter(BeamAnswer.Mechanism.class::isInstance)
        .map(BeamAnswer.Mechanism.class::cast);
  }

  /** The length that holds a height [m], the upper one at a joint. */
  public VerticalPiece pieceAt(double y) {
    for (int i = pieces.size() - 1; i > 0; i--) {
      if (pieces.get(i).bottom().toMetres() <= y) {
        return pieces.get(i);
      }
    }
    return pieces.get(0);
  }

  /** The supports on one length. */
  public List<RunSupport> supportsOf(VerticalPiece piece) {
    double bottom = piece.bottom().toMetres();
    double top = piece.top().toMetres();
    return supports.stream().filter(s -> bottom <= s.y() && s.y() <= top).toList();
  }

  /** The horizontals its ends butt, whichever holds the other in and out. */
  Stream<RunSupport> horizontals() {
    return Stream.concat(supports.stream(), bears.stream()).filter(s -> s.horizontal() >= 0);
  }
}
