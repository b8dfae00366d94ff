package mullwright.check;

import java.util.List;

/**
 * What is told of a rule besides its page.
 *
 * @param safety true if the rule guards people: it cannot be turned off silently
 * @param formerNames names it had before; they stay valid
 */
public record About(Group group, Severity severity, boolean safety, List<String> formerNames) {
  public About {
    formerNames = List.copyOf(formerNames);
  }

  /** A rule of that group and severity that always had its name. */
  public static About of(Group group, Severity severity) {
    return new About(group, severity, false, List.of());
  }

  /** The same rule, marked as one that guards people. */
  public About guardingPeople() {
    return new About(group, severity, true, formerNames);
  }
}
