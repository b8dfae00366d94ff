package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import mullwright.quantity.Length;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A tower of 24 floors and 18 bays in thirty lines; counts worked out by hand. */
class TowerTest {
  private static Seen seen;

  @BeforeAll
  static void read() {
    Walls files = Walls.withCatalog().with("w.wall", Walls.resource("tower.wall"));
    seen = new Seen(files, files.read("w.wall"));
  }

  @Test
  void nothingIsWrong() {
    seen.sound();
  }

  @Test
  void everyFloorHasItsRows() {
    // sill, door-head, curb, louvre-top, head and 22 each of rail and top (L2..L24 without L13)
    assertThat(seen.grid().rows()).hasSize(5 + 44);
    // L9 = 18' + 7 × 13' = 109', its rail 3'-10" above
    Grid.Row exception =
        seen.grid().rows().stream()
            .filter(row -> row.name().equals("L9.rail"))
            .findFirst()
            .orElseThrow();
    assertThat(exception.left().elevation()).isEqualTo(Length.ofInches(109 * 12 + 46));
    assertThat(seen.text(exception.left().origin())).isEqualTo("3'-10\"   above L9");
  }

  @Test
  void horizontalsLieOnEveryRowButInTheDoor() {
    // 48 rows through 18 bays, door-head through 2, and no sill in the door's bay
    assertThat(seen.wall().members().horizontals()).hasSize(48 * 18 + 2 - 1);
  }

  @Test
  void splicesAlternate() {
    // 10 odd lines on 12 even floors, 9 even lines on 10 odd floors: at L13 the louvre takes the
    // verticals between its bays from 600 mm on, and the splice is at 609.6 mm
    assertThat(seen.wall().members().splices()).hasSize(10 * 12 + 9 * 10);
    assertThat(seen.wall().members().splices())
        .filteredOn(splice -> seen.line(splice.line()).equals("2"))
        .extracting(splice -> splice.at().base().orElseThrow())
        .containsExactly("L3", "L5", "L7", "L9", "L11", "L15", "L17", "L19", "L21", "L23");
  }

  @Test
  void anchorsFollowTheSplices() {
    // a clip a line, a dead load under each splice, and 10 wind loads at the roof
    assertThat(seen.wall().anchors()).hasSize(19 + 210 + 10);
    assertThat(seen.anchors())
        .contains("7 L4 dead-load angle-8", "7 L6 dead-load angle-6", "5 L4 dead-load angle-6");
  }

  @Test
  void lites() {
    // 48 rows make 47 cells a bay, less the louvre's; door-head parts one more in two bays, and in
    // the door's bay takes away the one below it
    assertThat(seen.wall().lites()).hasSize(18 * 46 + 1);
    assertThat(seen.wall().lites()).filteredOn(LiteUse::vision).hasSize(22 * 18);
    assertThat(seen.wall().lites())
        .filteredOn(lite -> lite.glass().value().equals("VL"))
        .extracting(lite -> lite.bay() + " " + seen.row(lite.below()))
        .containsExactly("3 L7.rail");
  }
}
