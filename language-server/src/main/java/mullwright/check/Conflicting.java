package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;

/** Two statements of equal or crossing reach that set the same thing differently. */
@AutoService(Rule.class)
public final class Conflicting implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    // two statements that disagree often do so in many places: told once, at the first
    Map<List<Object>, List<ModelProblem.Conflict>> pairs = new LinkedHashMap<>();
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.Conflict conflict) {
        List<Object> pair = List.of(conflict.first(), conflict.origin(), conflict.clause());
        pairs.computeIfAbsent(pair, key -> new ArrayList<>()).add(conflict);
      }
    }
    for (List<ModelProblem.Conflict> places : pairs.values()) {
      ModelProblem.Conflict conflict = places.get(0);
      // shown at both places: neither is more wrong than the other
      tell(conflict, places.size() - 1, conflict.origin(), conflict.first(), found);
      tell(conflict, places.size() - 1, conflict.first(), conflict.origin(), found);
    }
  }

  private static void tell(
      ModelProblem.Conflict conflict, int more, Origin here, Origin there, Findings found) {
    found
        .at(here)
        .text()
        .what(
            "Two statements of equal reach disagree on "
                + (conflict.clause().equals(ModelProblem.Conflict.KIND)
                    ? "what stands there"
                    : Words.quoted(conflict.clause()))
                + " for "
                + conflict.where()
                + (more == 0 ? "" : " and " + more + " more")
                + ": "
                + conflict.one().replaceAll("\\s+", " ")
                + " against "
                + conflict.other().replaceAll("\\s+", " ")
                + ".")
        .mend("Make one of them narrower, so that it wins, or let them agree.")
        .related(there, "the other statement");
  }
}
