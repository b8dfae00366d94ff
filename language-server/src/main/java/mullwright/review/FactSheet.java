package mullwright.review;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Everything a wall states, fact by fact, whatever the order and grouping of its text.
 *
 * @param facts in the order of their subjects
 */
public record FactSheet(SortedMap<Fact, Value> facts) {
  public FactSheet {
    facts = Collections.unmodifiableSortedMap(new TreeMap<>(facts));
  }

  /** The sheet after a change; a change of facts that are not as it found them is laid over. */
  public FactSheet with(Change change) {
    TreeMap<Fact, Value> after = new TreeMap<>(facts);
    for (Change.Step step : change.steps()) {
      step.after()
          .ifPresentOrElse(value -> after.put(step.fact(), value), () -> after.remove(step.fact()));
    }
    return new FactSheet(after);
  }

  /** What it says of a subject, by property; empty if the subject is not there. */
  public Map<String, Value> of(Subject subject) {
    Map<String, Value> found = new TreeMap<>();
    for (Map.Entry<Fact, Value> entry : facts.tailMap(new Fact(subject, "")).entrySet()) {
      if (!entry.getKey().subject().equals(subject)) {
        break;
      }
      found.put(entry.getKey().property(), entry.getValue());
    }
    return found;
  }

  /** Everything it says something of. */
  public TreeSet<Subject> subjects() {
    TreeSet<Subject> all = new TreeSet<>();
    facts.keySet().forEach(fact -> all.add(fact.subject()));
    return all;
  }
}
