package mullwright.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.layout.WallLayout;
import mullwright.model.Catalog;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.model.Wall;
import mullwright.syntax.Block;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;

/**
 * What a rule about a wall may look at.
 *
 * @param text the text it was read from
 * @param layout where everything is
 * @param analysis what wind, weight, heat and movement do to it; computed when first asked
 */
public record WallFacts(TextFacts text, WallLayout layout, WallAnalysis analysis) {
  private static final Set<StatementKind> SAY_WHAT_IS_THERE =
      EnumSet.of(
          StatementKind.GRID_BLOCK, StatementKind.MEMBERS_BLOCK, StatementKind.ANCHORS_BLOCK);

  private static final Set<StatementKind> SAY_WHAT_FILLS =
      EnumSet.of(StatementKind.GRID_BLOCK, StatementKind.LITES_BLOCK);

  /** The wall as the text says it. */
  public Wall wall() {
    return layout.wall();
  }

  /** The parts it may name. */
  public Catalog catalog() {
    return layout.catalog();
  }

  /**
   * True if the wall's grid, members and anchors were read without a problem.
   *
   * <p>A rule that finds something missing asks this first: what seems to be missing may stand in
   * the line that could not be read, and one mistake is told of once.
   */
  public boolean readWhole() {
    return readWhole(SAY_WHAT_IS_THERE);
  }

  /** True if the wall's grid and lites were read without a problem. */
  public boolean litesReadWhole() {
    return readWhole(SAY_WHAT_FILLS);
  }

  private boolean readWhole(Set<StatementKind> kinds) {
    Origin wall = wall().origin();
    List<TextRange> blocks =
        text
            .statementAt(wall)
            .flatMap(Statement::block)
            .map(Block::statements)
            .orElse(List.of())
            .stream()
            .filter(block -> kinds.contains(block.kind()))
            .map(Statement::range)
            .toList();
    boolean syntax =
        text.segment(wall).stream()
            .flatMap(segment -> segment.problems().stream())
            .anyMatch(problem -> inOne(blocks, problem.range()));
    boolean names =
        text.model().problems().stream()
            .filter(problem -> !(problem instanceof ModelProblem.Shadowed))
            .filter(problem -> !(problem instanceof ModelProblem.PartFilled))
            .map(ModelProblem::origin)
            .filter(o -> o.file().equals(wall.file()) && o.segment() == wall.segment())
            .anyMatch(origin -> inOne(blocks, origin.range()));
    return !syntax && !names;
  }

  private static boolean inOne(List<TextRange> blocks, TextRange range) {
    return blocks.stream().anyMatch(b -> b.start() <= range.start() && range.start() <= b.end());
  }
}
