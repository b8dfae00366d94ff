package mullwright.analysis.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.layout.PieceRef;
import mullwright.model.Part;
import org.junit.jupiter.api.Test;

/** What is not checked is said, with the fact that is missing. */
class NotCheckedTest {
  private static WallText standing(String temperature) {
    return new WallText(
        """
        criteria {
          wind service
          wind field 30 psf in, 30 psf out
          %s
        }
        grid {
          lines A..C spaced 2 @ 60
          floor L1 at 0
          floor L2 at 144
          floor L3 at 288
          row sill at 0
          row rail at 72
          row head at 288
        }
        members {
          vertical A, C as mullion-split
          vertical B from rail to head as mullion
          horizontal all
          splice A, B at 2'-0" above L2 gap 3/4"
        }
        anchors {
          clip all at sill, head
          dead-load A, C at L2 part angle
          dead-load A, B at L3 part angle
          wind-load B at L2 part slot
        }
        lites {
          vision G all
        }
        """
            .formatted(temperature));
  }

  private static List<String> ofSplice(WallText wall, int splice) {
    return NotChecked.of(wall.analysis(), new PieceRef(PieceRef.Kind.SPLICE, splice));
  }

  @Test
  void theMovementAtASpliceOfALengthThatStandsOnAHorizontal() {
    WallText wall = standing("metal temperature -10 F to 150 F, set at 60 F");
    // both lengths of A hang from anchors, B's lower one stands on the rail
    assertThat(ofSplice(wall, 0)).isEmpty();
    assertThat(ofSplice(wall, 1))
        .containsExactly(
            "movement at a splice, since "
                + wall.lengths("B").get(0).name()
                + " has no dead-load anchor to grow from");
  }

  @Test
  void theMovementAtASpliceWithoutTemperatures() {
    assertThat(ofSplice(standing(""), 0))
        .containsExactly(
            "movement at a splice, since the project gives no temperature of the metal");
  }

  @Test
  void onlyTheFactThatIsMissingIsNamed() {
    WallText wall = standing("");
    // mullion states neither Iy nor J, mullion-split both
    assertThat(
            NotChecked.of(
                wall.analysis(),
                new PieceRef(PieceRef.Kind.VERTICAL, wall.lengths("B").get(0).index())))
        .containsExactly("buckling sideways, since mullion does not state Iy and J");
    assertThat(
            NotChecked.of(
                wall.analysis(),
                new PieceRef(PieceRef.Kind.VERTICAL, wall.lengths("A").get(0).index())))
        .isEmpty();
    // the rail states Iy, and no Sy
    HorizontalSpan rail = wall.horizontal("horizontal rail, bays A-C");
    assertThat(
            NotChecked.of(
                wall.analysis(), new PieceRef(PieceRef.Kind.HORIZONTAL, rail.piece().index())))
        .contains("stress by weight, since rail does not state Sy")
        // two facts at once where one check needs both
        .contains("stress, since rail does not state Sx and its alloy");
  }

  /** The rule and the calculations ask one place; what each check needs is common practice. */
  @Test
  void whatAProfileDoesNotStateIsToldByItsWords() {
    WallText wall = standing("");
    Part.Profile mullion = wall.lengths("B").get(0).profile();
    Part.Profile split = wall.lengths("A").get(0).profile();
    Part.Profile rail = wall.horizontal("horizontal rail, bays A-C").piece().profile();
    assertThat(Unstated.ofBending(mullion, false)).isEmpty();
    assertThat(Unstated.ofBending(mullion, true)).containsExactly("Iy");
    assertThat(Unstated.ofBending(split, false)).containsExactly("mass");
    assertThat(Unstated.ofBending(rail, true)).containsExactly("Sx", "its alloy");
    assertThat(Unstated.ofBuckling(mullion)).containsExactly("Iy", "J");
    assertThat(Unstated.ofBuckling(split)).isEmpty();
    assertThat(Unstated.ofStressByWeight(rail)).containsExactly("Sy");
  }
}
