package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.model.Grid;
import mullwright.model.LiteUse;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.syntax.StatementKind;

/**
 * An opening of the frame that nothing fills, or that a statement fills in part.
 *
 * <p>One piece of glass fills an opening from member to member. Plain geometry.
 */
@AutoService(Rule.class)
public final class GlassMissing implements WallRule, TextRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    boolean readWhole = facts.litesReadWhole();
    MissingGlass missing = new MissingGlass(facts);
    Origin place = null;
    for (Cell it : facts.layout().cells()) {
      if (it.opening().isPresent()) {
        continue;
      }
      if (it.use().isEmpty() && readWhole) {
        place = place == null ? place(facts) : place;
        Findings.Draft draft =
            found
                .at(place)
                .piece(it.name())
                .what("Nothing fills it.")
                .mend("Name a glass for it under lites, as vision V1 or spandrel S1.")
                .related(rowBelow(it, facts).origin(), "the row under it");
        missing.fixes(it).forEach(draft::fix);
      } else if (it.use().isPresent() && it.firstBay() < it.lastBay()) {
        acrossBays(it, facts, found);
      }
    }
  }

  private static Grid.Row rowBelow(Cell it, WallFacts facts) {
    return facts.wall().grid().rows().get(it.below());
  }

  private static Origin place(WallFacts facts) {
    return new StatementEdits(facts.text())
        .lastLite(facts.wall())
        .or(() -> block(facts))
        .orElse(facts.wall().origin());
  }

  // an empty block still says where the lite belongs
  private static Optional<Origin> block(WallFacts facts) {
    Origin wall = facts.wall().origin();
    return facts
        .text()
        .statementAt(wall)
        .flatMap(statement -> statement.block())
        .flatMap(
            block ->
                block.statements().stream()
                    .filter(inside -> inside.kind() == StatementKind.LITES_BLOCK)
                    .findFirst())
        .map(lites -> new Origin(wall.file(), wall.segment(), lites.keyword().range()));
  }

  // where no vertical stands between bays they are one opening, and one statement must fill them
  private static void acrossBays(Cell it, WallFacts facts, Findings found) {
    LiteUse use = it.use().orElseThrow();
    for (int bay = it.firstBay(); bay <= it.lastBay(); bay++) {
      Optional<LiteUse> here = use(it, bay, facts);
      boolean same =
          here.filter(
                  other ->
                      other.glass().value().equals(use.glass().value())
                          && other.vision() == use.vision())
              .isPresent();
      if (!same) {
        Grid.Bay space = facts.wall().grid().bays().get(bay);
        String name = line(space.left(), facts) + ".." + line(space.right(), facts);
        Findings.Draft draft =
            found
                .at(use.origin())
                .piece(it.name())
                .what(
                    "No vertical stands between its bays, and "
                        + here.map(other -> other.glass().value() + " is put into bay ")
                            .orElse("nothing is put into bay ")
                        + name
                        + " of it.")
                .mend("Fill all its bays by one statement, or stand a vertical between them.")
                .related(here.map(LiteUse::origin).orElse(space(bay, facts)), "the other bay");
        if (here.isEmpty()) {
          MissingGlass.whole(it, use, facts).ifPresent(draft::fix);
        }
        return;
      }
    }
  }

  private static Optional<LiteUse> use(Cell it, int bay, WallFacts facts) {
    return facts.wall().lites().stream()
        .filter(lite -> lite.bay() == bay)
        .filter(lite -> lite.below() == it.below() && lite.above() == it.above())
        .findFirst();
  }

  private static Origin space(int bay, WallFacts facts) {
    Grid grid = facts.wall().grid();
    return grid.lines().get(grid.bays().get(bay).left()).origin();
  }

  private static String line(int line, WallFacts facts) {
    return facts.wall().grid().lines().get(line).name();
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.PartFilled part) {
        found
            .at(part.origin())
            .piece("opening in " + part.opening())
            .what(Words.quoted(part.statement()) + " reaches into it and does not fill it.")
            .mend("Name the rows it lies between, or the bays where those rows run.");
      }
    }
  }
}
