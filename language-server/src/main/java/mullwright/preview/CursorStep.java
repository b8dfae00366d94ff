package mullwright.preview;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import mullwright.layout.PieceRef;

/** Which pieces the statement under the editor's cursor stands for. */
final class CursorStep implements Painter.Step {
  @Override
  public List<Slot> paint(Stage.Now now, Look look) {
    Set<PieceRef> lit =
        Painter.wall(now.scene(), now, look)
            .flatMap(wall -> now.cursor().map(cursor -> new Lit(wall).under(cursor)))
            .orElse(Set.of());
    return List.of(
        Slot.of("lit", lit.stream().map(Pieces::id).sorted().collect(Collectors.joining(" "))));
  }

  @Override
  public String what() {
    return "what the cursor lights";
  }
}
