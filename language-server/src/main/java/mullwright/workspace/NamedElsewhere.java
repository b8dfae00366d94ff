package mullwright.workspace;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.model.Reference;
import mullwright.model.Symbol;

/** Names of a file that other files of the workspace, which use it, name. */
final class NamedElsewhere {
  private NamedElsewhere() {}

  /**
   * Those of the names that are named in another file.
   *
   * @param names that the file gives
   */
  static Set<Symbol> of(Collection<Symbol> names, String path, Snapshot snapshot, Cancel cancel) {
    Set<Symbol> left = new HashSet<>(names);
    Set<Symbol> named = new LinkedHashSet<>();
    for (String user : users(path, snapshot, cancel)) {
      cancel.check();
      if (left.isEmpty()) {
        break;
      }
      String text = snapshot.file(user).orElseThrow().text();
      if (left.stream().anyMatch(symbol -> text.contains(symbol.name()))) {
        for (Reference reference : references(user, snapshot)) {
          if (!reference.definition() && left.remove(reference.symbol())) {
            named.add(reference.symbol());
          }
        }
      }
    }
    return named;
  }

  private static List<Reference> references(String path, Snapshot snapshot) {
    return snapshot.reading(path).map(reading -> reading.model().references()).orElse(List.of());
  }

  /** The files that use a file, or one that uses it. */
  private static Set<String> users(String path, Snapshot snapshot, Cancel cancel) {
    Map<String, Set<String>> usersOf = new HashMap<>();
    for (String wall : snapshot.listed()) {
      cancel.check();
      snapshot
          .file(wall)
          .ifPresent(
              file -> {
                for (String used : UsedTexts.named(wall, file.text())) {
                  usersOf.computeIfAbsent(used, any -> new LinkedHashSet<>()).add(wall);
                }
              });
    }
    Set<String> users = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(usersOf.getOrDefault(path, Set.of()));
    while (!open.isEmpty()) {
      String user = open.poll();
      if (!user.equals(path) && users.add(user)) {
        open.addAll(usersOf.getOrDefault(user, Set.of()));
      }
    }
    return users;
  }
}
