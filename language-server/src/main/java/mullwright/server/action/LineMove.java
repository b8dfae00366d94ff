package mullwright.server.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import mullwright.model.Grid;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.hover.Numbers;
import mullwright.workspace.Cancel;
import mullwright.workspace.Cursor;
import mullwright.workspace.Supposition;

/**
 * A grid line that is to be moved while its neighbours stay where they are.
 *
 * @param home the file that says where the line stands
 * @param wall whose line it is
 */
public record LineMove(Document home, Wall wall, Grid.Line line) {
  /**
   * Of the one line that is named under a cursor in the wall whose text says where it stands; empty
   * if there is none, or more than one.
   */
  public static Optional<LineMove> at(Cursor cursor, Document document) {
    List<Symbol> lines =
        cursor.references().stream()
            .map(reference -> reference.symbol())
            .filter(symbol -> symbol.kind() == Symbol.Kind.LINE)
            .distinct()
            .toList();
    return lines.size() == 1
        ? of(lines.get(0), document)
            .filter(LineMove::isOwn)
            .filter(move -> move.line.origin().file().equals(cursor.path()))
            .filter(move -> move.line.origin().segment() == cursor.segment())
        : Optional.empty();
  }

  private static Optional<LineMove> of(Symbol name, Document document) {
    return walls(document).stream()
        .filter(wall -> wall.name().equals(name.scope()))
        .flatMap(wall -> wall.grid().lines().stream().flatMap(line -> of(wall, line, document)))
        .filter(move -> move.line.origin().equals(name.definition()))
        .filter(move -> move.line.name().equals(name.name()))
        .findFirst();
  }

  /** Of every line of the walls of a document, in their order. */
  public static List<LineMove> all(Document document) {
    List<LineMove> all = new ArrayList<>();
    for (Wall wall : walls(document)) {
      wall.grid().lines().forEach(line -> of(wall, line, document).forEach(all::add));
    }
    return all;
  }

  private static List<Wall> walls(Document document) {
    return document
        .snapshot()
        .reading(document.path())
        .map(reading -> reading.model().walls())
        .orElse(List.of());
  }

  private static Stream<LineMove> of(Wall wall, Grid.Line line, Document document) {
    return document.view().document(line.origin().file()).stream()
        .map(home -> new LineMove(home, wall, line));
  }

  /** The system of units its file is written in. */
  public UnitSystem units() {
    return Numbers.of(home.file()).first();
  }

  /**
   * What is done, as an order.
   *
   * @param by how far; to the left if it is below nothing
   */
  public String title(Length by) {
    return "Move line "
        + line.name()
        + " "
        + LengthPrinter.exact(by.signum() < 0 ? by.negated() : by, units())
        + (by.signum() < 0 ? " to the left" : " to the right");
  }

  /** Why it cannot be moved so, a sentence; empty if it can. */
  public Optional<String> refusal(Length by) {
    return Optional.of(outcome(by).refusal()).filter(why -> !why.isEmpty());
  }

  /** True if the wall's own text says where it stands, and not that of a wall it is like. */
  public boolean isOwn() {
    return line.origin().file().equals(wall.origin().file())
        && line.origin().segment() == wall.origin().segment();
  }

  private LinePlace.Outcome outcome(Length by) {
    if (!isOwn()) {
      // what is to the right of a line is to its left in a wall that is mirrored
      return LinePlace.Outcome.refused(
          "Wall " + wall.name() + " has it from the wall it is like; move it there.");
    }
    return LinePlace.of(home, wall.grid(), line).movedBy(by, Numbers.of(home.file()));
  }

  /**
   * What becomes of the text, annotated with what follows: how many pieces are cut to another
   * length, how many lites are to be ordered in another size. No editor is told to ask for
   * agreement: those that do show the edit unticked, and agreeing to it so moves nothing.
   *
   * @throws IllegalStateException if it cannot be moved so
   */
  public Edits edits(Length by, Cancel cancel) {
    LinePlace.Outcome moved = outcome(by);
    if (!moved.refusal().isEmpty()) {
      throw new IllegalStateException(moved.refusal());
    }
    Edits edits = new Edits(home.view());
    edits.annotate(title(by), follows(moved, cancel));
    edits.replace(home, home.range(moved.start(), moved.end()), moved.text());
    return edits;
  }

  /** What follows from it, in a sentence. */
  public String follows(Length by, Cancel cancel) {
    return follows(outcome(by), cancel);
  }

  private String follows(LinePlace.Outcome moved, Cancel cancel) {
    StringBuilder text = new StringBuilder(home.file().text());
    text.replace(moved.start(), moved.end(), moved.text());
    Supposition.Changed changed =
        new Supposition(home.snapshot(), Map.of(home.path(), text.toString()))
            .changed(home.path(), cancel);
    return changed.lengths()
        + " pieces are cut to another length, "
        + changed.glass()
        + " lites are to be ordered in another size.";
  }
}
