package mullwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts together lines or floors that moved: neighbours that moved by the same, and neighbours each
 * of which moved further than the one before by the same, since the spaces between them were
 * changed.
 */
final class Shifts {
  private final Map<Subject, List<Change.Step>> steps;
  private final List<Moved> all = new ArrayList<>();

  /** One thing of the order that is in both walls; {@code by} ticks, 0 if it did not move. */
  private record Moved(Subject subject, long by, Change.Step step) {}

  Shifts(Sides sides, Map<Subject, List<Change.Step>> steps, Topic topic, List<String> order) {
    this.steps = steps;
    for (String id : order) {
      Name name = topic == Topic.LINE ? Name.line(id) : Name.floor(id);
      Subject subject = Subject.of(topic, name);
      Fact at = new Fact(subject, "at");
      Value before = sides.before().facts().get(at);
      Value after = sides.after().facts().get(at);
      if (before instanceof Value.Size from && after instanceof Value.Size to) {
        all.add(
            new Moved(
                subject,
                to.length().ticks() - from.length().ticks(),
                new Change.Step(at, Optional.of(before), Optional.of(after))));
      }
    }
  }

  /** Moves their steps into changes. */
  void take(List<Change> found) {
    int at = 0;
    while (at < all.size()) {
      if (all.get(at).by == 0) {
        at++;
        continue;
      }
      int together = at + 1;
      while (together < all.size() && all.get(together).by == all.get(at).by) {
        together++;
      }
      int spaced = spaced(at);
      boolean respaced = spaced - at > 1 && spaced - at > together - at;
      found.add(change(at, respaced ? spaced : together, respaced));
      at = respaced ? spaced : together;
    }
  }

  /** The end of the run in which each moved further than the one before by as much as the first. */
  private int spaced(int from) {
    long step = all.get(from).by - (from == 0 ? 0 : all.get(from - 1).by);
    int to = from + 1;
    while (to < all.size()
        && step != 0
        && all.get(to).by != 0
        && all.get(to).by - all.get(to - 1).by == step) {
      to++;
    }
    return to;
  }

  private Change change(int from, int to, boolean respaced) {
    List<Subject> own = new ArrayList<>();
    List<Change.Step> taken = new ArrayList<>();
    for (Moved moved : all.subList(from, to)) {
      own.add(moved.subject);
      taken.add(moved.step);
      steps.get(moved.subject).remove(moved.step);
    }
    Change.How how = respaced ? Change.How.SPACED : Change.How.MOVED;
    return new Change(how, own.get(0).topic(), own, taken);
  }
}
