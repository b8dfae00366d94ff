package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.UnitSystem;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Moves a grid line one step to the left or to the right, where one is named; by any other length
 * the command {@code mullwright.moveLine} does it.
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
    Optional<LineMove> line = LineMove.at(selected.cursor(), selected.document());
    if (line.isEmpty()) {
      return List.of();
    }
    Length step = line.get().units() == UnitSystem.US ? INCH : CENTIMETRE;
    List<Action> offers = new ArrayList<>();
    for (Length by : List.of(step, step.negated())) {
      String title = line.get().title(by);
      offers.add(
          line.get()
              .refusal(by)
              .map(why -> Action.refused(title, why))
              .orElseGet(
                  () -> Action.of(title, () -> line.get().edits(by, selected.desk().cancel()))));
    }
    return offers;
  }
}
