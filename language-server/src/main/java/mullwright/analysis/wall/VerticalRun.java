package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
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
 * @param tributaries the loads it takes, by height
 * @param answer what the beam method answers for the cases {@code in} and {@code out}, in this
 *     order; empty if no wind is given or the profile states no second moment
 */
public record VerticalRun(
    List<VerticalPiece> pieces,
    List<SpliceJoint> splices,
    List<RunSupport> supports,
    List<Tributary> tributaries,
    Optional<BeamAnswer> answer) {
  public VerticalRun {
    pieces = List.copyOf(pieces);
    splices = List.copyOf(splices);
    supports = List.copyOf(supports);
    tributaries = List.copyOf(tributaries);
  }

  /** The responses for wind in and wind out, if the run stands. */
  public List<BeamResponse> responses() {
    return answer
        .filter(BeamAnswer.Solved.class::isInstance)
        .map(solved -> ((BeamAnswer.Solved) solved).responses())
        .orElse(List.of());
  }

  /** The motion, if the run can move without bending. */
  public Optional<BeamAnswer.Mechanism> mechanism() {
    return answer
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
}
