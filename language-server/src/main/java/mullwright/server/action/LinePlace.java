package mullwright.server.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.quantity.Length;
import mullwright.quantity.LengthReader;
import mullwright.server.Document;
import mullwright.server.hover.Numbers;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Comment;
import mullwright.syntax.Expression;
import mullwright.syntax.Place;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;

/**
 * Where the text says a grid line stands: by a spacing, by a place of its own, from another line.
 *
 * @param segment of the file, that the statement stands in
 * @param lines those of the statement, in order
 */
record LinePlace(Document home, Statement statement, int segment, List<Grid.Line> lines, int at) {

  /**
   * What the text would be after a move: from {@code start} to {@code end} of the file it gives way
   * to {@code text}.
   *
   * @param refusal why it cannot be moved so, a sentence; "" if it can
   */
  record Outcome(int start, int end, String text, String refusal) {
    static Outcome refused(String why) {
      return new Outcome(0, 0, "", why);
    }
  }

  /** Of a line of a grid; {@code statement} is null if the text is not at hand. */
  static LinePlace of(Document home, Grid grid, Grid.Line line) {
    int segment = line.origin().segment();
    int base = home.file().segmentStart(segment);
    Statement statement =
        home.snapshot()
            .cursor(home.path(), base + line.origin().range().start())
            .flatMap(Cursor::statement)
            .orElse(null);
    List<Grid.Line> lines = new ArrayList<>();
    if (statement != null) {
      for (Grid.Line each : grid.lines()) {
        TextRange range = each.origin().range();
        if (each.origin().file().equals(line.origin().file())
            && each.origin().segment() == segment
            && statement.range().start() <= range.start()
            && range.end() <= statement.range().end()) {
          lines.add(each);
        }
      }
    }
    corner(statement, grid, lines).ifPresent(first -> lines.add(0, first));
    return new LinePlace(home, statement, segment, lines, lines.indexOf(line));
  }

  /** The line a face begins at, which the face before it has named already. */
  private static Optional<Grid.Line> corner(Statement statement, Grid grid, List<Grid.Line> lines) {
    if (statement == null || statement.kind() != StatementKind.FACE || lines.isEmpty()) {
      return Optional.empty();
    }
    int before = lines.get(0).index() - 1;
    return grid.faces().stream()
        .filter(face -> face.firstLine() == before)
        .map(face -> grid.lines().get(before))
        .findFirst();
  }

  Outcome movedBy(Length by, Numbers units) {
    if (statement == null || at < 0) {
      return Outcome.refused("The text that says where the line stands is not at hand.");
    }
    Optional<Clause> spaced = statement.clause(ClauseWord.SPACED);
    if (spaced.isPresent()) {
      return spaced((Clause.Spaced) spaced.get(), by, units);
    }
    Optional<Clause> placed = statement.clause(ClauseWord.AT);
    return placed.isPresent()
        ? placed((Clause.At) placed.get(), by, units)
        : Outcome.refused("The text does not say where the line stands.");
  }

  private Outcome placed(Clause.At placed, Length by, Numbers units) {
    if (placed.places().size() != lines.size()) {
      return Outcome.refused("The text does not give this line a place of its own.");
    }
    Place place = placed.places().get(at);
    Expression offset = null;
    Length now = lines.get(at).x();
    Length moved = by;
    if (place instanceof Place.FromDatum datum) {
      offset = datum.length();
    } else if (place instanceof Place.AtNames names && names.offset().isPresent()) {
      offset = names.offset().get();
      moved = names.direction() == Place.Direction.LEFT_OF ? by.negated() : by;
      now = null;
    }
    if (!(offset instanceof Expression.Literal literal)) {
      return Outcome.refused("The line's place is reckoned from others; change these.");
    }
    Optional<Length> written = length(literal);
    if (written.isEmpty() || (now != null && !written.get().equals(now) && lines.get(at).edge())) {
      return Outcome.refused("The line's place cannot be read as a length with its unit.");
    }
    Length then = written.get().plus(moved);
    return then.signum() < 0 && place instanceof Place.AtNames
        ? Outcome.refused("The line would pass the one it is measured from.")
        : outcome(literal.range(), units.written(then));
  }

  private Optional<Length> length(Expression.Literal literal) {
    return LengthReader.read(written(literal.range())).value();
  }

  private Outcome spaced(Clause.Spaced spaced, Length by, Numbers units) {
    List<String> bays = new ArrayList<>();
    List<TextRange> steps = new ArrayList<>();
    for (Clause.Spaced.Step step : spaced.steps()) {
      if (step.equal()) {
        return Outcome.refused("Its bays are to be equal; give them lengths of their own first.");
      }
      int count = step.count().map(it -> number(it.number())).orElse(1);
      String text = written(step.length().range());
      for (int i = 0; i < count; i++) {
        bays.add(text);
        steps.add(step.range());
      }
    }
    if (bays.size() != lines.size() - 1) {
      return Outcome.refused("The spacings do not fit the names of the lines.");
    }
    if (at == 0) {
      return Outcome.refused("All others are counted from the first line; move these instead.");
    }
    Length left = lines.get(at).x().minus(lines.get(at - 1).x()).plus(by);
    if (left.signum() <= 0) {
      return Outcome.refused("The line would pass its neighbour.");
    }
    bays.set(at - 1, units.written(left));
    if (at < bays.size()) {
      Length right = lines.get(at + 1).x().minus(lines.get(at).x()).minus(by);
      if (right.signum() <= 0) {
        return Outcome.refused("The line would pass its neighbour.");
      }
      bays.set(at, units.written(right));
    }
    return told(bays, steps);
  }

  /**
   * The steps that change, told anew with those beside them that have become equal to them.
   *
   * @param steps of each bay, the one that told it
   */
  private Outcome told(List<String> bays, List<TextRange> steps) {
    int first = at - 1;
    while (first > 0 && together(first - 1, bays, steps)) {
      first--;
    }
    int last = Math.min(at, bays.size() - 1);
    while (last < bays.size() - 1 && together(last, bays, steps)) {
      last++;
    }
    TextRange range = steps.get(first).to(steps.get(last));
    return commented(range)
        ? Outcome.refused("A comment stands between the spacings that change; move it first.")
        : outcome(range, together(bays.subList(first, last + 1)));
  }

  /** True if a bay and the next are told by one step, or may be. */
  private boolean together(int bay, List<String> bays, List<TextRange> steps) {
    TextRange one = steps.get(bay);
    TextRange next = steps.get(bay + 1);
    return one.equals(next) || bays.get(bay).equals(bays.get(bay + 1)) && !commented(one.to(next));
  }

  private boolean commented(TextRange range) {
    return home.file().segments().get(segment).comments().stream()
        .map(Comment::range)
        .anyMatch(it -> it.start() < range.end() && range.start() < it.end());
  }

  private String written(TextRange range) {
    int base = home.file().segmentStart(segment);
    return home.file().text().substring(base + range.start(), base + range.end());
  }

  private static int number(String digits) {
    return digits.matches("[0-9]{1,6}") ? Integer.parseInt(digits) : 0;
  }

  /** Equal neighbours told together: {@code 2 @ 5'-0", 5'-1"}. */
  private static String together(List<String> bays) {
    List<String> steps = new ArrayList<>();
    for (int i = 0; i < bays.size(); ) {
      int to = i + 1;
      while (to < bays.size() && bays.get(to).equals(bays.get(i))) {
        to++;
      }
      steps.add(to - i > 1 ? (to - i) + " @ " + bays.get(i) : bays.get(i));
      i = to;
    }
    return String.join(", ", steps);
  }

  private Outcome outcome(TextRange range, String text) {
    int base = home.file().segmentStart(segment);
    return new Outcome(base + range.start(), base + range.end(), text, "");
  }
}
