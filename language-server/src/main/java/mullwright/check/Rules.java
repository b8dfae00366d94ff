package mullwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Every rule there is, by name.
 *
 * @param all sorted by name
 */
public record Rules(List<Rule> all) {
  public Rules {
    // spelled out: the library's comparators are made at run time, at every start
    List<Rule> sorted = new ArrayList<>(all);
    sorted.sort((one, other) -> one.name().compareTo(other.name()));
    all = List.copyOf(sorted);
  }

  /** Finds every rule by itself. */
  public static Rules find() {
    List<Rule> found = new ArrayList<>();
    ServiceLoader.load(Rule.class, Rules.class.getClassLoader()).forEach(found::add);
    return new Rules(found);
  }

  /** The rule of that name, present or former. */
  public Optional<Rule> named(String name) {
    return all.stream()
        .filter(rule -> rule.name().equals(name) || rule.about().formerNames().contains(name))
        .findFirst();
  }
}
