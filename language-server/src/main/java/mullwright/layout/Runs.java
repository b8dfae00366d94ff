package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Members;
import mullwright.model.Wall;
import mullwright.quantity.Length;

/**
 * On which stretches of each line a vertical stands.
 *
 * <p>Full height is from the lower edge of the lowest horizontal beside the line to the upper edge
 * of the highest; a door that reaches lower takes its jambs along. A stated place that is a row in
 * between butts that row's horizontal. An opening over several bays takes the verticals strictly
 * inside it.
 */
final class Runs {
  private final Lines lines;
  private final OpeningsCut openings;
  private final List<List<Run>> byLine = new ArrayList<>();

  Runs(Wall wall, Profiles profiles, Lines lines, Bars bars, OpeningsCut openings) {
    this.lines = lines;
    this.openings = openings;
    Grid grid = wall.grid();
    RunEnds ends = new RunEnds(lines, bars, openings);
    grid.lines().forEach(line -> byLine.add(new ArrayList<>(1)));
    List<Members.Vertical> verticals = wall.members().verticals();
    for (int member = 0; member < verticals.size(); member++) {
      Members.Vertical vertical = verticals.get(member);
      Widths widths = profiles.widths(vertical.profile().value());
      int line = vertical.line();
      RunEnd lower = ends.bottom(line, widths.halfFace(), vertical.from());
      RunEnd upper = ends.top(line, widths.halfFace(), vertical.to());
      byLine.get(line).add(new Run(line, member, widths, lower, upper, vertical.origin()));
    }
    for (Grid.Line line : grid.lines()) {
      if (byLine.get(line.index()).isEmpty()) {
        byLine.get(line.index()).add(unknown(line));
      }
    }
    if (!openings.none()) {
      for (int line = 0; line < lines.count(); line++) {
        cut(line);
      }
    }
  }

  // the grid says the line exists, so a vertical stands there; nobody says of what
  private static Run unknown(Grid.Line line) {
    return new Run(
        line.index(),
        -1,
        Widths.UNKNOWN,
        RunEnd.unknown(true),
        RunEnd.unknown(false),
        line.origin());
  }

  private void cut(int line) {
    int left = lines.bay(line, Side.LEFT);
    int right = lines.bay(line, Side.RIGHT);
    if (left < 0 || right < 0) {
      return;
    }
    for (Span span : openings.of(left)) {
      if (openings.has(right, span.index())) {
        cut(line, span);
      }
    }
  }

  private void cut(int line, Span span) {
    List<Run> kept = new ArrayList<>();
    for (Run run : byLine.get(line)) {
      if (!run.overlaps(span.bottom(), span.top())) {
        kept.add(run);
        continue;
      }
      RunEnd below = below(line, run.widths().halfFace(), span);
      if (run.bottom().isShorterThan(below.height())) {
        kept.add(run.upTo(below));
      }
      RunEnd above = above(line, run.widths().halfFace(), span);
      if (above.height().isShorterThan(run.top())) {
        kept.add(run.from(above));
      }
    }
    byLine.set(line, kept);
  }

  // the vertical under an opening butts the horizontal on its lower edge from below
  private RunEnd below(int line, Length half, Span span) {
    if (span.sill().isEmpty()) {
      return RunEnd.stated(span.bottom(), span.opening().bottom());
    }
    RunEnd left = RunEnd.at(span.sill().get(), lines.x(line).minus(half), true);
    RunEnd right = RunEnd.at(span.sill().get(), lines.x(line).plus(half), true);
    return left.height().isLongerThan(right.height()) ? left : right;
  }

  // the one over it stands on the horizontal on its upper edge
  private RunEnd above(int line, Length half, Span span) {
    if (span.head().isEmpty()) {
      return RunEnd.stated(span.top(), span.opening().top());
    }
    RunEnd left = RunEnd.at(span.head().get(), lines.x(line).minus(half), false);
    RunEnd right = RunEnd.at(span.head().get(), lines.x(line).plus(half), false);
    return left.height().isShorterThan(right.height()) ? left : right;
  }

  /** The runs of a line, from below. */
  List<Run> of(int line) {
    return byLine.get(line);
  }

  /** The run that passes that height of the line. */
  Optional<Run> at(int line, Length y) {
    for (Run run : byLine.get(line)) {
      if (run.crosses(y)) {
        return Optional.of(run);
      }
    }
    return Optional.empty();
  }

  /** The run beside that stretch of the line: the one at its middle, else any that overlaps it. */
  Optional<Run> beside(int line, Length from, Length to) {
    Optional<Run> middle = at(line, from.plus(to).half());
    if (middle.isPresent()) {
      return middle;
    }
    return byLine.get(line).stream().filter(run -> run.overlaps(from, to)).findFirst();
  }
}
