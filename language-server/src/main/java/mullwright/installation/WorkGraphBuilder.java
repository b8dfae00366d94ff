package mullwright.installation;

import java.util.ArrayList;
import java.util.List;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/** Collects steps and precedences. */
final class WorkGraphBuilder {
  private final List<WorkStep> steps = new ArrayList<>();
  private final List<Precedence> precedences = new ArrayList<>();
  private final PairSet known = new PairSet();
  private final Stretches stretches;

  WorkGraphBuilder(WallLayout layout) {
    this.stretches = new Stretches(layout);
  }

  Stretches stretches() {
    return stretches;
  }

  int step(
      WorkKind kind, int place, Length height, String what, Origin origin, List<PieceRef> pieces) {
    steps.add(new WorkStep(steps.size(), kind, place, height, what, origin, pieces));
    return steps.size() - 1;
  }

  /** A step waits for another; a missing one (-1), and one step itself, are passed over. */
  void before(int before, int after, String reason) {
    if (before >= 0 && after >= 0 && before != after && known.add(before, after)) {
      precedences.add(new Precedence(before, after, reason));
    }
  }

  WorkGraph graph() {
    return new WorkGraph(steps, precedences);
  }
}
