package mullwright.preview;

import java.util.List;

/** The list of walls to choose from, and where clicks lead. */
final class WallsStep implements Painter.Step {
  private final Opener opener;

  WallsStep(Opener opener) {
    this.opener = opener;
  }

  @Override
  public List<Slot> paint(Stage.Now now, Look look) {
    Slot walls = new Slot("walls");
    walls.put(
        "follow",
        "<option value=\"\">" + (opener.able() ? "Follow the editor" : "First wall") + "</option>");
    for (SceneWall wall : now.scene().walls()) {
      walls.put(
          wall.id(),
          "<option value=\""
              + Markup.escaped(wall.id())
              + "\">"
              + Markup.escaped(wall.name() + " · " + wall.file().shown())
              + "</option>");
    }
    String title =
        Painter.wall(now.scene(), now, look)
            .map(wall -> wall.name() + " · " + wall.file().shown())
            .orElse("No wall yet");
    return List.of(walls, Slot.of("title", Markup.escaped(title)));
  }

  @Override
  public String what() {
    return "the list of walls";
  }
}
