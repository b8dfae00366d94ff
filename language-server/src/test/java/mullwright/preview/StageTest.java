package mullwright.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The newest state is all there is. */
class StageTest {
  private final Stage stage = new Stage();
  private final Scenes scenes = new Scenes();

  @Test
  void whoeverWasAwayFindsTheNewestState() throws InterruptedException {
    long seen = stage.now().serial();
    for (int at = 1; at <= 100; at++) {
      stage.edited(scenes.edited("wall East {", "wall East-" + at + " {"));
    }
    Stage.Now now = stage.await(seen, 1);
    assertThat(now.scene().walls().get(0).name()).isEqualTo("East-100");
    assertThat(stage.await(now.serial(), 1)).isSameAs(now);
  }

  @Test
  void aPageFollowsTheWallThatWasTouched() {
    Scene two = scenes.edited("wall East {", "wall West like East {\n}\nwall East {");
    stage.edited(two);
    assertThat(stage.now().followed()).isEqualTo("east#West");
    int inEast =
        two.files().get(0).snapshot().file(Scenes.EAST).orElseThrow().text().indexOf("lines A..G");
    stage.cursor(new Stage.CursorAt("east", Scenes.EAST, inEast));
    assertThat(stage.now().followed()).isEqualTo("east#East");
    stage.edited(two);
    assertThat(stage.now().followed()).as("an edit of the same file").isEqualTo("east#East");
  }

  @Test
  void aWallThatIsGoneIsNotFollowed() {
    stage.edited(scenes.laidOut());
    assertThat(stage.now().followed()).isEqualTo("east#East");
    stage.edited(scenes.edited("wall East {", "wall Other {"));
    assertThat(stage.now().followed()).isEqualTo("east#Other");
    stage.edited(new Scene(List.of()));
    assertThat(stage.now().scene().walls()).isEmpty();
  }
}
