package mullwright.drawing.detail;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import mullwright.drawing.ExampleWalls;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JointsTest {
  @TempDir private Path folder;

  @Test
  void openingsAlikeButForTheirNamesAreOneDetail() throws Exception {
    Files.copy(Path.of("../examples/catalog/captured.wall"), folder.resolve("captured.wall"));
    String louvres =
        IntStream.range(1, 9)
            .mapToObj(
                i -> "opening louvre LV-%d bays %d..%d rows low..high\n".formatted(i, i, i + 1))
            .collect(Collectors.joining());
    Files.writeString(
        folder.resolve("a.wall"),
        """
        use "captured.wall"

        wall W {
          system captured-6
          grid {
            lines 1..10 spaced 9 @ 5'-0"
            floor L1 at 0"
            row sill at 2" above L1
            row low at 3'-0" above L1
            row high at 8'-0" above L1
            row head at 12'-0" above L1
            LOUVRES
          }
          members {
            vertical all as mullion
            horizontal all
          }
          lites {
            vision V1 all
          }
        }
        """
            .replace("LOUVRES", louvres));
    List<Joint> open =
        Joints.of(ExampleWalls.in(folder, "a.wall", UnitSystem.US).layout()).stream()
            .filter(joint -> joint.upright() && joint.more().kind() == Joint.Side.Kind.OPENING)
            .toList();
    assertThat(open).hasSize(1);
    assertThat(open.get(0).places()).hasSize(8);
    assertThat(open.get(0).more().name()).isEqualTo("LV-1 and 7 more");
  }
}
