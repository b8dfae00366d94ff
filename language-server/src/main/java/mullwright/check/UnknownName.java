package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.model.GlassWords;
import mullwright.model.ModelProblem;
import mullwright.model.NearNames;
import mullwright.model.Origin;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/** A name that nothing in reach has: a floor, row, line, part or value that does not exist. */
@AutoService(Rule.class)
public final class UnknownName implements TextRule {
  private static final String ALL = "all";
  private static final Set<String> PLACES = Set.of("line", "floor", "row", "floor or row");

  /** How many other places are told; a mend is for all of them. */
  private static final int MOST = 20;

  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    Map<Named, Set<Origin>> places = places(facts);
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.UnknownName unknown) {
        Optional<Fix> range = MinusForRange.mend(unknown, facts);
        if (range.isPresent()) {
          found
              .at(range.get().edits().get(0).origin())
              .text()
              .what("A minus takes one value from another; these are names of floors or rows.")
              .mend(
                  "For those from the one to the other "
                      + range.get().title().replace("Write", "write")
                      + ".")
              .fix(range.get());
        } else {
          tell(unknown, places.get(Named.by(unknown)), facts, found);
        }
      } else if (problem instanceof ModelProblem.Garbled garbled) {
        found
            .at(garbled.origin())
            .text()
            .what(what(garbled.found(), garbled.lacks()))
            .mend("Write " + garbled.meant() + ".")
            .fix(Fixes.replace(garbled.origin(), garbled.meant()));
      }
    }
  }

  /** A name in a file. */
  private record Named(String name, String file) {
    static Named by(ModelProblem.UnknownName unknown) {
      return new Named(unknown.name(), unknown.origin().file());
    }
  }

  /** Where each name stands that nothing has; all places are told of with the first. */
  private static Map<Named, Set<Origin>> places(TextFacts facts) {
    Map<Named, Set<Origin>> places = new HashMap<>();
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.UnknownName unknown) {
        places
            .computeIfAbsent(Named.by(unknown), name -> new LinkedHashSet<>())
            .add(unknown.origin());
      }
    }
    return places;
  }

  private static void tell(
      ModelProblem.UnknownName unknown, Set<Origin> places, TextFacts facts, Findings found) {
    String name = unknown.name();
    List<Origin> also = places.stream().filter(origin -> !origin.equals(unknown.origin())).toList();
    List<String> near = meant(unknown, facts);
    Findings.Draft draft =
        found
            .at(unknown.origin())
            .text()
            .what("There is no " + unknown.what() + " named " + Words.quoted(name) + ".")
            .mend(
                near.isEmpty()
                    ? Words.didYouMean(name, unknown.candidates(), unknown.what())
                    : "Did you mean " + Words.either(near) + "?");
    also.stream().limit(MOST).forEach(origin -> draft.related(origin, "named here too"));
    near.forEach(text -> draft.fix(Fixes.replace(unknown.origin(), text)));
    if (near.isEmpty() && unknown.candidates().size() == 1) {
      // the only one there is may be meant, whatever was written
      String only = unknown.candidates().get(0);
      draft.fix(Fixes.replace(unknown.origin(), Words.asName(only)));
    }
    if (!also.isEmpty()) {
      near.forEach(text -> draft.fix(everywhere(unknown.origin(), also, text)));
    }
  }

  /** What may stand in the place of the name, as it is written. */
  private static List<String> meant(ModelProblem.UnknownName unknown, TextFacts facts) {
    String name = unknown.name();
    if (PLACES.contains(unknown.what()) && name.length() > 1 && NearNames.isNear(name, ALL)) {
      return List.of(ALL);
    }
    List<String> ends = NearNames.ends(name, unknown.candidates());
    if (PLACES.contains(unknown.what()) && !ends.isEmpty()) {
      return List.of(Words.asName(ends.get(0)) + ".." + Words.asName(ends.get(1)));
    }
    String two = twoNames(name, unknown.candidates());
    return two.isEmpty()
        ? Words.near(name, unknown.candidates()).stream()
            .map(near -> unknown.what().equals(GlassWords.KIND) ? near : Words.asName(near))
            .toList()
        : !PLACES.contains(unknown.what())
            ? List.of(two)
            : isSpace(unknown.origin(), facts)
                ? List.of(two.replace(", ", ".."))
                : List.of(two, two.replace(", ", ".."));
  }

  /** True where the space from one name to another is meant, which no two names are. */
  private static boolean isSpace(Origin origin, TextFacts facts) {
    Optional<Statement> statement = facts.statementAt(origin);
    return statement.filter(it -> it.kind().form() == StatementKind.Form.BAYS).isPresent()
        || statement.stream()
            .flatMap(it -> it.clauses().stream())
            .filter(it -> it.word() == ClauseWord.BAYS || it.word() == ClauseWord.ROWS)
            .anyMatch(it -> it.range().touches(origin.range().start()));
  }

  private static Fix everywhere(Origin first, List<Origin> also, String name) {
    List<Fix.Edit> edits = new ArrayList<>();
    edits.add(new Fix.Edit(first, name));
    also.forEach(origin -> edits.add(new Fix.Edit(origin, name)));
    return new Fix("Write " + name + " in all " + edits.size() + " places", edits);
  }

  /** Two known names of which the comma between is missing; empty if it is not so. */
  private static String twoNames(String name, List<String> known) {
    for (String first : known) {
      String rest = name.startsWith(first) ? name.substring(first.length()) : "";
      if (!rest.isEmpty() && known.contains(rest)) {
        return Words.asName(first) + ", " + Words.asName(rest);
      }
    }
    return "";
  }

  private static String what(String there, String lacks) {
    if (lacks.equals("..")) {
      return Words.quoted(there) + " is one name, and the spaces are those of a range of names.";
    }
    if (lacks.equals(",")) {
      return Words.quoted(there) + " lacks a comma between two names.";
    }
    if (there.startsWith(lacks)) {
      return Words.quoted(there) + " is two words without a blank between.";
    }
    String word = Words.quoted(lacks);
    return Words.quoted(there) + " names " + lacks + ", and the word " + word + " is missing.";
  }
}
