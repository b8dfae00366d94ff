package mullwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/** Says lists of names the short way: {@code B..F, H}. */
final class Ranges {
  private Ranges() {}

  /** Names in an order; three or more neighbours are said as a range. */
  static String of(List<String> names, List<String> order) {
    List<Integer> places = new ArrayList<>();
    StringJoiner said = new StringJoiner(", ");
    for (String name : names) {
      int at = order.indexOf(name);
      if (at >= 0 && !places.contains(at)) {
        places.add(at);
      } else if (at < 0) {
        said.add(name);
      }
    }
    places.sort(null);
    StringJoiner all = new StringJoiner(", ");
    for (int from = 0; from < places.size(); ) {
      int to = from;
      while (to + 1 < places.size() && places.get(to + 1) == places.get(to) + 1) {
        to++;
      }
      if (to - from >= 2) {
        all.add(order.get(places.get(from)) + ".." + order.get(places.get(to)));
      } else {
        for (int one = from; one <= to; one++) {
          all.add(order.get(places.get(one)));
        }
      }
      from = to + 1;
    }
    return said.length() == 0
        ? all.toString()
        : all.length() == 0 ? said.toString() : all + ", " + said;
  }

  /** Bays between lines, neighbours joined: {@code B-E, G-H}. */
  static String bays(List<List<String>> bays, List<String> lines) {
    StringJoiner said = new StringJoiner(", ");
    List<List<String>> sorted = new ArrayList<>(bays.stream().distinct().toList());
    sorted.sort((a, b) -> Integer.compare(lines.indexOf(a.get(0)), lines.indexOf(b.get(0))));
    for (int from = 0; from < sorted.size(); ) {
      int to = from;
      while (to + 1 < sorted.size() && sorted.get(to + 1).get(0).equals(sorted.get(to).get(1))) {
        to++;
      }
      said.add(sorted.get(from).get(0) + "-" + sorted.get(to).get(1));
      from = to + 1;
    }
    return (sorted.size() == 1 ? "bay " : "bays ") + said;
  }
}
