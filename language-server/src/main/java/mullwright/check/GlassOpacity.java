package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.layout.Cell;
import mullwright.model.LiteUse;
import mullwright.model.Part;
import mullwright.syntax.StatementKind;

/**
 * A vision lite of glass that cannot be seen through, or a spandrel of glass that can.
 *
 * <p>The statement says what the lite is for, the catalog what the glass is; one of the two is
 * wrong. Common practice.
 */
@AutoService(Rule.class)
public final class GlassOpacity implements LiteRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(Cell it, WallFacts facts, Findings found) {
    if (it.use().isEmpty() || it.glass().isEmpty() || it.opening().isPresent()) {
      return;
    }
    LiteUse use = it.use().get();
    Part.Glass glass = it.glass().get();
    if (use.vision() != glass.opacified().value()) {
      return;
    }
    String other = (use.vision() ? StatementKind.SPANDREL : StatementKind.VISION).spelling();
    String seen =
        glass.opacified().assumed() ? "is not said to be opacified" : "is opacified in the catalog";
    Findings.Draft draft =
        found
            .at(use.origin())
            .piece(it.name())
            .what(
                (use.vision() ? "It is vision, and " : "It is spandrel, and ")
                    + glass.name()
                    + " "
                    + seen
                    + ".")
            .mend("Make it " + other + ", or take another glass.")
            .related(
                glass.opacified().assumed() ? glass.origin() : glass.opacified().origin(),
                "the glass");
    new StatementEdits(facts.text())
        .keyword(use.origin(), other)
        .map(edit -> new Fix("Make it " + other, List.of(edit)))
        .ifPresent(draft::fix);
  }
}
