package mullwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;

/** Says changes in the trade's words. */
final class ChangeWords {
  private static final int SHOWN = 6;

  private final Sides sides;
  private final SubjectWords subjects;
  private final UnitSystem units;

  ChangeWords(Sides sides, UnitSystem units) {
    this.sides = sides;
    this.subjects = new SubjectWords(sides);
    this.units = units;
  }

  /** The change as one sentence without a stop. */
  String of(Change change) {
    return switch (change.how()) {
      case RENAMED -> renamed(change);
      case MOVED -> moved(change);
      case SPACED -> spaced(change);
      case ADDED ->
          change.topic() == Topic.PART
              ? subject(change) + " is now used"
              : subject(change) + " added" + told(change, true);
      case REMOVED ->
          change.topic() == Topic.PART
              ? subject(change) + " is no longer used"
              : subject(change) + " removed" + told(change, false);
      case CHANGED -> subject(change) + ": " + properties(change);
    };
  }

  private String subject(Change change) {
    String words = subjects.of(change.topic(), change.own());
    if (change.topic() == Topic.ANCHOR) {
      return kind(change).map(kind -> kind + " ").orElse("") + words;
    }
    if (change.topic() == Topic.OPENING) {
      Value kind = told(change.own().get(0), "kind").orElse(new Value.Words("opening"));
      return words.replaceFirst("opening", kind.words(units));
    }
    return words;
  }

  /** Dead-load, wind-load or clip, unless that is what changed. */
  private Optional<String> kind(Change change) {
    boolean changes =
        change.how() == Change.How.CHANGED
            && change.steps().stream().anyMatch(step -> step.fact().property().equals("kind"));
    return changes
        ? Optional.empty()
        : told(change.own().get(0), "kind").map(kind -> kind.words(units));
  }

  private Optional<Value> told(Subject subject, String property) {
    Fact fact = new Fact(subject, property);
    return Optional.ofNullable(sides.after().facts().get(fact))
        .or(() -> Optional.ofNullable(sides.before().facts().get(fact)));
  }

  private String renamed(Change change) {
    if (change.own().size() == 2
        && change.how() == Change.How.RENAMED
        && change.topic() != Topic.ROW) {
      boolean firstGone =
          change.steps().stream()
              .filter(step -> step.fact().subject().equals(change.own().get(0)))
              .anyMatch(step -> step.after().isEmpty());
      Subject gone = change.own().get(firstGone ? 0 : 1);
      Subject come = change.own().get(firstGone ? 1 : 0);
      return subjects.of(change.topic(), List.of(gone))
          + " is now called "
          + come.names().get(come.names().size() - 1).id();
    }
    Change.Step step = change.steps().get(0);
    String before = step.before().map(value -> value.words(units)).orElse("");
    String after = step.after().map(value -> value.words(units)).orElse("");
    String many = change.own().size() > 1 ? "rows " : change.topic().word() + " ";
    return many + before + " is now called " + after;
  }

  private String moved(Change change) {
    if (change.topic() != Topic.LINE && change.topic() != Topic.FLOOR) {
      return movedPlace(change);
    }
    Change.Step first = change.steps().get(0);
    Length before = size(first.before());
    Length after = size(first.after());
    Length by = after.minus(before);
    boolean line = change.topic() == Topic.LINE;
    String direction =
        line
            ? by.signum() > 0 ? " to the right" : " to the left"
            : by.signum() > 0 ? " up" : " down";
    String from = change.own().size() > 1 ? "" : ", " + arrow(first.before(), first.after());
    return subject(change) + " moved " + LengthPrinter.exact(by.abs(), units) + direction + from;
  }

  private String movedPlace(Change change) {
    List<Subject> gone =
        change.own().stream()
            .filter(subject -> !sides.after().subjects().contains(subject))
            .toList();
    List<Subject> come =
        change.own().stream()
            .filter(subject -> !sides.before().subjects().contains(subject))
            .toList();
    if (!gone.isEmpty() && !come.isEmpty()) {
      String kind = change.topic() == Topic.ANCHOR ? kind(change).orElse("") + " " : "";
      return kind
          + subjects.of(change.topic(), gone)
          + " moved to "
          + place(come.get(0), change)
          + " (was "
          + place(gone.get(0), change)
          + ")";
    }
    return subject(change) + " moved: " + properties(change);
  }

  private String place(Subject subject, Change change) {
    return told(subject, "at")
        .map(value -> value.words(units))
        .orElse(subject.names().get(subject.names().size() > 1 ? 1 : 0).id());
  }

  private String spaced(Change change) {
    boolean line = change.topic() == Topic.LINE;
    List<String> order = line ? sides.lines() : sides.floors();
    String first = change.own().get(0).names().get(0).id();
    String last = change.own().get(change.own().size() - 1).names().get(0).id();
    int at = order.indexOf(first);
    String start = at > 0 ? order.get(at - 1) : first;
    Name.Sort sort = line ? Name.Sort.LINE : Name.Sort.FLOOR;
    Subject before = Subject.of(change.topic(), new Name(sort, start));
    Change.Step step = change.steps().get(0);
    Length old = size(step.before()).minus(at(sides.before(), before));
    Length now = size(step.after()).minus(at(sides.after(), before));
    return (line ? "bays " + start + "-" + last : "storeys " + start + " to " + last)
        + " each "
        + arrow(Optional.of(new Value.Size(old)), Optional.of(new Value.Size(now)))
        + (line ? " wide" : " high");
  }

  private static Length at(FactSheet sheet, Subject subject) {
    return sheet.facts().get(new Fact(subject, "at")) instanceof Value.Size size
        ? size.length()
        : Length.ZERO;
  }

  private static Length size(Optional<Value> value) {
    return value.orElseThrow() instanceof Value.Size size ? size.length() : Length.ZERO;
  }

  /** What an added or removed thing is, from its first subject. */
  private String told(Change change, boolean added) {
    StringJoiner said = new StringJoiner(", ", ": ", "");
    said.setEmptyValue("");
    Subject first = change.own().get(0);
    for (Change.Step step : change.steps()) {
      String property = step.fact().property();
      boolean tells =
          !property.isEmpty()
              && !property.equals("name")
              && !property.equals("kind")
              && step.fact().subject().equals(first);
      if (tells) {
        Value value = (added ? step.after() : step.before()).orElseThrow();
        said.add(property + " " + value.words(units));
      }
    }
    boolean positions = change.topic() == Topic.LINE || change.topic() == Topic.FLOOR;
    return positions && change.own().size() > 1 ? "" : said.toString();
  }

  private String properties(Change change) {
    Subject first = change.steps().get(0).fact().subject();
    List<String> said = new ArrayList<>();
    for (Change.Step step : change.steps()) {
      if (step.fact().subject().equals(first)) {
        String arrow = arrow(step.before(), step.after());
        String property = step.fact().property();
        said.add(property.isEmpty() || property.equals("at") ? arrow : property + " " + arrow);
      }
    }
    int more = said.size() - SHOWN;
    return String.join(", ", said.subList(0, Math.min(SHOWN, said.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }

  private String arrow(Optional<Value> before, Optional<Value> after) {
    String from = before.map(value -> value.words(units)).orElse("none");
    String to = after.map(value -> value.words(units)).orElse("none");
    if (from.equals(to)) {
      from = before.map(value -> value.exactly(units)).orElse("none");
      to = after.map(value -> value.exactly(units)).orElse("none");
    }
    return from + " → " + to;
  }
}
