package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.model.PartKind;
import mullwright.syntax.StatementKind;

/** One name given to two things, or found in two catalogs: nobody could tell which is meant. */
@AutoService(Rule.class)
public final class Duplicate implements TextRule {
  /** Statements that give one thing and no other. */
  private static final Set<StatementKind> ALONE =
      EnumSet.of(
          StatementKind.LET,
          StatementKind.UNITS,
          StatementKind.LINE,
          StatementKind.FLOOR,
          StatementKind.OPENING,
          StatementKind.CATALOG_PART);

  /** Things that may stand twice under two names; of the others there is one only. */
  private static final Set<String> RENAMED = renamed();

  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.Duplicate twice) {
        Findings.Draft draft =
            found
                .at(twice.origin())
                .text()
                .what(what(twice))
                .mend(
                    RENAMED.contains(twice.what())
                        ? "Give one of the two another name, or take it out."
                        : "Take one of the two out.")
                .related(twice.first(), "first given here");
        takeOut(twice, facts).ifPresent(draft::fix);
      } else if (problem instanceof ModelProblem.NameFromTwo two) {
        found
            .at(two.origin())
            .text()
            .what(
                "The "
                    + two.what()
                    + " "
                    + Words.quoted(two.name())
                    + " comes from two files, "
                    + two.fileOne()
                    + " and "
                    + two.fileTwo()
                    + ".")
            .mend("Use one of the two files only, or rename the part in one of them.");
      }
    }
  }

  // only where both say the same: of two that differ, one may be misnamed
  private static Optional<Fix> takeOut(ModelProblem.Duplicate twice, TextFacts facts) {
    Optional<String> second = words(twice.origin(), facts);
    return second.isPresent() && second.equals(words(twice.first(), facts))
        ? new StatementEdits(facts)
            .remove(twice.origin())
            .map(edit -> new Fix("Take the second one out", List.of(edit)))
        : Optional.empty();
  }

  private static Optional<String> words(Origin origin, TextFacts facts) {
    return facts
        .statementAt(origin)
        .filter(statement -> ALONE.contains(statement.kind()))
        .flatMap(
            statement ->
                facts.textAt(new Origin(origin.file(), origin.segment(), statement.range())))
        .map(text -> text.replaceAll("\\s+", " "));
  }

  private static String what(ModelProblem.Duplicate twice) {
    return switch (twice.what()) {
      case "units" -> "The units of this file are given already.";
      case "project" -> "This file has a project already.";
      default -> "The " + twice.what() + " " + Words.quoted(twice.name()) + " is given already.";
    };
  }

  private static Set<String> renamed() {
    Set<String> named =
        new HashSet<>(Set.of("name", "wall", "face", "line", "floor", "row", "opening"));
    for (PartKind kind : PartKind.values()) {
      named.add(kind.spelling());
    }
    return Set.copyOf(named);
  }
}
