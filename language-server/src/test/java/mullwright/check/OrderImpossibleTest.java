package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import mullwright.installation.WorkGraph;
import mullwright.installation.WorkOrder;
import org.junit.jupiter.api.Test;

/** What the rule passes over at once has no circle when its graph is gone through. */
class OrderImpossibleTest {
  private static final String PATH = "order-impossible/trips.wall";

  @Test
  void whatIsPassedOverHasNoCircle() {
    Map<String, String> texts = Fixture.texts();
    String text = texts.get(PATH);
    texts.keySet().retainAll(List.of(PATH, "fixture.wall"));
    Random chance = new Random(1);
    int tripped = 0;
    for (int number = 0; number < 120; number++) {
      texts.put(PATH, varied(text, chance));
      CheckedText checked = new CheckedText(PATH, texts, new Rules(List.of(new OrderImpossible())));
      WallFacts wall = checked.walls().get(0);
      boolean circle = !WorkOrder.circle(WorkGraph.standing(wall.layout())).isEmpty();
      assertThat(!checked.findings().isEmpty()).as("wall %s", number).isEqualTo(circle);
      boolean ofAll = !WorkOrder.circle(WorkGraph.of(wall.layout())).isEmpty();
      assertThat(ofAll).as("wall %s, with anchors, squaring and glass", number).isEqualTo(circle);
      tripped += circle ? 1 : 0;
    }
    assertThat(tripped).isBetween(10, 110);
  }

  /** Another order of work, another block, and at times a horizontal that runs past a vertical. */
  private static String varied(String text, Random chance) {
    String[] orders = {
      "ladder A..D",
      "stick A..D",
      "stick D..A",
      "ladder D..A",
      "stick A..B\n    stick D..B",
      "ladder A..B\n    stick B..D",
      "stick A..B\n    ladder B..D",
      "stick C..D\n    stick A..C"
    };
    String varied = text.replace("ladder A..D", orders[chance.nextInt(orders.length)]);
    if (chance.nextBoolean()) {
      varied = varied.replace("entry end", "");
    }
    if (chance.nextInt(3) == 0) {
      String bays = chance.nextBoolean() ? "A..C" : "B..D";
      varied = varied.replace("horizontal all", "horizontal all\n    horizontal low bays " + bays);
    }
    return varied;
  }
}
