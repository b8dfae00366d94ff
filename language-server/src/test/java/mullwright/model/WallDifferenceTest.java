package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which lines and bays two walls differ in: six lines 1 to 6, which have the indices 0 to 5. */
class WallDifferenceTest {
  private static final String WALL =
      """
      use "captured.wall"
      wall W {
        system captured-6
        grid {
      //grid
          lines 1..6 spaced 5 @ 5'-0"
          floors L1, L2, Roof spaced 13'-0", 13'-0"
          row sill at 2" above L1
          row rail at 3'-0" above L1, L2
          row head at 4" above Roof
        }
        members {
          vertical 1, 6 as jamb
          vertical 2..5 as mullion
          horizontal all
          splice all at 2'-0" above L2 gap 5/8"
      //members
        }
        anchors {
          clip all at sill
          dead-load all at L2, Roof part angle-6 bolted 2 x hex-half
      //anchors
        }
        lites {
          vision V1 all
      //lites
        }
        installation {
          stick 1..6
      //installation
        }
      }
      """;

  private final ModelMemory memory = new ModelMemory();

  private Wall with(String block, String statement) {
    String text = WALL.replace("//" + block, statement);
    return Walls.withCatalog().with("w.wall", text).read("w.wall", memory).walls().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "members | vertical 3 as mullion-6-heavy                   | {2}    | {}",
        "members | splice 2..3 at 2'-1\" above L2 gap 5/8\"        | {1, 2} | {}",
        "members | splice 4 at 3'-0\" above L1 gap 5/8\"           | {3}    | {}",
        "members | splice 6 at 2'-0\" above L2 gap 3/4\"           | {5}    | {}",
        "members | reinforce 5 with bar-5                          | {4}    | {}",
        "members | horizontal L2.rail as beam-6 bays 2..4          | {}     | {1, 2}",
        "members | bracket 2 at L2 200 lb down at 6\" out    | {1}    | {}",
        "anchors | dead-load 3 at L2 offset 1/4\" right            | {2}    | {}",
        "anchors | clip 1 at head                                  | {0}    | {}",
        "lites   | vision V2 rows L1.rail..L2.rail bays 5..6       | {}     | {4}",
        "lites   | spandrel S1 bays 1..3                           | {}     | {0, 1}",
        "grid    | opening void V1 bays 2..4 from L1 to L1.rail by others clear 1/2\" | {1, 2, 3} | {1, 2}",
        "grid    | // a remark that moves all the rest             | {}     | {}",
        "members | // nothing but a remark                         | {}     | {}"
      })
  void oneStatementMore(String block, String statement, String lines, String bays) {
    WallDifference difference =
        WallDifference.of(with(block, ""), with(block, statement)).orElseThrow();
    assertThat(difference.lines()).hasToString(lines);
    assertThat(difference.bays()).hasToString(bays);
    WallDifference back = WallDifference.of(with(block, statement), with(block, "")).orElseThrow();
    assertThat(back).isEqualTo(difference);
  }

  @Test
  void whatIsSaidOfTheWholeWallIsNoDifferenceOfPlaces() {
    Wall wall = with("members", "");
    Wall other =
        Walls.withCatalog()
            .with("w.wall", WALL.replace("rail at 3'-0\"", "rail at 3'-1\""))
            .read("w.wall", memory)
            .walls()
            .get(0);
    assertThat(WallDifference.of(wall, other)).isEmpty();
    assertThat(WallDifference.of(wall, with("installation", "ladder 2..3"))).isEmpty();
    assertThat(WallDifference.of(wall, wall))
        .isEqualTo(Optional.of(new WallDifference(new BitSet(), new BitSet())));
  }
}
