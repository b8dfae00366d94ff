package mullwright.layout;

import static mullwright.layout.TestParts.ft;
import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import mullwright.model.AnchorUse;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/**
 * A wall of two floors and six bays, every cut length and every glass size worked by hand.
 *
 * <p>Lines A..G at 60". Rows: sill 2", R1 36", R2 114", R3 138" (1'-6" below L2 at 156"), R4 192",
 * R5 270", head 316" (4" above Roof at 312"). Faces: mullion 2 1/2", jamb 2 1/4", sill 2", head 3",
 * intermediate 2 1/2". Splices B..F at 180", gap 5/8".
 */
class SampleWallTest {
  static TestWalls wall() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C D E F G", in(60))
            .floor("L1", in(0), in(6))
            .floor("L2", ft(13, 0), in(10))
            .floor("Roof", ft(26, 0), in(10))
            .row("sill", in(2))
            .row("R1", in(36))
            .row("R2", in(114))
            .row("R3", in(138))
            .row("R4", in(192))
            .row("R5", in(270))
            .row("head", in(316))
            .lite("sill", "S1")
            .lite("R2", "S1")
            .lite("R3", "S1")
            .lite("R5", "S1");
    return wall.splice("B C D E F", wall.at("L2", in(24)), in(5, 8))
        .anchor(AnchorUse.Kind.CLIP, "A B C D E F G", wall.at("sill"), null)
        .anchor(AnchorUse.Kind.DEAD_LOAD, "B C D E F", wall.at("L2"), "angle")
        .anchor(AnchorUse.Kind.DEAD_LOAD, "B C D E F", wall.at("Roof"), "angle")
        .anchor(AnchorUse.Kind.DEAD_LOAD, "A G", wall.at("L2"), "angle")
        .anchor(AnchorUse.Kind.WIND_LOAD, "A G", wall.at("Roof"), "angle");
  }

  private final WallLayout layout = wall().layOut();

  private static <T> Map<String, Long> counted(List<T> items, Function<T, String> words) {
    return items.stream()
        .collect(Collectors.groupingBy(words, TreeMap::new, Collectors.counting()));
  }

  private static String say(Length length) {
    return LengthPrinter.exact(length, UnitSystem.US);
  }

  @Test
  void everyVertical() {
    // jambs: from 2" - 1" = 1" to 316" + 1 1/2" = 317 1/2": 316 1/2" = 26'-4 1/2"
    // lower lengths: from 1" to 180" - 5/16" = 179 11/16": 178 11/16" = 14'-10 11/16"
    // upper lengths: from 180 5/16" to 317 1/2": 137 3/16" = 11'-5 3/16"
    assertThat(counted(layout.verticals(), v -> v.profile().name() + " " + say(v.length())))
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "jamb 26'-4 1/2\"", 2L, "mullion 14'-10 11/16\"", 5L, "mullion 11'-5 3/16\"", 5L));
    assertThat(layout.verticals().stream().map(VerticalPiece::name).toList())
        .startsWith(
            "vertical A",
            "vertical B, lower length, L1 to L2",
            "vertical B, upper length, L2 to Roof")
        .endsWith("vertical G");
  }

  @Test
  void everyHorizontal() {
    // end bays: 60" - 1 1/8" - 1 1/4" - 2 x 1/32" = 57 9/16" = 4'-9 9/16", two bays of seven rows
    // others:   60" - 1 1/4" - 1 1/4" - 2 x 1/32" = 57 7/16" = 4'-9 7/16", four bays of seven rows
    assertThat(counted(layout.horizontals(), h -> h.profile().name() + " " + say(h.length())))
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "sill 4'-9 9/16\"", 2L,
                "sill 4'-9 7/16\"", 4L,
                "head 4'-9 9/16\"", 2L,
                "head 4'-9 7/16\"", 4L,
                "intermediate 4'-9 9/16\"", 10L,
                "intermediate 4'-9 7/16\"", 20L));
    assertThat(layout.horizontals().get(0).name()).isEqualTo("horizontal sill, bay A-B");
    // left end in bay A-B: 1 1/8" + 1/32"
    assertThat(layout.horizontals().get(0).left()).isEqualTo(in(37, 32));
  }

  @Test
  void everyGlassSize() {
    // widths: end bays 60" - 1 1/8" - 1 1/4" + 2 x 1/2" = 58 5/8"; others 58 1/2"
    // heights: sill to R1  34" - 1" - 1 1/4"       = 31 3/4", glass 32 3/4"
    //          R1 to R2    78" - 2 1/2"            = 75 1/2", glass 76 1/2"
    //          R2 to R3    24" - 2 1/2"            = 21 1/2", glass 22 1/2"
    //          R3 to R4    54" - 2 1/2"            = 51 1/2", glass 52 1/2"
    //          R4 to R5    78" - 2 1/2"            = 75 1/2", glass 76 1/2"
    //          R5 to head  46" - 1 1/4" - 1 1/2"   = 43 1/4", glass 44 1/4"
    assertThat(
            counted(
                layout.cells(),
                c ->
                    c.glass().orElseThrow().name()
                        + " "
                        + c.glassWidth().inches()
                        + " x "
                        + c.glassHeight().inches()))
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "S1 469/8 x 131/4", 2L,
                "S1 117/2 x 131/4", 4L,
                "V1 469/8 x 153/2", 4L,
                "V1 117/2 x 153/2", 8L,
                "S1 469/8 x 45/2", 2L,
                "S1 117/2 x 45/2", 4L,
                "S1 469/8 x 105/2", 2L,
                "S1 117/2 x 105/2", 4L,
                "S1 469/8 x 177/4", 2L,
                "S1 117/2 x 177/4", 4L));
    assertThat(layout.cells().get(7).name()).isEqualTo("lite in bay B-C, R1 to R2");
    assertThat(layout.cells().get(7).daylightWidth()).isEqualTo(in(115, 2));
    assertThat(layout.cells().get(7).daylightHeight()).isEqualTo(in(151, 2));
  }

  @Test
  void everyPlateAndCap() {
    // jamb, stock 24' = 288": joint at R5, 270", the highest row at or below 1" + 288" + 1/16":
    //   1" to 269 15/16" = 268 15/16" = 22'-4 15/16"; 270 1/16" to 317 1/2" = 47 7/16" = 3'-11
    // 7/16"
    // mullions as their lengths: 14'-10 11/16", 11'-5 3/16"
    // horizontal plate: 60" - 2 1/2" - 2 x 1/8" = 57 1/4"; cap: 60" - 2 1/2" - 2 x 1/32" = 57 7/16"
    assertThat(counted(layout.covers(), c -> c.what() + " " + say(c.length())))
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "PRESSURE_PLATE 22'-4 15/16\"", 2L,
                "PRESSURE_PLATE 3'-11 7/16\"", 2L,
                "PRESSURE_PLATE 14'-10 11/16\"", 5L,
                "PRESSURE_PLATE 11'-5 3/16\"", 5L,
                "PRESSURE_PLATE 4'-9 1/4\"", 42L,
                "FACE_CAP 22'-4 15/16\"", 2L,
                "FACE_CAP 3'-11 7/16\"", 2L,
                "FACE_CAP 14'-10 11/16\"", 5L,
                "FACE_CAP 11'-5 3/16\"", 5L,
                "FACE_CAP 4'-9 7/16\"", 42L));
    assertThat(layout.covers().get(0).name())
        .isEqualTo("pressure plate of vertical A, part 1 of 2");
  }

  @Test
  void everyAnchor() {
    // bolt line 8" below top of slab: L2 156" - 8" = 148", in the lower length; Roof 304", upper
    assertThat(
            layout.anchors().stream()
                .filter(a -> a.use().line() == 1)
                .map(
                    a ->
                        a.name()
                            + " "
                            + a.y().inches()
                            + " "
                            + layout.verticals().get(a.vertical()).name()))
        .containsExactly(
            "clip of vertical B at sill 2 vertical B, lower length, L1 to L2",
            "dead-load anchor of vertical B at L2 148 vertical B, lower length, L1 to L2",
            "dead-load anchor of vertical B at Roof 304 vertical B, upper length, L2 to Roof");
    assertThat(layout.anchors()).hasSize(7 + 5 + 5 + 2 + 2);
  }

  @Test
  void everySplice() {
    assertThat(layout.splices()).hasSize(5);
    SpliceJoint splice = layout.splices().get(1);
    assertThat(splice.name()).isEqualTo("splice of vertical C above L2");
    assertThat(splice.y()).isEqualTo(in(180));
    assertThat(layout.verticals().get(splice.below()).top()).isEqualTo(in(2875, 16));
    assertThat(layout.verticals().get(splice.above()).bottom()).isEqualTo(in(2885, 16));
    assertThat(layout.verticals().get(splice.below()).spliceAbove()).isEqualTo(1);
    assertThat(layout.verticals().get(splice.above()).spliceBelow()).isEqualTo(1);
  }

  @Test
  void endMembersHaveABayOnOneSide() {
    assertThat(layout.verticals().stream().filter(VerticalPiece::endMember))
        .extracting(VerticalPiece::name)
        .containsExactly("vertical A", "vertical G");
    assertThat(layout.impossible()).isEmpty();
  }
}
