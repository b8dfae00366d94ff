package mullwright.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import mullwright.analysis.wall.VerticalRun;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.Impossible;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Catalog;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.model.Wall;
import mullwright.syntax.Block;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.TextRange;

/**
 * What a rule about a wall may look at.
 *
 * @param text the text it was read from
 * @param layout where everything is
 * @param analysis what wind, weight, heat and movement do to it; computed when first asked
 * @param told the lines whose pieces are to be told of; what is laid out beyond them only stands
 *     beside them
 */
public record WallFacts(TextFacts text, WallLayout layout, WallAnalysis analysis, LineRange told) {
  private static final Set<StatementKind> SAY_WHAT_IS_THERE =
      EnumSet.of(
          StatementKind.GRID_BLOCK, StatementKind.MEMBERS_BLOCK, StatementKind.ANCHORS_BLOCK);

  private static final Set<StatementKind> SAY_WHAT_FILLS =
      EnumSet.of(StatementKind.GRID_BLOCK, StatementKind.LITES_BLOCK);

  private static final Set<StatementKind> SAY_WHAT_THERE_IS_OF =
      EnumSet.of(StatementKind.GRID_BLOCK, StatementKind.MEMBERS_BLOCK);

  private static final Set<StatementKind> SAY_WHAT_TOUCHES =
      EnumSet.of(StatementKind.MEMBERS_BLOCK, StatementKind.ANCHORS_BLOCK);

  /** A whole wall. */
  public WallFacts(TextFacts text, WallLayout layout, WallAnalysis analysis) {
    this(text, layout, analysis, LineRange.ALL);
  }

  /** The lengths of vertical to be told of, by line, then from below. */
  public List<VerticalPiece> verticals() {
    return told(layout.verticals(), VerticalPiece::line, VerticalPiece::line);
  }

  /** The horizontals to be told of, by row, then from the left. */
  public List<HorizontalPiece> horizontals() {
    return told(layout.horizontals(), HorizontalPiece::leftLine, HorizontalPiece::rightLine);
  }

  /** The runs of vertical to be told of, by line, then from below. */
  List<VerticalRun> runs() {
    return told(analysis.runs(), VerticalRun::line, VerticalRun::line);
  }

  /** The splices to be told of. */
  List<SpliceJoint> splices() {
    return told(layout.splices(), SpliceJoint::line, SpliceJoint::line);
  }

  /** The anchors and clips to be told of. */
  List<PlacedAnchor> anchors() {
    return told(layout.anchors(), anchor -> anchor.use().line(), anchor -> anchor.use().line());
  }

  /** The cells to be told of. */
  List<Cell> cells() {
    return told(layout.cells(), this::leftOf, this::rightOf);
  }

  /** What cannot be, of what is to be told of. */
  List<Impossible> impossible() {
    return told(layout.impossible(), Impossible::leftLine, Impossible::rightLine);
  }

  /** The line at the left of a cell. */
  int leftOf(Cell cell) {
    return wall().grid().bays().get(cell.firstBay()).left();
  }

  /** The line at the right of a cell. */
  int rightOf(Cell cell) {
    return wall().grid().bays().get(cell.lastBay()).right();
  }

  private <T> List<T> told(List<T> pieces, ToIntFunction<T> left, ToIntFunction<T> right) {
    if (told == LineRange.ALL) {
      return pieces;
    }
    List<T> some = new ArrayList<>();
    for (T piece : pieces) {
      if (told.holds(left.applyAsInt(piece), right.applyAsInt(piece))) {
        some.add(piece);
      }
    }
    return some;
  }

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

  /** True if every rule says all it may: no line that one leans on is in doubt. */
  public boolean settled() {
    return waiting().isEmpty() && readWhole() && litesReadWhole();
  }

  /**
   * The groups of rules that say nothing of this wall yet, since a line they lean on cannot be read
   * or names what nothing has; empty if every rule was asked.
   */
  public Set<Group> waiting() {
    Set<Group> waiting = EnumSet.noneOf(Group.class);
    for (Group group : Group.values()) {
      if (!settledFor(group)) {
        waiting.add(group);
      }
    }
    return waiting;
  }

  /**
   * True if the rules of a group may trust what the wall's blocks say: a line that could not be
   * read, or that names a line, floor or row nothing has, would be told of again by its
   * consequences.
   */
  private boolean settledFor(Group group) {
    return switch (group) {
      case SPLICE, ANCHOR, SPAN -> settled(SAY_WHAT_IS_THERE);
      case GLASS, WEATHER -> settled(SAY_WHAT_FILLS);
      case FABRICATION, INSTALLATION -> settled(SAY_WHAT_THERE_IS_OF);
      case ISOLATION -> settled(SAY_WHAT_TOUCHES);
      case TEXT -> true;
    };
  }

  private boolean settled(Set<StatementKind> kinds) {
    return readable(kinds) && !problems(kinds, WallFacts::leavesDoubt);
  }

  /** What stays is not what the drafter meant, and nobody can tell what was. */
  private static boolean leavesDoubt(ModelProblem problem) {
    return problem instanceof ModelProblem.UnknownName
        || problem instanceof ModelProblem.BadValue
        || problem instanceof ModelProblem.Garbled
        || problem instanceof ModelProblem.WrongUnit
        || problem instanceof ModelProblem.UnitMissing
        || problem instanceof ModelProblem.CountMismatch
        || problem instanceof ModelProblem.Missing;
  }

  private boolean readWhole(Set<StatementKind> kinds) {
    return readable(kinds)
        && !problems(
            kinds,
            problem ->
                !(problem instanceof ModelProblem.Shadowed)
                    && !(problem instanceof ModelProblem.PartFilled));
  }

  /** True if these blocks have no mistake of form, nor the wall one that may hide such a block. */
  private boolean readable(Set<StatementKind> kinds) {
    List<TextRange> all = blocks(EnumSet.complementOf(EnumSet.of(StatementKind.UNKNOWN)));
    List<TextRange> blocks = blocks(kinds);
    TextRange whole =
        text.statementAt(wall().origin()).map(Statement::range).orElse(wall().origin().range());
    return text.segment(wall().origin()).stream()
        .flatMap(segment -> segment.problems().stream())
        .map(SyntaxProblem::range)
        .noneMatch(at -> inOne(blocks, at) || inOne(List.of(whole), at) && !inOne(all, at));
  }

  private boolean problems(Set<StatementKind> kinds, Predicate<ModelProblem> counts) {
    Origin wall = wall().origin();
    List<TextRange> blocks = blocks(kinds);
    return text.model().problems().stream()
        .filter(counts)
        .map(ModelProblem::origin)
        .filter(o -> o.file().equals(wall.file()) && o.segment() == wall.segment())
        .anyMatch(origin -> inOne(blocks, origin.range()));
  }

  private List<TextRange> blocks(Set<StatementKind> kinds) {
    return text
        .statementAt(wall().origin())
        .flatMap(Statement::block)
        .map(Block::statements)
        .orElse(List.of())
        .stream()
        .filter(block -> kinds.contains(block.kind()))
        .map(Statement::range)
        .toList();
  }

  private static boolean inOne(List<TextRange> blocks, TextRange range) {
    return blocks.stream().anyMatch(b -> b.start() <= range.start() && range.start() <= b.end());
  }
}
