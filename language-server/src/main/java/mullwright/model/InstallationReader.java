package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Selection;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/**
 * Reads the {@code installation} block: which bays are set how, in which order. A wall that states
 * its own takes nothing from the wall it is like.
 */
final class InstallationReader {
  private final GridNames names;
  private final Collector collector;
  private final List<Installation.Stretch> stretches = new ArrayList<>();
  private final Map<Integer, Said> setBy = new HashMap<>();

  InstallationReader(GridNames names, Collector collector) {
    this.names = names;
    this.collector = collector;
  }

  Installation read(WallText wall) {
    List<Said> all = wall.all(StatementKind.LADDER, StatementKind.STICK);
    int top = 0;
    for (Said said : all) {
      top = Math.max(top, said.layer());
    }
    for (Said said : all) {
      if (said.layer() == top) {
        read(said);
      }
    }
    return new Installation(stretches);
  }

  private void read(Said said) {
    Optional<Selection> selection =
        said.argument(Argument.Select.class).map(Argument.Select::selection);
    if (selection.isEmpty()) {
      return;
    }
    boolean fromRight = fromRight(said);
    if (selection.get().all() && names.lines().size() > 1) {
      add(said, 0, names.lines().size() - 1, fromRight);
    }
    for (Selection.Item item : selection.get().items()) {
      int[] first = names.lines().named(item.first(), said, collector);
      int[] last = item.isRange() ? names.lines().named(item.last(), said, collector) : first;
      if (first.length == 0 || last.length == 0) {
        continue;
      }
      if (first[0] == last[0]) {
        collector.misplaced(
            '"' + said.spot().text(item.range()) + "\" is no stretch of bays",
            "a stretch goes from a line to a line, as A..C",
            said.spot().at(item.range()));
      } else {
        add(said, Math.min(first[0], last[0]), Math.max(first[0], last[0]), fromRight);
      }
    }
  }

  private boolean fromRight(Said said) {
    Optional<Word> start =
        said.clause(ClauseWord.START, Clause.Named.class).map(Clause.Named::name);
    if (start.isEmpty()) {
      return said.mirrored();
    }
    String side = start.get().text();
    if (!side.equals("left") && !side.equals("right")) {
      collector.unknown("side", side, List.of("left", "right"), said.spot().at(start.get()));
      return said.mirrored();
    }
    return side.equals("right") != said.mirrored();
  }

  private void add(Said said, int first, int last, boolean fromRight) {
    Installation.Method method =
        said.statement().kind() == StatementKind.LADDER
            ? Installation.Method.LADDER
            : Installation.Method.STICK;
    boolean told = false;
    for (int line = first; line < last; line++) {
      int bay = names.bays().rightOf(line);
      Said before = bay < 0 ? null : setBy.putIfAbsent(bay, said);
      if (before != null && !told) {
        told = true;
        collector.problem(
            new ModelProblem.Conflict(
                "installation",
                names.bays().name(bay),
                "method",
                before.words(),
                said.words(),
                before.origin(),
                said.origin()));
      }
    }
    stretches.add(new Installation.Stretch(method, first, last, fromRight, said.origin()));
  }
}
