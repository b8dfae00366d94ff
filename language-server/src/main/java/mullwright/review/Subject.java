package mullwright.review;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a fact is about: one thing of the wall.
 *
 * @param names what identifies it, most telling first: an anchor has its line and its place
 */
public record Subject(Topic topic, List<Name> names) implements Comparable<Subject> {
  private static final Comparator<List<Name>> BY_NAMES =
      (one, other) -> {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
          int order = one.get(i).compareTo(other.get(i));
          if (order != 0) {
            return order;
          }
        }
        return Integer.compare(one.size(), other.size());
      };

  public Subject {
    names = List.copyOf(names);
  }

  static Subject of(Topic topic, Name... names) {
    return new Subject(topic, List.of(names));
  }

  /** The names of that sort, in order. */
  public List<String> named(Name.Sort sort) {
    return names.stream().filter(name -> name.sort() == sort).map(Name::id).toList();
  }

  @Override
  public int compareTo(Subject other) {
    int byTopic = topic.compareTo(other.topic);
    return byTopic != 0 ? byTopic : BY_NAMES.compare(names, other.names);
  }

  /** {@code anchor B L2}: for programs and for people who debug. */
  @Override
  public String toString() {
    return names.stream()
        .map(Name::id)
        .filter(id -> !id.isEmpty())
        .collect(Collectors.joining(" ", topic.word() + " ", ""))
        .strip();
  }
}
