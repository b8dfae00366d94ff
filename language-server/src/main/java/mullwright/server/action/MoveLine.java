package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.hover.Numbers;
import mullwright.workspace.Supposition;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Moves a grid line to the left or to the right, where one is named, and leaves its neighbours
 * where they are.
 *
 * <p>What the reader is asked to agree to says what follows: how many pieces are cut to another
 * length, how many lites are to be ordered in another size.
 */
@AutoService(ActionSource.class)
public final class MoveLine implements ActionSource {
  private static final Length INCH = Length.ofInches(1);
  private static final Length CENTIMETRE = Length.ofMillimetres(10);

  @Override
  public String kind() {
    return CodeActionKind.RefactorRewrite;
  }

  @Override
  public List<Action> offers(Selected selected) {
    Optional<Symbol> named = line(selected);
    if (named.isEmpty()) {
      return List.of();
    }
    Document home =
        selected.document().view().document(named.get().definition().file()).orElse(null);
    Optional<Wall> wall = wall(named.get(), selected);
    if (home == null || wall.isEmpty()) {
      return List.of();
    }
    Optional<Grid.Line> line =
        wall.get().grid().lines().stream()
            .filter(it -> it.origin().equals(named.get().definition()))
            .filter(it -> it.name().equals(named.get().name()))
            .findFirst();
    if (line.isEmpty()) {
      return List.of();
    }
    UnitSystem units = Numbers.of(home.file()).first();
    Length step = units == UnitSystem.US ? INCH : CENTIMETRE;
    List<Action> offers = new ArrayList<>();
    for (Length by : List.of(step, step.negated())) {
      String title =
          "Move line "
              + line.get().name()
              + " "
              + LengthPrinter.exact(step, units)
              + (by.signum() > 0 ? " to the right" : " to the left");
      LinePlace.Outcome moved =
          LinePlace.of(home, wall.get().grid(), line.get()).movedBy(by, units);
      offers.add(
          moved.refusal().isEmpty()
              ? Action.of(title, () -> edits(title, home, moved, selected))
              : Action.refused(title, moved.refusal()));
    }
    return offers;
  }

  /** The one line that is named under the cursor. */
  private static Optional<Symbol> line(Selected selected) {
    List<Symbol> lines =
        selected.cursor().references().stream()
            .map(reference -> reference.symbol())
            .filter(symbol -> symbol.kind() == Symbol.Kind.LINE)
            .distinct()
            .toList();
    return lines.size() == 1 ? Optional.of(lines.get(0)) : Optional.empty();
  }

  private static Optional<Wall> wall(Symbol line, Selected selected) {
    return selected
        .document()
        .snapshot()
        .reading(selected.document().path())
        .flatMap(
            reading ->
                reading.model().walls().stream()
                    .filter(wall -> wall.name().equals(line.scope()))
                    .findFirst());
  }

  private static Edits edits(
      String title, Document home, LinePlace.Outcome moved, Selected selected) {
    StringBuilder text = new StringBuilder(home.file().text());
    text.replace(moved.start(), moved.end(), moved.text());
    Supposition.Changed changed =
        new Supposition(home.snapshot(), Map.of(home.path(), text.toString()))
            .changed(home.path(), selected.desk().cancel());
    Edits edits = new Edits(home.view());
    edits.annotate(
        title,
        changed.lengths()
            + " pieces are cut to another length, "
            + changed.glass()
            + " lites are to be ordered in another size.",
        true);
    edits.replace(home, home.range(moved.start(), moved.end()), moved.text());
    return edits;
  }
}
