package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;

/** A quantity of the wrong kind, or a number without the unit it needs. */
@AutoService(Rule.class)
public final class WrongUnit implements TextRule {
  private static final String BARE_LENGTH =
      "Write its unit; for bare lengths one line such as units inches says it for the whole file.";

  /** What a unit may be written behind: behind a name or a sum it would be that of a part of it. */
  private static final Pattern NUMBER = Pattern.compile("-?[0-9][0-9 ./]*");

  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    Set<String> misspelt = misspelt(facts);
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.WrongUnit wrong) {
        found
            .at(wrong.origin())
            .text()
            .what(
                "The "
                    + wrong.what()
                    + " must be "
                    + quantity(wrong.expected())
                    + ", not "
                    + quantity(wrong.found())
                    + ".")
            .mend(mend(wrong.expected()));
      } else if (problem instanceof ModelProblem.UnitMissing bare) {
        boolean length = bare.expected().equals(Kind.LENGTH.words());
        if (length && misspelt.contains(bare.origin().file())) {
          continue;
        }
        Findings.Draft draft =
            found
                .at(bare.origin())
                .text()
                .what("The " + bare.what() + " " + Words.quoted(bare.number()) + " has no unit.")
                .mend(length ? BARE_LENGTH : mend(bare.expected()));
        facts
            .textAt(bare.origin())
            .filter(bare.number()::equals)
            .filter(number -> NUMBER.matcher(number).matches())
            .ifPresent(
                number ->
                    likely(bare, facts)
                        .forEach(unit -> draft.fix(Fixes.replace(bare.origin(), number + unit))));
      }
    }
  }

  /** The files that say what a bare number is in a word that is none: it may be any. */
  private static Set<String> misspelt(TextFacts facts) {
    Set<String> files = new HashSet<>();
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.UnknownName unknown && unknown.what().equals("unit")) {
        files.add(unknown.origin().file());
      }
    }
    return files;
  }

  /** Units of that kind that stand elsewhere in the same statement; all, if none does. */
  private static List<String> likely(ModelProblem.UnitMissing bare, TextFacts facts) {
    List<String> all = units(bare.expected());
    String said =
        facts
            .statementAt(bare.origin())
            .map(it -> new Origin(bare.origin().file(), bare.origin().segment(), it.range()))
            .flatMap(facts::textAt)
            .orElse("");
    List<String> written =
        all.stream()
            .filter(
                unit ->
                    Pattern.compile("[0-9]\\s*" + Pattern.quote(unit.strip()) + "(?![\\w/])")
                        .matcher(said)
                        .find())
            .toList();
    return written.isEmpty() ? all : written;
  }

  /** What may be written behind a number of that kind. */
  private static List<String> units(String expected) {
    if (expected.equals(Kind.LENGTH.words())) {
      return List.of("\"", " mm");
    }
    return kind(expected).map(Unit::of).orElse(List.of()).stream()
        .map(unit -> " " + typed(unit))
        .toList();
  }

  /** As it is typed: the language has no sign for degrees. */
  private static String typed(Unit unit) {
    String symbol = unit.symbol();
    return symbol.startsWith("°") ? symbol.substring(1) : symbol;
  }

  private static String quantity(String words) {
    if (words.equals(Kind.RATIO.words())) {
      return "a plain number";
    }
    // a product the trade has no name for is told by its base units, as in m2 kg
    return kind(words).isPresent() ? Words.article(words) : words;
  }

  private static String mend(String expected) {
    if (expected.equals(Kind.RATIO.words())) {
      return "Write a plain number, without a unit.";
    }
    return kind(expected)
        .map(Unit::of)
        .map(units -> Words.either(units.stream().map(WrongUnit::typed).toList()))
        .map(symbols -> "Write it with a unit of " + expected + ": " + symbols + ".")
        .orElse("Give both sides the same kind of quantity.");
  }

  private static Optional<Kind> kind(String words) {
    return Arrays.stream(Kind.values()).filter(kind -> kind.words().equals(words)).findFirst();
  }
}
