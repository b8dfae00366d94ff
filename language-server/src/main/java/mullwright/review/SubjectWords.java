package mullwright.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/** Says what a change is about, many subjects at once: {@code splices of B..F at L2}. */
final class SubjectWords {
  private final List<String> lines;
  private final List<String> floors;
  private final List<String> rows;

  SubjectWords(Sides sides) {
    lines = sides.lines();
    floors = sides.floors();
    rows = sides.rows();
  }

  /** The subjects, which are all of that topic. */
  String of(Topic topic, List<Subject> subjects) {
    return switch (topic) {
      case LINE, FLOOR, ROW -> elements(topic, subjects);
      case VERTICAL, REINFORCEMENT, CORNER -> topic.word() + plural(subjects) + " " + on(subjects);
      case JOINT -> "joint " + String.join("-", subjects.get(0).named(Name.Sort.LINE));
      case SPLICE -> "splice" + plural(subjects) + " of " + placed(subjects);
      case BRACKET -> "bracket" + plural(subjects) + " of " + placed(subjects);
      case ANCHOR -> "anchor" + plural(subjects) + " of " + placed(subjects);
      case HORIZONTAL, LITE -> inBays(topic, subjects);
      case WALL -> "wall";
      case CRITERIA, FABRICATION -> topic.word();
      case INSTALLATION ->
          "installation of " + String.join("..", subjects.get(0).named(Name.Sort.LINE));
      case WIND -> "wind zone " + names(subjects.get(0));
      case ON_HAND -> topic.word() + " of " + names(subjects.get(0));
      case PART, OPENING, FACE, REMARK -> words(topic, subjects.get(0));
    };
  }

  private static String words(Topic topic, Subject subject) {
    List<Name> names = subject.names();
    return switch (topic) {
      case PART -> names.get(0).id() + " " + names.get(1).id();
      case REMARK -> names.get(0).id() + " “" + names.get(1).id() + "”";
      default -> topic.word() + " " + names(subject);
    };
  }

  private static String names(Subject subject) {
    return String.join(" ", subject.names().stream().map(Name::id).toList());
  }

  private static String plural(List<Subject> subjects) {
    return subjects.size() == 1 ? "" : "s";
  }

  private String elements(Topic topic, List<Subject> subjects) {
    List<String> order = topic == Topic.LINE ? lines : topic == Topic.FLOOR ? floors : rows;
    List<String> ids = subjects.stream().map(subject -> subject.names().get(0).id()).toList();
    if (topic == Topic.ROW && ids.size() > 1) {
      return "rows " + repeated(ids);
    }
    return topic.word() + plural(subjects) + " " + Ranges.of(ids, order);
  }

  /** {@code rail of L2..L24} for one row over many floors. */
  private String repeated(List<String> ids) {
    Map<String, List<String>> floorsOf = new LinkedHashMap<>();
    StringJoiner said = new StringJoiner(", ");
    for (String id : ids) {
      int dot = id.indexOf('.');
      if (dot < 0 || !floors.contains(id.substring(0, dot))) {
        said.add(id);
      } else {
        floorsOf
            .computeIfAbsent(id.substring(dot + 1), any -> new ArrayList<>())
            .add(id.substring(0, dot));
      }
    }
    floorsOf.forEach((word, at) -> said.add(word + " of " + Ranges.of(at, floors)));
    return said.toString();
  }

  private String on(List<Subject> subjects) {
    return Ranges.of(
        subjects.stream().map(subject -> subject.named(Name.Sort.LINE).get(0)).toList(), lines);
  }

  /** Lines by place, places with the same lines together. */
  private String placed(List<Subject> subjects) {
    Map<String, List<String>> linesAt = new LinkedHashMap<>();
    for (Subject subject : subjects) {
      linesAt
          .computeIfAbsent(subject.names().get(1).id(), any -> new ArrayList<>())
          .add(subject.names().get(0).id());
    }
    Map<String, List<String>> placesOf = new LinkedHashMap<>();
    linesAt.forEach(
        (place, on) ->
            placesOf.computeIfAbsent(Ranges.of(on, lines), any -> new ArrayList<>()).add(place));
    StringJoiner said = new StringJoiner(" and ");
    placesOf.forEach((on, places) -> said.add(on + " at " + places(places)));
    return said.toString();
  }

  private String places(List<String> places) {
    boolean all = floors.containsAll(places);
    return all ? Ranges.of(places, floors) : Ranges.of(places, rows);
  }

  private String inBays(Topic topic, List<Subject> subjects) {
    Map<String, List<List<String>>> baysOf = new LinkedHashMap<>();
    for (Subject subject : subjects) {
      String row = String.join(" to ", subject.named(Name.Sort.ROW));
      baysOf.computeIfAbsent(row, any -> new ArrayList<>()).add(subject.named(Name.Sort.LINE));
    }
    Map<String, List<String>> rowsOf = new LinkedHashMap<>();
    baysOf.forEach(
        (row, bays) ->
            rowsOf.computeIfAbsent(Ranges.bays(bays, lines), any -> new ArrayList<>()).add(row));
    StringJoiner said = new StringJoiner(" and ");
    rowsOf.forEach(
        (bays, in) ->
            said.add(
                (topic == Topic.LITE ? String.join(", ", in) : Ranges.of(in, rows)) + ", " + bays));
    return topic.word() + plural(subjects) + " " + said;
  }
}
