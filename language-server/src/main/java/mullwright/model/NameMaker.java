package mullwright.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Expression;
import mullwright.syntax.Selection;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/** Makes the names of a statement that defines many: {@code lines A..J … skip I, O}. */
final class NameMaker {
  private static final int COUNT_DIGITS = 9;

  private final Said said;
  private final Collector collector;

  NameMaker(Said said, Collector collector) {
    this.said = said;
    this.collector = collector;
  }

  /**
   * A name that is given.
   *
   * @param definition where it stands: itself, or the range that makes it
   * @param outright true if the text spells it
   */
  record Made(String name, Origin definition, boolean outright) {}

  /** The names in order, or empty if they cannot be made (which is reported). */
  Optional<List<Made>> names(Selection selection) {
    if (selection.all()) {
      Origin origin = said.spot().at(selection.range());
      collector.misplaced("\"all\" gives no names", "spell the names here, as A..G", origin);
      return Optional.empty();
    }
    Set<String> skip = skipped();
    List<Made> made = new ArrayList<>();
    for (Selection.Item item : dotted(selection.items())) {
      if (!make(item, skip, made)) {
        return Optional.empty();
      }
    }
    int every =
        selection
            .every()
            .flatMap(n -> said.values(collector).count(n, "every", Limits.NAMES))
            .orElse(1);
    Set<String> except = new HashSet<>();
    List<Made> excepted = new ArrayList<>();
    for (Selection.Item item : selection.except()) {
      make(item, Set.of(), excepted);
    }
    excepted.forEach(name -> except.add(name.name()));
    List<Made> kept = new ArrayList<>();
    for (int i = 0; i < made.size(); i += every) {
      if (!except.contains(made.get(i).name())) {
        kept.add(made.get(i));
      }
    }
    return Optional.of(kept);
  }

  /**
   * The items with the one name among them that is evidently meant as a range read as one: {@code
   * 1-21 spaced 20 @ 5'-0"} has a space between each two of so many names, which is told.
   */
  private List<Selection.Item> dotted(List<Selection.Item> items) {
    long names = 0;
    int dashed = -1;
    for (int i = 0; i < items.size(); i++) {
      Selection.Item item = items.get(i);
      Optional<Long> count =
          item.isRange()
              ? NamePattern.count(item.first().text(), item.last().text())
              : ends(item.first())
                  .flatMap(e -> NamePattern.count(e.first().text(), e.last().text()));
      if (!item.isRange() && count.isPresent()) {
        dashed = dashed < 0 ? i : items.size();
      }
      names += count.orElse(1L);
    }
    if (dashed < 0 || dashed == items.size() || names - 1 != spaces()) {
      return items;
    }
    Selection.Item meant = ends(items.get(dashed).first()).orElseThrow();
    String text = items.get(dashed).first().text();
    String range = meant.first().text() + ".." + meant.last().text();
    collector.problem(
        new ModelProblem.Garbled(text, "..", range, said.spot().at(items.get(dashed).range())));
    List<Selection.Item> read = new ArrayList<>(items);
    read.set(dashed, meant);
    return read;
  }

  /** What stands on both sides of the one dash of a name. */
  private static Optional<Selection.Item> ends(Word name) {
    int dash = name.text().indexOf('-');
    if (name.quoted() || dash < 1 || dash != name.text().lastIndexOf('-')) {
      return Optional.empty();
    }
    TextRange all = name.range();
    Word first =
        new Word(
            name.text().substring(0, dash), false, new TextRange(all.start(), all.start() + dash));
    Word last =
        new Word(
            name.text().substring(dash + 1),
            false,
            new TextRange(all.start() + dash + 1, all.end()));
    return last.text().isEmpty() ? Optional.empty() : Optional.of(new Selection.Item(first, last));
  }

  // no pattern: every start reads names
  private static boolean isCount(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= COUNT_DIGITS;
  }

  /** How many spaces the statement says there are between its names; -1 if it says none. */
  private long spaces() {
    Optional<Clause.Spaced> spaced = said.clause(ClauseWord.SPACED, Clause.Spaced.class);
    if (spaced.isEmpty()) {
      return -1;
    }
    long spaces = 0;
    for (Clause.Spaced.Step step : spaced.get().steps()) {
      String count = step.count().map(Expression.Literal::number).orElse("1");
      spaces += isCount(count) ? Long.parseLong(count) : 0;
    }
    return spaces;
  }

  /** The range and a name after it, if the two stand without a comma between; else empty. */
  private static String twoNames(String first, String last) {
    for (int cut = last.length() - 1; cut > 0; cut--) {
      boolean name = Character.isLetter(last.charAt(cut));
      if (name && NamePattern.count(first, last.substring(0, cut)).isPresent()) {
        return first + ".." + last.substring(0, cut) + ", " + last.substring(cut);
      }
    }
    return "";
  }

  private boolean make(Selection.Item item, Set<String> skip, List<Made> made) {
    Spot spot = said.spot();
    if (!item.isRange()) {
      made.add(new Made(item.first().text(), spot.at(item.first()), true));
      return true;
    }
    String first = item.first().text();
    String last = item.last().text();
    Optional<Long> count = NamePattern.count(first, last);
    Origin range = spot.at(item.range());
    String offered = count.isEmpty() ? twoNames(first, last) : "";
    if (!offered.isEmpty()) {
      collector.problem(new ModelProblem.Garbled(spot.text(item.range()), ",", offered, range));
      return false;
    }
    if (count.isEmpty()) {
      collector.misplaced(
          '"' + spot.text(item.range()) + "\" makes no names",
          "the ends of a range are alike and count on, as A..G, 1..19 or L1..L24",
          range);
      return false;
    }
    if (count.get() + made.size() > Limits.NAMES) {
      collector.problem(
          new ModelProblem.TooMany("names", Limits.NAMES, count.get() + made.size(), range));
      return false;
    }
    for (String name : NamePattern.names(first, last).orElseThrow()) {
      if (!skips(name, skip)) {
        Word word = name.equals(first) ? item.first() : item.last();
        boolean outright = name.equals(word.text());
        made.add(new Made(name, outright ? spot.at(word) : range, outright));
      }
    }
    return true;
  }

  private Set<String> skipped() {
    Set<String> skip = new HashSet<>();
    said.clause(ClauseWord.SKIP, Clause.Selecting.class)
        .ifPresent(
            clause -> {
              for (Selection.Item item : clause.selection().items()) {
                if (item.isRange()) {
                  NamePattern.count(item.first().text(), item.last().text())
                      .filter(count -> count <= Limits.NAMES)
                      .flatMap(count -> NamePattern.names(item.first().text(), item.last().text()))
                      .ifPresent(skip::addAll);
                } else {
                  skip.add(item.first().text());
                }
              }
            });
    return skip;
  }

  /** A letter that is skipped is skipped in names of several letters too. */
  private static boolean skips(String name, Set<String> skip) {
    if (skip.isEmpty()) {
      return false;
    }
    if (skip.contains(name)) {
      return true;
    }
    return name.chars().allMatch(Character::isLetter)
        && name.chars().anyMatch(letter -> skip.contains(String.valueOf((char) letter)));
  }
}
