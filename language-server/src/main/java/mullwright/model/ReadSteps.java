package mullwright.model;

import java.util.BitSet;
import java.util.List;

/** What is remembered of the steps in which a wall was last read. */
final class ReadSteps {
  final ReadStep<GridNames> grid = new ReadStep<>();
  final ReadStep<Cells> cells = new ReadStep<>();
  final ReadStep<List<Members.Vertical>> verticals = new ReadStep<>();
  final ReadStep<LineSpans> spans = new ReadStep<>();
  final ReadStep<List<Members.Horizontal>> horizontals = new ReadStep<>();
  final ReadStep<BitSet> covered = new ReadStep<>();
  final ReadStep<List<Members.Splice>> splices = new ReadStep<>();
  final ReadStep<List<Members.Reinforce>> reinforcements = new ReadStep<>();
  final ReadStep<List<Members.Bracket>> brackets = new ReadStep<>();
  final ReadStep<List<AnchorUse>> anchors = new ReadStep<>();
  final ReadStep<List<LiteUse>> lites = new ReadStep<>();
}
