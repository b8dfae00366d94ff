package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.syntax.Clause;

/** Reads {@code spaced 1200, 4 @ b, 75} to distances, and fits them to the names they part. */
final class StepReader {
  private final Said said;
  private final Collector collector;

  StepReader(Said said, Collector collector) {
    this.said = said;
    this.collector = collector;
  }

  /**
   * The distances between so many names. A count that does not fit is reported; the names then
   * still get places (the last distance goes on, or what is too much is left), so that one slip in
   * the count costs no other statement its names.
   *
   * @return empty if a distance cannot be read
   */
  Optional<List<Length>> spaces(Clause.Spaced clause, String what, int names) {
    List<Length> spaces = new ArrayList<>();
    ExpressionReader values = said.values(collector);
    boolean readable = true;
    for (Clause.Spaced.Step step : clause.steps()) {
      Optional<Integer> count =
          step.count().isEmpty()
              ? Optional.of(1)
              : values.count(step.count().get(), "spaces", Limits.NAMES);
      Optional<Length> length = values.length(step.length(), "spacing");
      if (count.isEmpty() || length.isEmpty()) {
        readable = false;
      } else if (length.get().signum() <= 0) {
        negative(step);
        readable = false;
      } else if (spaces.size() + count.get() > Limits.NAMES) {
        tooMany(clause, spaces.size() + (long) count.get());
        return Optional.empty();
      } else if (step.equal()) {
        spaces.addAll(length.get().split(count.get()));
      } else {
        for (int i = 0; i < count.get(); i++) {
          spaces.add(length.get());
        }
      }
    }
    if (!readable || spaces.isEmpty()) {
      return Optional.empty();
    }
    if (spaces.size() != names - 1) {
      mismatch(clause, what, names, spaces.size());
      while (spaces.size() < names - 1) {
        spaces.add(spaces.get(spaces.size() - 1));
      }
    }
    return Optional.of(spaces.subList(0, Math.max(0, names - 1)));
  }

  private void mismatch(Clause.Spaced clause, String what, int names, int given) {
    if (said.broken()) {
      return; // some of the names or distances may not have been read
    }
    String fitting = fitting(clause, names - 1 - given);
    String hint =
        fitting.isEmpty()
            ? names == 1 ? "one name has no space" : names + " names have " + spaces(names - 1)
            : "write " + fitting;
    collector.problem(
        new ModelProblem.CountMismatch(
            names == 1 ? "spaces of one name" : "spaces between " + names + " " + what,
            names - 1L,
            given,
            hint,
            said.spot().at(clause.range())));
  }

  private static String spaces(int count) {
    return (count == 1 ? "one space" : count + " spaces") + " between them";
  }

  /** The clause with the count of its only repeated step put right, or "". */
  private String fitting(Clause.Spaced clause, int more) {
    List<Clause.Spaced.Step> repeated = new ArrayList<>();
    for (Clause.Spaced.Step step : clause.steps()) {
      if (step.count().isPresent()) {
        repeated.add(step);
      }
    }
    if (repeated.size() != 1 || !repeated.get(0).count().get().number().matches("[0-9]{1,9}")) {
      return "";
    }
    Clause.Spaced.Step step = repeated.get(0);
    int count = Integer.parseInt(step.count().get().number()) + more;
    if (count < 1) {
      return "";
    }
    String text = said.spot().text(clause.range());
    int start = step.count().get().range().start() - clause.range().start();
    int end = step.count().get().range().end() - clause.range().start();
    return text.substring(0, start) + count + text.substring(end);
  }

  private void negative(Clause.Spaced.Step step) {
    collector.bad(
        ModelProblem.BadValue.Reason.OUT_OF_RANGE,
        said.spot().text(step.range()),
        said.spot().at(step.range()));
  }

  private void tooMany(Clause.Spaced clause, long asked) {
    collector.problem(
        new ModelProblem.TooMany("spaces", Limits.NAMES, asked, said.spot().at(clause.range())));
  }
}
