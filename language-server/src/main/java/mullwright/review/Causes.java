package mullwright.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mullwright.layout.PieceRef;

/**
 * Tells which changes can have altered a piece, a reaction or a finding: those of what it is
 * measured from, held by or made of.
 */
final class Causes {
  private static final Set<Topic> EVERYWHERE =
      EnumSet.of(Topic.FACE, Topic.OPENING, Topic.CORNER, Topic.JOINT);
  private static final Set<Topic> LOADS =
      EnumSet.of(Topic.ROW, Topic.FLOOR, Topic.WIND, Topic.PART, Topic.LITE, Topic.HORIZONTAL);
  private static final Set<Topic> NEVER =
      EnumSet.of(Topic.REMARK, Topic.FABRICATION, Topic.ON_HAND, Topic.INSTALLATION);

  private final List<Change> changes;
  private final List<String> lines;
  private final List<String> rows;
  private final boolean slopes;

  Causes(Sides sides, List<Change> changes) {
    this.changes = changes;
    this.lines = sides.lines();
    this.rows = sides.rows();
    this.slopes =
        sides.before().facts().keySet().stream().anyMatch(f -> f.property().equals("at right"))
            || sides.after().facts().keySet().stream()
                .anyMatch(f -> f.property().equals("at right"));
  }

  private interface Leaning {
    boolean on(Change change, Subject subject);
  }

  private List<Integer> where(Leaning leaning) {
    List<Integer> found = new ArrayList<>();
    for (int at = 0; at < changes.size(); at++) {
      Change change = changes.get(at);
      if (change.subjects().stream().anyMatch(subject -> leaning.on(change, subject))) {
        found.add(at);
      }
    }
    return found;
  }

  /**
   * The changes that explain what became of a piece.
   *
   * @param piece its causes are not yet known
   */
  List<Integer> of(PieceChange piece) {
    boolean ends = piece.key().lines().size() == 1 && !piece.onlyFixings();
    List<Integer> near =
        where(
            (change, subject) ->
                altersPiece(piece, change, subject) && !(ends && isBetween(subject)));
    if (near.isEmpty()) {
      near = where((change, subject) -> altersPiece(piece, change, subject));
    }
    return near.isEmpty() ? where(Causes::anyOfTheFrame) : near;
  }

  /** A row at which no vertical of full height ends. */
  private boolean isBetween(Subject subject) {
    int at = subject.topic() == Topic.ROW ? rows.indexOf(subject.names().get(0).id()) : -1;
    return at > 0 && at < rows.size() - 1;
  }

  private boolean altersPiece(PieceChange piece, Change change, Subject subject) {
    PieceKey key = piece.key();
    Topic topic = subject.topic();
    boolean upright = key.lines().size() == 1;
    if (EVERYWHERE.contains(topic)) {
      return true;
    }
    if (topic == Topic.WALL) {
      return property(change, subject, "system");
    }
    if (topic == Topic.PART) {
      // a part that came into use did so by another change
      return change.how() == Change.How.CHANGED
          && makes(piece, subject.names().get(0).id(), subject.names().get(1).id());
    }
    if (topic == Topic.LINE) {
      boolean renamed = change.how() == Change.How.RENAMED;
      boolean measured = !upright || slopes || property(change, subject, Fact.THERE);
      return !renamed && measured && near(key.lines(), subject.names().get(0).id());
    }
    if (topic == Topic.FLOOR && !piece.onlyFixings() && !moves(change, subject)) {
      return false;
    }
    if (topic == Topic.FLOOR || topic == Topic.ROW) {
      return change.how() != Change.How.RENAMED
          && (upright || slopes || topic == Topic.FLOOR
              ? !levelHorizontal(key)
              : inRows(key, subject));
    }
    boolean onLine =
        subject.named(Name.Sort.LINE).stream().anyMatch(line -> key.lines().contains(line));
    boolean inRow =
        key.rows().isEmpty()
            || subject.named(Name.Sort.ROW).isEmpty()
            || subject.named(Name.Sort.ROW).stream().anyMatch(row -> key.rows().contains(row));
    return switch (topic) {
      case VERTICAL -> onLine;
      case SPLICE -> onLine && upright;
      case ANCHOR, BRACKET -> onLine && upright && piece.onlyFixings();
      case HORIZONTAL -> onLine && inRow;
      case LITE -> onLine && subject.named(Name.Sort.ROW).equals(key.rows());
      default -> false;
    };
  }

  /** True if a floor is elsewhere, and not only its slab otherwise. */
  private static boolean moves(Change change, Subject subject) {
    return property(change, subject, "at") || property(change, subject, Fact.THERE);
  }

  /** A line that is one of those, or stands next to or between them. */
  private boolean near(List<String> of, String line) {
    int at = lines.indexOf(line);
    int first = lines.indexOf(of.get(0));
    int last = lines.indexOf(of.get(of.size() - 1));
    boolean upright = of.size() == 1;
    return upright ? Math.abs(at - first) <= 1 : first <= at && at <= last;
  }

  /** A horizontal whose length no height alters. */
  private boolean levelHorizontal(PieceKey key) {
    return key.rows().size() == 1 && !slopes;
  }

  /** A row that is one of the piece's, or lies between those of a lite. */
  private boolean inRows(PieceKey key, Subject subject) {
    int at = rows.indexOf(subject.names().get(0).id());
    List<String> own = key.rows();
    return rows.indexOf(own.get(0)) <= at && at <= rows.indexOf(own.get(own.size() - 1));
  }

  private static boolean property(Change change, Subject subject, String property) {
    return change.steps().stream()
        .map(Change.Step::fact)
        .anyMatch(fact -> fact.subject().equals(subject) && fact.property().equals(property));
  }

  private static boolean makes(PieceChange piece, String kind, String part) {
    boolean own =
        piece.before().stream().anyMatch(state -> state.make().part().equals(part))
            || piece.after().stream().anyMatch(state -> state.make().part().equals(part));
    return switch (kind) {
      case "profile", "system" -> true;
      case "glass", "pressure-plate", "face-cap" -> own;
      case "anchor", "clip" -> piece.key().kind() == PieceRef.Kind.VERTICAL && piece.onlyFixings();
      default -> false;
    };
  }

  private static boolean anyOfTheFrame(Change change, Subject subject) {
    return !NEVER.contains(subject.topic()) && change.how() != Change.How.RENAMED;
  }

  /**
   * The changes that explain a finding of that rule on those lines: of all that bear on it, those
   * of what the rule is about.
   */
  List<Integer> ofFinding(String rule, Set<String> onLines) {
    List<Integer> near = onLines(onLines);
    Set<Topic> about = about(rule);
    List<Integer> nearest =
        near.stream()
            .filter(at -> about.contains(changes.get(at).topic()))
            .filter(at -> rule.startsWith("isolation") || !onlyIsolates(changes.get(at)))
            .toList();
    return nearest.isEmpty() ? near : nearest;
  }

  private static Set<Topic> about(String rule) {
    String group = rule.contains("-") ? rule.substring(0, rule.indexOf('-')) : rule;
    return switch (group) {
      case "splice", "stock" ->
          EnumSet.of(
              Topic.SPLICE,
              Topic.ANCHOR,
              Topic.VERTICAL,
              Topic.FLOOR,
              Topic.ROW,
              Topic.REINFORCEMENT,
              Topic.CRITERIA,
              Topic.PART);
      case "isolation" -> EnumSet.of(Topic.ANCHOR, Topic.REINFORCEMENT, Topic.CRITERIA, Topic.PART);
      case "glass" ->
          EnumSet.of(
              Topic.LITE,
              Topic.ROW,
              Topic.LINE,
              Topic.WIND,
              Topic.OPENING,
              Topic.FLOOR,
              Topic.PART);
      default -> EnumSet.allOf(Topic.class);
    };
  }

  private static boolean onlyIsolates(Change change) {
    return change.how() == Change.How.CHANGED
        && change.steps().stream()
            .map(step -> step.fact().property())
            .allMatch(property -> property.equals("isolated by") || property.equals("bedded on"));
  }

  /** The changes that explain the reaction of an anchor on that line. */
  List<Integer> ofReaction(String line) {
    List<Integer> near = onLines(Set.of(line));
    List<Integer> loads = near.stream().filter(at -> !onlyIsolates(changes.get(at))).toList();
    return loads.isEmpty() ? near : loads;
  }

  /** The changes that bear on those lines. */
  List<Integer> onLines(Set<String> of) {
    Set<String> wide = new HashSet<>(of);
    for (String line : of) {
      int at = lines.indexOf(line);
      if (at > 0) {
        wide.add(lines.get(at - 1));
      }
      if (at >= 0 && at + 1 < lines.size()) {
        wide.add(lines.get(at + 1));
      }
    }
    List<Integer> near = where((change, subject) -> bears(change, subject, of, wide));
    return near.isEmpty() ? where(Causes::anyOfTheFrame) : near;
  }

  private static boolean bears(Change change, Subject subject, Set<String> of, Set<String> wide) {
    Topic topic = subject.topic();
    if (change.how() == Change.How.RENAMED || NEVER.contains(topic)) {
      return false;
    }
    List<String> named = subject.named(Name.Sort.LINE);
    boolean here = named.isEmpty() || named.stream().anyMatch(of::contains);
    return switch (topic) {
      case LINE -> wide.contains(subject.names().get(0).id());
      case WALL -> property(change, subject, "system");
      case CRITERIA -> true;
      default -> EVERYWHERE.contains(topic) || (LOADS.contains(topic) && here) || here;
    };
  }
}
