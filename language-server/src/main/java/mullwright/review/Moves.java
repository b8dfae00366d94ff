package mullwright.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Sees that what went in one place and came in another is the same thing moved, or under another
 * name.
 */
final class Moves {
  private static final Set<Topic> MOVE =
      EnumSet.of(Topic.SPLICE, Topic.ANCHOR, Topic.REINFORCEMENT, Topic.BRACKET);
  private static final Set<Topic> RENAME =
      EnumSet.of(Topic.OPENING, Topic.FACE, Topic.WIND, Topic.PART);

  private final List<Change> changes;

  Moves(List<Change> changes) {
    this.changes = changes;
  }

  /** The changes, with such pairs made one. */
  List<Change> paired() {
    List<Change> left = new ArrayList<>(changes);
    List<Change> made = new ArrayList<>();
    for (Change gone : changes) {
      if (gone.how() == Change.How.REMOVED) {
        for (Change come : List.copyOf(left)) {
          if (come.how() == Change.How.ADDED && left.contains(gone) && same(gone, come)) {
            left.remove(gone);
            left.remove(come);
            made.add(together(gone, come));
          }
        }
      }
    }
    made.addAll(left);
    return made;
  }

  private static Change together(Change gone, Change come) {
    List<Change.Step> steps = new ArrayList<>(gone.steps());
    steps.addAll(come.steps());
    List<Subject> own = new ArrayList<>(gone.own());
    own.addAll(come.own());
    Change.How how = MOVE.contains(gone.topic()) ? Change.How.MOVED : Change.How.RENAMED;
    return new Change(how, gone.topic(), own, steps);
  }

  private static boolean same(Change gone, Change come) {
    if (gone.topic() != come.topic()) {
      return false;
    }
    if (RENAME.contains(gone.topic())) {
      boolean kind =
          gone.topic() != Topic.PART
              || gone.own().get(0).names().get(0).equals(come.own().get(0).names().get(0));
      return kind && said(gone, true).equals(said(come, true));
    }
    return MOVE.contains(gone.topic())
        && lines(gone).equals(lines(come))
        && said(gone, false).equals(said(come, false));
  }

  private static List<List<String>> lines(Change change) {
    return change.own().stream()
        .map(subject -> subject.named(Name.Sort.LINE))
        .sorted(java.util.Comparator.comparing(Object::toString))
        .toList();
  }

  /** What is said of the first of its subjects. */
  private static Map<String, Value> said(Change change, boolean places) {
    Map<String, Value> said = new TreeMap<>();
    Subject first = change.own().get(0);
    for (Change.Step step : change.steps()) {
      boolean told = places || !(step.fact().property().equals("at"));
      if (step.fact().subject().equals(first) && told) {
        said.put(step.fact().property(), step.after().or(step::before).orElseThrow());
      }
    }
    return said;
  }
}
