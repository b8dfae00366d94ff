package mullwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import mullwright.model.Members;
import mullwright.quantity.Length;

/** Cuts the verticals at their splices: each side ends half the gap from the stated place. */
final class VerticalCutter {
  /** A length before its line's lengths are counted. */
  private record Draft(Run run, int ordinal, Length bottom, Length top, int below, int above) {}

  private final Frame frame;
  private final BaySides sides;
  private final List<VerticalPiece> pieces = new ArrayList<>();
  private final List<SpliceJoint> joints = new ArrayList<>();
  private final List<List<Members.Splice>> splices = new ArrayList<>();

  /** By member, how many lengths it is cut into: an opening may have made several runs of it. */
  private final int[] lengths;

  VerticalCutter(Frame frame) {
    this.frame = frame;
    this.sides = new BaySides(frame);
    this.lengths = new int[frame.wall.members().verticals().size()];
    int lines = frame.lines.count();
    for (int line = 0; line < lines; line++) {
      splices.add(new ArrayList<>());
    }
    frame.wall.members().splices().forEach(splice -> splices.get(splice.line()).add(splice));
    Comparator<Members.Splice> fromBelow =
        (one, other) -> one.at().elevation().compareTo(other.at().elevation());
    for (int line = 0; line < lines; line++) {
      splices.get(line).sort(fromBelow);
      cut(line);
    }
  }

  /** The lengths, by line, then from below. */
  List<VerticalPiece> pieces() {
    return pieces;
  }

  /** The open joints, by line, then from below. */
  List<SpliceJoint> joints() {
    return joints;
  }

  private void cut(int line) {
    List<Draft> drafts = new ArrayList<>();
    List<Members.Splice> left = splices.get(line);
    boolean allKnown = true;
    for (Run run : frame.runs.of(line)) {
      Length length = run.top().minus(run.bottom());
      if (!run.known()) {
        allKnown = false;
      } else if (length.signum() <= 0) {
        frame.impossible.add(
            Impossible.noLength(
                frame.names.vertical(line, 0, 1, run.bottom(), run.top()),
                length,
                line,
                line,
                run.origin()));
      } else {
        left = cut(run, left, drafts);
      }
    }
    if (allKnown) {
      for (Members.Splice splice : left) {
        frame.impossible.add(
            Impossible.because(
                Impossible.Reason.SPLICE_OUTSIDE,
                frame.names.splice(splice),
                line,
                line,
                splice.origin()));
      }
    }
    add(line, drafts);
  }

  // gives back the splices it does not use
  private List<Members.Splice> cut(Run run, List<Members.Splice> splices, List<Draft> drafts) {
    List<Members.Splice> left = new ArrayList<>(0);
    Length bottom = run.bottom();
    int below = -1;
    for (Members.Splice splice : splices) {
      Length half = splice.gap().value().half();
      Length lowerEnd = splice.at().elevation().minus(half);
      Length upperStart = splice.at().elevation().plus(half);
      if (!lowerEnd.isLongerThan(bottom) || !upperStart.isShorterThan(run.top())) {
        left.add(splice);
        continue;
      }
      int piece = pieces.size() + drafts.size();
      drafts.add(new Draft(run, next(run), bottom, lowerEnd, below, joints.size()));
      below = joints.size();
      joints.add(
          new SpliceJoint(
              below,
              splice,
              run.line(),
              splice.at().elevation(),
              piece,
              piece + 1,
              frame.names.splice(splice)));
      bottom = upperStart;
    }
    drafts.add(new Draft(run, next(run), bottom, run.top(), below, -1));
    return left;
  }

  private int next(Run run) {
    return lengths[run.member()]++;
  }

  private void add(int line, List<Draft> drafts) {
    for (int i = 0; i < drafts.size(); i++) {
      Draft draft = drafts.get(i);
      Run run = draft.run();
      pieces.add(
          new VerticalPiece(
              pieces.size(),
              line,
              run.member(),
              draft.ordinal(),
              lengths[run.member()],
              run.widths().profile().orElseThrow(),
              frame.lines.x(line),
              draft.bottom(),
              draft.top(),
              draft.below(),
              draft.above(),
              sides.glazed(line, Side.LEFT, draft.bottom(), draft.top()),
              sides.glazed(line, Side.RIGHT, draft.bottom(), draft.top()),
              frame.names.vertical(line, i, drafts.size(), draft.bottom(), draft.top()),
              run.origin()));
    }
  }
}
