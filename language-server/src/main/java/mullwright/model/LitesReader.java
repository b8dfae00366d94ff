package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Selection;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/** Reads the {@code lites} block: which glass fills which cell. */
final class LitesReader {
  private final GridNames names;
  private final Cells cells;
  private final SystemParts parts;
  private final Collector collector;

  LitesReader(GridNames names, Cells cells, SystemParts parts, Collector collector) {
    this.names = names;
    this.cells = cells;
    this.parts = parts;
    this.collector = collector;
  }

  /** By bay, then from below. */
  List<LiteUse> read(WallText wall) {
    Narrower narrower = new Narrower("lite", this::where, collector);
    for (Said said : wall.all(StatementKind.VISION, StatementKind.SPANDREL)) {
      claim(said).ifPresent(narrower::add);
    }
    narrower.solve();
    List<LiteUse> said = new ArrayList<>();
    int[] which = new int[cells.count()];
    int[] ofGroup = new int[narrower.groups()];
    Arrays.fill(ofGroup, -1);
    for (int cell = 0; cell < which.length; cell++) {
      int group = narrower.group(cell);
      if (group > 0 && ofGroup[group] < 0) {
        ofGroup[group] = said.size();
        said.add(lite(narrower.at(cell)));
      }
      which[cell] = ofGroup[group];
    }
    narrower.reportShadowed();
    return Repeated.of(said, which, cells.places(), LitesReader::at);
  }

  /** What statements say of a lite, wherever it is. */
  private static LiteUse lite(Narrower.Resolved resolved) {
    return new LiteUse(
        -1,
        -1,
        -1,
        resolved.said().statement().kind() == StatementKind.VISION,
        resolved.get(Facet.GLASS).orElseThrow(),
        resolved.get(Facet.OPERABLE).isPresent(),
        resolved.get(Facet.MARK).map(Given::value),
        resolved.origin());
  }

  private static LiteUse at(LiteUse said, int bay, int below, int above) {
    return new LiteUse(
        bay,
        below,
        above,
        said.vision(),
        said.glass(),
        said.operable(),
        said.mark(),
        said.origin());
  }

  private String where(int key) {
    Cells.Cell cell = cells.get(key);
    return names.bays().name(cell.bay())
        + ", "
        + names.row(cell.below()).name()
        + " to "
        + names.row(cell.above()).name();
  }

  private Optional<Claim> claim(Said said) {
    Optional<Word> glass = said.argument(Argument.Name.class).map(Argument.Name::word);
    if (glass.isEmpty()) {
      return Optional.empty();
    }
    if (clauseWordMissing(said)) {
      return Optional.empty();
    }
    parts.find(said, glass.get(), PartKind.GLASS);
    SelectionReader reader = new SelectionReader(said, collector);
    Optional<BitSet> bays =
        said.clause(ClauseWord.BAYS, Clause.Selecting.class)
            .map(Clause.Selecting::selection)
            .or(() -> said.argument(Argument.Select.class).map(Argument.Select::selection))
            .map(selection -> reader.bays(selection, names.lines(), names.bays()).set());
    Optional<Clause.Selecting> rows = said.clause(ClauseWord.ROWS, Clause.Selecting.class);
    BitSet partly = new BitSet();
    BitSet reach = reach(bays, rows, reader, partly);
    for (int cell = partly.nextSetBit(0); cell >= 0; cell = partly.nextSetBit(cell + 1)) {
      collector.problem(partFilled(said, cell));
    }
    boolean somewhere = bays.isEmpty() || !bays.get().isEmpty();
    if (reach.isEmpty() && somewhere && cells.count() > 0 && !said.broken()) {
      if (rows.isEmpty() || !reader.spaces(rows.get().selection(), names.rows()).isEmpty()) {
        collector.misplaced(
            '"' + said.words() + "\" fills nothing",
            "name bays and rows between which there is a lite",
            said.origin());
      }
    }
    Claim claim = new Claim(said, said.statement().keyword().text(), reach);
    claim.set(Facet.GLASS, glass.get().text(), glass.get().range());
    said.statement()
        .clause(ClauseWord.OPERABLE)
        .ifPresent(clause -> claim.set(Facet.OPERABLE, true, clause.range()));
    said.clause(ClauseWord.MARK, Clause.Named.class)
        .ifPresent(clause -> claim.set(Facet.MARK, clause.name().text(), clause.range()));
    return Optional.of(claim);
  }

  /**
   * Tells of names of rows right after the glass: without a clause word those are lines, and the
   * word {@code rows} is missing or runs into the first of them.
   */
  private boolean clauseWordMissing(Said said) {
    Selection selection =
        said.argument(Argument.Select.class).map(Argument.Select::selection).orElse(null);
    boolean named = selection != null && !selection.items().isEmpty();
    if (!named || said.statement().clause(ClauseWord.ROWS).isPresent()) {
      return false;
    }
    String rows = ClauseWord.ROWS.spelling();
    String first = selection.items().get(0).first().text();
    boolean known = names.lines().has(first);
    boolean glued = first.startsWith(rows) && names.rows().has(first.substring(rows.length()));
    if (known || !glued && !names.rows().has(first)) {
      return false;
    }
    String text = said.spot().text(selection.range());
    String meant = rows + " " + (glued ? text.substring(rows.length()) : text);
    collector.problem(
        new ModelProblem.Garbled(text, rows, meant, said.spot().at(selection.range())));
    return true;
  }

  private ModelProblem partFilled(Said said, int cell) {
    return new ModelProblem.PartFilled(said.words(), where(cell), said.origin());
  }

  /**
   * @param partly takes the cells the rows reach into and do not fill
   */
  private BitSet reach(
      Optional<BitSet> bays,
      Optional<Clause.Selecting> rows,
      SelectionReader reader,
      BitSet partly) {
    BitSet reach = new BitSet();
    List<int[]> spaces = null;
    List<int[]> except = List.of();
    if (rows.isPresent()
        && !(rows.get().selection().all() && rows.get().selection().except().isEmpty())) {
      spaces = reader.spaces(rows.get().selection(), names.rows());
      except = reader.exceptedSpaces(rows.get().selection(), names.rows());
    }
    int before = -1;
    for (int bay = 0; bay < names.bays().count(); bay++) {
      if (bays.isPresent() && !bays.get().get(bay)) {
        continue;
      }
      if (spaces == null) {
        reach.set(cells.firstOf(bay), cells.firstOf(bay + 1));
      } else if (before >= 0 && cells.alike(before, bay)) {
        repeat(before, bay, reach);
        repeat(before, bay, partly);
      } else {
        for (int[] space : spaces) {
          between(bay, space, reach, true);
          partly(bay, space, partly);
        }
        for (int[] space : except) {
          between(bay, space, reach, false);
        }
      }
      before = bay;
    }
    return reach;
  }

  /** Takes in of a bay the cells that were taken in of a bay like it. */
  private void repeat(int like, int bay, BitSet taken) {
    int first = cells.firstOf(like);
    int end = cells.firstOf(like + 1);
    int on = cells.firstOf(bay) - first;
    Bits.moved(taken, first, end, on, taken);
  }

  /** The cells of a bay that reach over the end of a space of rows. */
  private void partly(int bay, int[] space, BitSet partly) {
    long bottom = edge(space[0], bay);
    long top = edge(space[1], bay);
    partly(bay, cells.from(bay, bottom) - 1, bottom, top, partly);
    partly(bay, cells.from(bay, top) - 1, bottom, top, partly);
  }

  /** The cell that begins under an end of the space, if there is one and it is only part filled. */
  private void partly(int bay, int at, long bottom, long top, BitSet partly) {
    if (at >= cells.firstOf(bay)) {
      Cells.Cell cell = cells.get(at);
      boolean touched = cell.bottom() < top && bottom < cell.top();
      boolean whole = bottom <= cell.bottom() && cell.top() <= top;
      if (touched && !whole && !cells.opened(bay, cell)) {
        partly.set(at);
      }
    }
  }

  /** The height of a row in a bay: of its stretch there, where it steps. */
  private long edge(int row, int bay) {
    return names.order().middle(names.order().inBay(row, bay), bay).ticks();
  }

  /** The cells of a bay from one row to another, at the heights they have there. */
  private void between(int bay, int[] space, BitSet reach, boolean in) {
    long bottom = edge(space[0], bay);
    long top = edge(space[1], bay);
    int end = cells.firstOf(bay + 1);
    for (int cell = cells.from(bay, bottom); cell < end && cells.get(cell).top() <= top; cell++) {
      reach.set(cell, in);
    }
  }
}
