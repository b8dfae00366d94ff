package mullwright.layout;

import static mullwright.layout.TestParts.ft;
import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import mullwright.model.AnchorUse;
import org.junit.jupiter.api.Test;

/** Equal pieces share a mark, different ones do not. */
class PieceMarksTest {
  private final WallLayout layout = SampleWallTest.wall().layOut();
  private final PieceMarks marks = PieceMarks.of(layout);

  @Test
  void verticalsOfTheSampleWall() {
    // A and G are alike in length but have their horizontals on different sides; B has them at the
    // same heights as C, D, E, F
    assertThat(IntStream.range(0, 12).mapToObj(marks::vertical))
        .containsExactly("V1", "V2", "V3", "V2", "V3", "V2", "V3", "V2", "V3", "V2", "V3", "V4");
  }

  @Test
  void horizontalsOfTheSampleWall() {
    // by row: end bays are longer than the others; sill, intermediate and head differ in profile
    List<String> found =
        IntStream.range(0, layout.horizontals().size()).mapToObj(marks::horizontal).toList();
    assertThat(found.subList(0, 6)).containsExactly("H1", "H2", "H2", "H2", "H2", "H1");
    assertThat(found.subList(6, 12)).containsExactly("H3", "H4", "H4", "H4", "H4", "H3");
    assertThat(found.subList(36, 42)).containsExactly("H5", "H6", "H6", "H6", "H6", "H5");
    assertThat(found).containsOnly("H1", "H2", "H3", "H4", "H5", "H6");
  }

  @Test
  void litesOfTheSampleWall() {
    // five sizes of height in two widths; R1 to R2 and R4 to R5 are the same V1
    List<String> found =
        IntStream.range(0, layout.cells().size())
            .mapToObj(cell -> marks.lite(cell).orElseThrow())
            .toList();
    assertThat(found.subList(0, 6)).containsExactly("G1", "G2", "G3", "G4", "G2", "G5");
    assertThat(found.subList(6, 12)).containsExactly("G6", "G7", "G8", "G9", "G7", "G10");
    assertThat(found.subList(30, 36)).isEqualTo(found.subList(0, 6));
  }

  @Test
  void platesAndCapsHaveLettersOfTheirOwn() {
    // caps: two parts of the jamb's, lower and upper length, horizontal: five; plates likewise, but
    // a horizontal one with weeps differs from the head's without, and in the end bays, where the
    // jambs are narrower, they stand elsewhere along it on either hand
    List<String> found =
        IntStream.range(0, layout.covers().size()).mapToObj(marks::cover).distinct().toList();
    assertThat(found)
        .containsExactly(
            "P1", "P2", "P3", "P4", "P5", "P6", "P7", "P8", "C1", "C2", "C3", "C4", "C5");
  }

  @Test
  void anAnchorMoreMakesAnotherPiece() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C D", in(60))
            .floor("L2", ft(13, 0), in(10))
            .row("sill", in(2))
            .row("head", in(200));
    WallLayout plain = wall.layOut();
    assertThat(PieceMarks.of(plain).vertical(1)).isEqualTo(PieceMarks.of(plain).vertical(2));
    WallLayout anchored =
        wall.anchor(AnchorUse.Kind.WIND_LOAD, "B", wall.at("L2"), "angle").layOut();
    assertThat(PieceMarks.of(anchored).vertical(1))
        .isNotEqualTo(PieceMarks.of(anchored).vertical(2));
  }

  @Test
  void aLiteThatIsNoRectangleSharesItsMarkWithNone() {
    WallLayout sloped =
        TestWalls.of(TestParts.inches())
            .lines("A B C D E", in(60))
            .slope("sill", in(0), in(40), "", "")
            .row("head", in(200))
            .layOut();
    PieceMarks of = PieceMarks.of(sloped);
    assertThat(IntStream.range(0, 4).mapToObj(cell -> of.lite(cell).orElseThrow()))
        .doesNotHaveDuplicates();
    // the sloped sills of the two inner bays are alike
    assertThat(of.horizontal(1)).isEqualTo(of.horizontal(2)).isNotEqualTo(of.horizontal(0));
  }
}
