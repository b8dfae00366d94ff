package mullwright.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A wall of which some checks wait, since a line they lean on cannot be read or names what nothing
 * has: that they found nothing does not mean that there is nothing.
 *
 * @param file its path as shown to the reader
 * @param wall its name
 * @param groups the groups of rules that were not asked; at least one
 */
public record Waiting(String file, String wall, Set<Group> groups) {
  private static final Set<Group> ALL = EnumSet.complementOf(EnumSet.of(Group.TEXT));

  public Waiting {
    groups = Set.copyOf(groups);
  }

  /** What waits of a wall, if anything does. */
  public static List<Waiting> of(String file, List<WallFacts> walls) {
    List<Waiting> waiting = new ArrayList<>();
    for (WallFacts wall : walls) {
      Set<Group> groups = wall.waiting();
      if (!groups.isEmpty()) {
        waiting.add(new Waiting(file, wall.wall().name(), groups));
      }
    }
    return waiting;
  }

  /** The names of the groups, in the order of the catalogue of checks. */
  public List<String> names() {
    return groups.stream().sorted().map(group -> group.name().toLowerCase(Locale.ROOT)).toList();
  }

  /** One sentence for a drafter. */
  public String words() {
    List<String> things = new ArrayList<>();
    for (Group group : Group.values()) {
      if (groups.contains(group)) {
        things.add(things(group));
      }
    }
    String what =
        groups.containsAll(ALL)
            ? "only its text is checked"
            : "the checks of " + list(things) + " wait";
    return "Wall " + wall + ": " + what + " until its errors are mended.";
  }

  private static String things(Group group) {
    return switch (group) {
      case SPLICE -> "splices";
      case ANCHOR -> "anchors";
      case ISOLATION -> "isolation";
      case SPAN -> "spans";
      case GLASS -> "glass";
      case FABRICATION -> "holes";
      case WEATHER -> "weeps and dams";
      case INSTALLATION -> "installation";
      case TEXT -> "text";
    };
  }

  private static String list(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
