package mullwright.check;

import java.util.Comparator;
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
    all = all.stream().sorted(Comparator.comparing(Rule::name)).toList();
  }

  /** Finds every rule by itself. */
  public static Rules find() {
    return new Rules(
        ServiceLoader.load(Rule.class, Rules.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .toList());
  }

  /** The rule of that name, present or former. */
  public Optional<Rule> named(String name) {
    return all.stream()
        .filter(rule -> rule.name().equals(name) || rule.about().formerNames().contains(name))
        .findFirst();
  }
}
