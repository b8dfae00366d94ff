package mullwright.review;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The order changes and what they are told of stand in: by topic, from left, from below. */
final class ChangeOrder implements Comparator<Change> {
  private final Map<Name, Integer> places = new HashMap<>();

  ChangeOrder(Sides sides) {
    number(sides.lines(), Name.Sort.LINE);
    number(sides.floors(), Name.Sort.FLOOR);
    number(sides.rows(), Name.Sort.ROW);
  }

  private void number(List<String> order, Name.Sort sort) {
    for (int at = 0; at < order.size(); at++) {
      places.put(new Name(sort, order.get(at)), at);
    }
  }

  /** The change with its subjects in order. */
  Change inside(Change change) {
    return new Change(
        change.how(),
        change.topic(),
        change.own().stream().sorted(this::bySubject).toList(),
        change.steps());
  }

  @Override
  public int compare(Change one, Change other) {
    int byTopic = one.topic().compareTo(other.topic());
    if (byTopic != 0) {
      return byTopic;
    }
    int bySubject = bySubject(one.own().get(0), other.own().get(0));
    if (bySubject != 0) {
      return bySubject;
    }
    int byHow = one.how().compareTo(other.how());
    return byHow != 0 ? byHow : one.steps().get(0).fact().compareTo(other.steps().get(0).fact());
  }

  private int bySubject(Subject one, Subject other) {
    List<Name> names = one.names();
    List<Name> others = other.names();
    for (int i = 0; i < Math.min(names.size(), others.size()); i++) {
      int order = Integer.compare(place(names.get(i)), place(others.get(i)));
      order = order == 0 ? names.get(i).compareTo(others.get(i)) : order;
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(names.size(), others.size());
  }

  private int place(Name name) {
    return places.getOrDefault(name, Integer.MAX_VALUE);
  }
}
