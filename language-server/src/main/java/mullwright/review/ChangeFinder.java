package mullwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds what changed between two sheets and puts together what changed alike.
 *
 * <p>What comes or goes with a line, a floor or a row belongs to that one change. Every fact that
 * differs is in exactly one change.
 */
final class ChangeFinder {
  private final Sides sides;
  private final Map<Subject, List<Change.Step>> steps = new TreeMap<>();
  private final Map<Subject, Change.How> how = new HashMap<>();
  private final Owners owners;
  private final List<Change> found = new ArrayList<>();

  private ChangeFinder(Sides sides) {
    this.sides = sides;
    differences();
    this.owners = new Owners(sides, how);
  }

  /** The changes, those of the grid first, each kind from left to right and from below. */
  static List<Change> between(Sides sides) {
    return new ChangeFinder(sides).find();
  }

  private void differences() {
    TreeSet<Fact> all = new TreeSet<>(sides.before().facts().keySet());
    all.addAll(sides.after().facts().keySet());
    for (Fact fact : all) {
      Value before = sides.before().facts().get(fact);
      Value after = sides.after().facts().get(fact);
      if (!Objects.equals(before, after)) {
        steps
            .computeIfAbsent(fact.subject(), any -> new ArrayList<>())
            .add(new Change.Step(fact, Optional.ofNullable(before), Optional.ofNullable(after)));
      }
    }
    steps.forEach(
        (subject, differing) -> {
          Change.Step first = differing.get(0);
          boolean whole = first.fact().property().equals(Fact.THERE);
          how.put(
              subject,
              !whole
                  ? Change.How.CHANGED
                  : first.before().isEmpty() ? Change.How.ADDED : Change.How.REMOVED);
        });
  }

  private List<Change> find() {
    comeAndGo();
    new Shifts(sides, steps, Topic.LINE, sides.lines()).take(found);
    new Shifts(sides, steps, Topic.FLOOR, sides.floors()).take(found);
    renamed();
    changed();
    List<Change> paired = new Moves(found).paired();
    ChangeOrder order = new ChangeOrder(sides);
    return paired.stream().map(order::inside).sorted(order).toList();
  }

  /** What was added or removed: with its owner if it has one, else together with its like. */
  private void comeAndGo() {
    Map<Object, List<Subject>> groups = new LinkedHashMap<>();
    Map<Object, Change.How> hows = new HashMap<>();
    Map<Subject, Object> keyOf = new HashMap<>();
    for (Map.Entry<Subject, Change.How> entry : new TreeMap<>(how).entrySet()) {
      Subject subject = entry.getKey();
      if (entry.getValue() != Change.How.CHANGED && owners.of(subject).isEmpty()) {
        Object key = List.of(entry.getValue(), subject.topic(), alike(subject));
        groups.computeIfAbsent(key, any -> new ArrayList<>()).add(subject);
        hows.put(key, entry.getValue());
        keyOf.put(subject, key);
      }
    }
    Map<Object, List<Change.Step>> all = new LinkedHashMap<>();
    for (Map.Entry<Subject, Change.How> entry : new TreeMap<>(how).entrySet()) {
      if (entry.getValue() != Change.How.CHANGED) {
        Object key = keyOf.get(owners.last(entry.getKey()));
        all.computeIfAbsent(key, any -> new ArrayList<>()).addAll(steps.remove(entry.getKey()));
      }
    }
    all.forEach(
        (key, taken) -> {
          List<Subject> own = groups.get(key);
          found.add(new Change(hows.get(key), own.get(0).topic(), own, taken));
        });
  }

  /** What subjects must have in common to be told together. */
  private Object alike(Subject subject) {
    return switch (subject.topic()) {
      case LINE -> "line " + neighbours(subject, sides.lines());
      case FLOOR -> "floor " + neighbours(subject, sides.floors());
      case ROW -> List.of(property(subject, "name"), same(subject));
      case OPENING, PART, REMARK, FACE, WIND, INSTALLATION, ON_HAND -> subject;
      default -> same(subject);
    };
  }

  /** The nearest thing before it in the wall that did not come or go likewise. */
  private String neighbours(Subject subject, List<String> order) {
    int at = order.indexOf(subject.names().get(0).id());
    Change.How mine = how.get(subject);
    while (at > 0) {
      at--;
      Subject before =
          Subject.of(subject.topic(), new Name(subject.names().get(0).sort(), order.get(at)));
      if (how.get(before) != mine) {
        return order.get(at);
      }
    }
    return "";
  }

  private String property(Subject subject, String property) {
    return steps.get(subject).stream()
        .filter(step -> step.fact().property().equals(property))
        .map(step -> step.after().or(step::before).orElseThrow())
        .map(value -> value instanceof Value.Words words ? words.text() : "")
        .findFirst()
        .orElse("");
  }

  private List<Object> same(Subject subject) {
    List<Object> all = new ArrayList<>();
    for (Change.Step step : steps.get(subject)) {
      all.add(likeness(step));
    }
    return all;
  }

  /** A step without what tells its subject from the next, so that equal ones are told together. */
  private static Object likeness(Change.Step step) {
    return List.of(
        step.fact().property(),
        step.before().map(value -> without(value, step.fact().subject())),
        step.after().map(value -> without(value, step.fact().subject())));
  }

  private static Value without(Value value, Subject subject) {
    boolean own =
        value instanceof Value.Place place
            && place.base().isPresent()
            && (subject.topic() == Topic.ROW || subject.names().contains(place.base().get()));
    return own
        ? new Value.Place(Optional.of(Name.other("")), ((Value.Place) value).offset())
        : value;
  }

  private void renamed() {
    Map<Object, List<Change.Step>> groups = new LinkedHashMap<>();
    for (List<Change.Step> differing : steps.values()) {
      for (Change.Step step : List.copyOf(differing)) {
        Topic topic = step.fact().subject().topic();
        boolean element = topic == Topic.LINE || topic == Topic.FLOOR || topic == Topic.ROW;
        boolean named = element || topic == Topic.WALL;
        if (named && step.fact().property().equals("name")) {
          Object key = topic == Topic.ROW ? likeness(step) : step.fact();
          groups.computeIfAbsent(key, any -> new ArrayList<>()).add(step);
          differing.remove(step);
        }
      }
    }
    groups.values().forEach(group -> found.add(change(Change.How.RENAMED, group)));
  }

  private static Change change(Change.How how, List<Change.Step> steps) {
    List<Subject> own = steps.stream().map(step -> step.fact().subject()).distinct().toList();
    return new Change(how, own.get(0).topic(), own, steps);
  }

  private void changed() {
    Map<Object, List<Change.Step>> groups = new LinkedHashMap<>();
    steps.forEach(
        (subject, differing) -> {
          if (!differing.isEmpty()) {
            if (subject.topic() == Topic.WALL
                || subject.topic() == Topic.CRITERIA
                || subject.topic() == Topic.FABRICATION) {
              differing.forEach(step -> groups.put(step.fact(), List.of(step)));
            } else {
              Object key = List.of(subject.topic(), same(subject), apart(subject));
              groups.computeIfAbsent(key, any -> new ArrayList<>()).addAll(differing);
            }
          }
        });
    for (List<Change.Step> group : groups.values()) {
      Topic topic = group.get(0).fact().subject().topic();
      boolean moved =
          (topic == Topic.ROW || topic == Topic.SPLICE || topic == Topic.ANCHOR)
              && group.stream().allMatch(step -> step.fact().property().startsWith("at"));
      found.add(change(moved ? Change.How.MOVED : Change.How.CHANGED, group));
    }
  }

  /** What subjects that changed alike must also share to be told together. */
  private Object apart(Subject subject) {
    return switch (subject.topic()) {
      case ROW -> sides.after().of(subject).getOrDefault("name", new Value.Words(""));
      case ANCHOR -> sides.after().of(subject).getOrDefault("kind", new Value.Words(""));
      case OPENING, PART, REMARK, FACE, WIND, INSTALLATION, ON_HAND -> subject;
      default -> "";
    };
  }
}
