package mullwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells with which line, floor, row or joint a thing came or went.
 *
 * <p>A horizontal goes with its line; the lites over and under a row that is taken out become one
 * with that row.
 */
final class Owners {
  private final Sides sides;
  private final Map<Subject, Change.How> how;

  Owners(Sides sides, Map<Subject, Change.How> how) {
    this.sides = sides;
    this.how = how;
  }

  /** What it came or went with; itself if with nothing. */
  Subject last(Subject subject) {
    Optional<Subject> owner = of(subject);
    return owner.isEmpty() ? subject : last(owner.get());
  }

  /** What it came or went with, if with anything. */
  Optional<Subject> of(Subject subject) {
    Change.How mine = how.get(subject);
    for (Subject element : leansOn(subject, mine)) {
      if (how.get(element) == mine) {
        return Optional.of(element);
      }
    }
    Change.How theirs = mine == Change.How.ADDED ? Change.How.REMOVED : Change.How.ADDED;
    return subject.topic() == Topic.HORIZONTAL || subject.topic() == Topic.LITE
        ? between(subject, theirs)
        : Optional.empty();
  }

  private List<Subject> leansOn(Subject subject, Change.How mine) {
    List<Subject> found = new ArrayList<>();
    if (subject.topic() == Topic.LINE || subject.topic() == Topic.FLOOR) {
      return found;
    }
    if (subject.topic() == Topic.ROW) {
      FactSheet sheet = mine == Change.How.ADDED ? sides.after() : sides.before();
      for (Value value : sheet.of(subject).values()) {
        if (value instanceof Value.Place place) {
          place.base().flatMap(Owners::element).ifPresent(found::add);
        }
      }
      found.remove(subject);
      return found;
    }
    subject.names().forEach(name -> element(name).ifPresent(found::add));
    return found;
  }

  private static Optional<Subject> element(Name name) {
    return switch (name.sort()) {
      case LINE -> Optional.of(Subject.of(Topic.LINE, name));
      case FLOOR -> Optional.of(Subject.of(Topic.FLOOR, name));
      case ROW -> Optional.of(Subject.of(Topic.ROW, name));
      case OTHER -> Optional.empty();
    };
  }

  /** A line or row that now divides what was one, or no longer does. */
  private Optional<Subject> between(Subject subject, Change.How theirs) {
    List<String> lines = subject.named(Name.Sort.LINE);
    List<String> rows = subject.named(Name.Sort.ROW);
    Optional<Subject> line =
        between(lines.get(0), lines.get(1), sides.lines(), Topic.LINE, Name.Sort.LINE, theirs);
    if (line.isPresent()) {
      return line;
    }
    if (rows.size() == 2) {
      Optional<Subject> row =
          between(rows.get(0), rows.get(1), sides.rows(), Topic.ROW, Name.Sort.ROW, theirs);
      if (row.isPresent()) {
        return row;
      }
    }
    Subject joint = Subject.of(Topic.JOINT, Name.line(lines.get(0)), Name.line(lines.get(1)));
    return how.get(joint) == theirs ? Optional.of(joint) : Optional.empty();
  }

  private Optional<Subject> between(
      String from, String to, List<String> order, Topic topic, Name.Sort sort, Change.How theirs) {
    for (int at = order.indexOf(from) + 1; at > 0 && at < order.indexOf(to); at++) {
      Subject element = Subject.of(topic, new Name(sort, order.get(at)));
      if (how.get(element) == theirs) {
        return Optional.of(element);
      }
    }
    return Optional.empty();
  }
}
