package mullwright.layout;

import static mullwright.layout.TestParts.ft;
import static mullwright.layout.TestParts.in;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import mullwright.model.AnchorUse;

/** Towers of equal floors: six rows a floor, a splice at every second floor, an anchor at each. */
final class Towers {
  private Towers() {}

  static TestWalls of(int bays, int floors) {
    String lines =
        IntStream.rangeClosed(1, bays + 1).mapToObj(i -> "" + i).collect(Collectors.joining(" "));
    TestWalls wall = TestWalls.of(TestParts.inches()).lines(lines, in(60));
    for (int floor = 0; floor <= floors; floor++) {
      wall.floor("L" + (floor + 1), ft(13L * floor, 0), in(10));
    }
    wall.row("sill", in(2));
    for (int floor = 0; floor < floors; floor++) {
      long base = 156L * floor;
      wall.row("L" + (floor + 1) + ".rail", in(base + 36));
      wall.row("L" + (floor + 1) + ".mid", in(base + 66));
      wall.row("L" + (floor + 1) + ".top", in(base + 114));
      if (floor < floors - 1) {
        wall.row("L" + (floor + 1) + ".low", in(base + 138));
        wall.row("L" + (floor + 1) + ".beam", in(base + 150));
      }
    }
    wall.row("head", in(156L * floors + 4));
    for (int floor = 1; floor < floors; floor += 2) {
      wall.splice(lines, wall.at("L" + (floor + 1), in(24)), in(3, 4));
    }
    for (int floor = 1; floor <= floors; floor++) {
      wall.anchor(AnchorUse.Kind.DEAD_LOAD, lines, wall.at("L" + (floor + 1)), "angle");
    }
    return wall.anchor(AnchorUse.Kind.CLIP, lines, wall.at("sill"), null);
  }
}
