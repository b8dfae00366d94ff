package mullwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import mullwright.layout.VerticalPiece;
import mullwright.layout.VerticalsOnLine;
import mullwright.layout.WallLayout;
import mullwright.model.Members;
import mullwright.quantity.Length;

/**
 * Finds the reinforcement of the verticals: from its stated lower to its stated upper place, or as
 * far as the vertical goes. A splice ends a bar: nothing may run across it.
 */
public final class ReinforcingBars {
  private ReinforcingBars() {}

  /** Every bar, in the order of the text, then from below. */
  public static List<ReinforcingBar> of(WallLayout layout) {
    if (layout.wall().members().reinforcements().isEmpty()) {
      return List.of();
    }
    VerticalsOnLine lines = new VerticalsOnLine(layout);
    List<ReinforcingBar> bars = new ArrayList<>();
    for (Members.Reinforce reinforce : layout.wall().members().reinforcements()) {
      for (VerticalPiece piece : lines.of(reinforce.line())) {
        Length from =
            reinforce
                .from()
                .map(at -> Length.max(at.elevation(), piece.bottom()))
                .orElse(piece.bottom());
        Length to =
            reinforce.to().map(at -> Length.min(at.elevation(), piece.top())).orElse(piece.top());
        if (from.isShorterThan(to)) {
          bars.add(
              new ReinforcingBar(
                  reinforce.part().value(),
                  piece.index(),
                  from,
                  to,
                  "reinforcement of " + piece.name(),
                  reinforce.origin()));
        }
      }
    }
    return bars;
  }
}
