package mullwright.layout;

import static mullwright.layout.TestParts.ft;
import static mullwright.layout.TestParts.in;
import static mullwright.layout.TestParts.mm;
import static mullwright.layout.TestParts.profile;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mullwright.model.Role;
import mullwright.quantity.Length;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/**
 * The table of results of the conventions of measure, row by row, worked by hand in both systems.
 */
class ResultsTableTest {
  /** Two bays of 60", sill at 2", R1 at 36", head at 144"; B spliced at 72", gap 5/8". */
  private static TestWalls inchWall() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .floor("L1", in(0), null)
            .row("sill", in(2))
            .row("R1", in(36))
            .row("head", in(144));
    return wall.splice("B", wall.at(in(72)), in(5, 8));
  }

  /** Two bays of 1500, sill at 100, R1 at 1300, head at 3200; B spliced at 2000, gap 15. */
  private static TestWalls metricWall() {
    TestWalls wall =
        TestWalls.of(TestParts.millimetres())
            .lines("A B C", mm(1500))
            .row("sill", mm(100))
            .row("R1", mm(1300))
            .row("head", mm(3200));
    return wall.splice("B", wall.at(mm(2000)), mm(15));
  }

  private final WallLayout inches = inchWall().layOut();
  private final WallLayout metric = metricWall().layOut();

  private static List<Length> lengths(WallLayout layout) {
    return layout.verticals().stream().map(VerticalPiece::length).toList();
  }

  @Test
  void verticalLength() {
    // bottom 2" - 1" = 1", top 144" + 1 1/2" = 145 1/2": A and C 144 1/2"
    // B: 1" to 72" - 5/16": 70 11/16"; 72 5/16" to 145 1/2": 73 3/16"
    assertThat(lengths(inches)).containsExactly(in(289, 2), in(1131, 16), in(1171, 16), in(289, 2));
    // bottom 100 - 25 = 75, top 3200 + 35 = 3235: A and C 3160
    // B: 75 to 1992.5: 1917.5; 2007.5 to 3235: 1227.5
    assertThat(lengths(metric)).containsExactly(mm(3160), mm(19175, 10), mm(12275, 10), mm(3160));
  }

  @Test
  void horizontalLength() {
    // 60" - 1 1/8" (half jamb) - 1 1/4" (half mullion) - 2 x 1/32" = 57 9/16"
    assertThat(inches.horizontals()).extracting(HorizontalPiece::length).containsOnly(in(921, 16));
    // 1500 - 27.5 - 30 - 2 x 1 = 1440.5
    assertThat(metric.horizontals())
        .extracting(HorizontalPiece::length)
        .containsOnly(mm(14405, 10));
  }

  @Test
  void daylightOpening() {
    // 60" - 1 1/8" - 1 1/4" = 57 5/8" by 34" - 1" - 1 1/4" = 31 3/4" and 108" - 1 1/4" - 1 1/2" =
    // 105 1/4"
    assertThat(inches.cells()).extracting(Cell::daylightWidth).containsOnly(in(461, 8));
    assertThat(inches.cells())
        .extracting(Cell::daylightHeight)
        .containsExactly(in(127, 4), in(421, 4), in(127, 4), in(421, 4));
    // 1500 - 27.5 - 30 = 1442.5 by 1200 - 25 - 30 = 1145 and 1900 - 30 - 35 = 1835
    assertThat(metric.cells()).extracting(Cell::daylightWidth).containsOnly(mm(14425, 10));
    assertThat(metric.cells())
        .extracting(Cell::daylightHeight)
        .containsExactly(mm(1145), mm(1835), mm(1145), mm(1835));
  }

  @Test
  void daylightOpeningGoesBySightlineAndMetalByFace() {
    TestParts parts =
        TestParts.inches()
            .with("mullion", profile(Role.MULLION, in(5, 2)).sightline(in(3)))
            .with("intermediate", profile(Role.INTERMEDIATE, in(5, 2)).sightline(in(11, 4)));
    WallLayout layout =
        TestWalls.of(parts)
            .lines("A B C D", in(60))
            .row("sill", in(0))
            .row("R1", in(40))
            .row("head", in(80))
            .layOut();
    Cell cell = layout.cells().get(2);
    assertThat(cell.name()).isEqualTo("lite in bay B-C, sill to R1");
    // 60" - 1 1/2" - 1 1/2" = 57" by 40" - 1" - 1 3/8" = 37 5/8"
    assertThat(cell.daylightWidth()).isEqualTo(in(57));
    assertThat(cell.daylightHeight()).isEqualTo(in(301, 8));
    // the horizontal still 60" - 1 1/4" - 1 1/4" - 1/16"
    assertThat(layout.horizontals().get(1).length()).isEqualTo(in(919, 16));
  }

  @Test
  void glassSize() {
    // daylight opening + 1/2" at each edge: 58 5/8" by 32 3/4" and 106 1/4"
    assertThat(inches.cells()).extracting(Cell::glassWidth).containsOnly(in(469, 8));
    assertThat(inches.cells())
        .extracting(Cell::glassHeight)
        .containsExactly(in(131, 4), in(425, 4), in(131, 4), in(425, 4));
    // + 12 at each edge: 1466.5 by 1169 and 1859
    assertThat(metric.cells()).extracting(Cell::glassWidth).containsOnly(mm(14665, 10));
    assertThat(metric.cells())
        .extracting(Cell::glassHeight)
        .containsExactly(mm(1169), mm(1859), mm(1169), mm(1859));
  }

  @Test
  void eachEdgeOfTheGlassHasItsOwnBite() {
    TestParts parts =
        TestParts.inches()
            .with("jamb", profile(Role.JAMB, in(2)).bite(in(3, 8), in(3, 8)))
            .with("mullion", profile(Role.MULLION, in(2)).bite(in(1, 4), in(5, 8)))
            .with("sill", profile(Role.SILL, in(2)).bite(in(1, 16), in(7, 16)))
            .with("head", profile(Role.HEAD, in(2)).bite(in(9, 16), in(1, 16)));
    WallLayout layout =
        TestWalls.of(parts).lines("A B C", in(60)).row("sill", in(0)).row("head", in(80)).layOut();
    Cell left = layout.cells().get(0);
    // 58" + 3/8" of the jamb + 1/4" on the mullion's left; 78" + 7/16" above the sill + 9/16" below
    // the head
    assertThat(left.glassWidth()).isEqualTo(in(469, 8));
    assertThat(left.glassHeight()).isEqualTo(in(79));
    // right of the mullion 5/8"
    assertThat(layout.cells().get(1).glassWidth()).isEqualTo(in(59));
    assertThat(layout.cells().get(1).biteLeft()).isEqualTo(in(5, 8));
  }

  @Test
  void glassMayOverrideTheBite() {
    TestParts parts =
        TestParts.inches().glass("V1", Optional.of(in(3, 8)), "ply", mm(6), "ply", mm(6));
    Cell cell =
        TestWalls.of(parts)
            .lines("A B C D", in(60))
            .row("sill", in(0))
            .row("head", in(80))
            .layOut()
            .cells()
            .get(1);
    assertThat(cell.glassWidth()).isEqualTo(in(233, 4)); // 57 1/2" + 2 x 3/8"
    assertThat(cell.glassHeight()).isEqualTo(in(313, 4)); // 80" - 1" - 1 1/2" + 2 x 3/8"
  }

  @Test
  void glassSizeOfTheHandbook() {
    // handbook CHECK 7.1 (closed form, recomputed): c/c 60, face 2.5 -> DLO 57.5, glass 58.5;
    // c/c 72 -> DLO 69.5, glass 70.5
    TestParts parts =
        TestParts.inches()
            .with("sill", profile(Role.SILL, in(5, 2)))
            .with("head", profile(Role.HEAD, in(5, 2)));
    Cell cell =
        TestWalls.of(parts)
            .lines("A B C D", in(60))
            .row("sill", in(0))
            .row("head", in(72))
            .layOut()
            .cells()
            .get(1);
    assertThat(cell.daylightWidth()).isEqualTo(in(115, 2));
    assertThat(cell.glassWidth()).isEqualTo(in(117, 2));
    assertThat(cell.daylightHeight()).isEqualTo(in(139, 2));
    assertThat(cell.glassHeight()).isEqualTo(in(141, 2));
    GlassSizes sizes = GlassSizes.of(cell, UnitSystem.US);
    // handbook CHECK 7.3 (closed form, recomputed): 6+6 mm, 2.6608 m2, 79.82 kg = 175.98 lb,
    // 30 kg/m2
    assertThat(sizes.area().toSi()).isCloseTo(2.6608, within(0.00005));
    assertThat(sizes.mass().orElseThrow().toSi()).isCloseTo(79.82, within(0.005));
    assertThat(sizes.mass().orElseThrow().toSi() / 0.45359237).isCloseTo(175.98, within(0.005));
    assertThat(GlassSizes.massPerArea(cell.glass().orElseThrow()).orElseThrow().toSi())
        .isEqualTo(30.0);
  }

  @Test
  void glassOrderSize() {
    // 58 19/32" and 58 5/8" - 1/128" round down to 58 9/16"; 58 9/16" stays
    assertThat(GlassSizes.order(in(1875, 32), UnitSystem.US)).isEqualTo(in(937, 16));
    assertThat(GlassSizes.order(in(7503, 128), UnitSystem.US)).isEqualTo(in(937, 16));
    assertThat(GlassSizes.order(in(937, 16), UnitSystem.US)).isEqualTo(in(937, 16));
    // 1466.5 by 1169 is ordered 1466 by 1169, area and mass of the exact size:
    // 1.4665 x 1.169 = 1.7143385 m2, x 12 mm x 2500 = 51.430155 kg
    GlassSizes sizes = GlassSizes.of(metric.cells().get(0), UnitSystem.SI);
    assertThat(sizes.orderWidth()).isEqualTo(mm(1466));
    assertThat(sizes.orderHeight()).isEqualTo(mm(1169));
    assertThat(sizes.area().toSi()).isCloseTo(1.7143385, within(1e-12));
    assertThat(sizes.mass().orElseThrow().toSi()).isCloseTo(51.430155, within(1e-12));
  }

  @Test
  void glassMassCountsGivenInterlayers() {
    // 6 + 6 mm x 2500 + 1.52 mm x 1100 = 31.672 kg/m2
    // (EN 572-1 for glass, from memory; 1.1 kg/m2 per mm of interlayer, common practice)
    TestParts parts =
        TestParts.inches()
            .glass("V1", Optional.empty(), "ply", mm(6), "interlayer", mm(152, 100), "ply", mm(6));
    Cell cell =
        TestWalls.of(parts)
            .lines("A B", in(60))
            .row("sill", in(0))
            .row("head", in(72))
            .layOut()
            .cells()
            .get(0);
    assertThat(GlassSizes.massPerArea(cell.glass().orElseThrow()).orElseThrow().toSi())
        .isCloseTo(31.672, within(1e-12));
  }

  private static List<Length> covers(WallLayout layout, CoverPiece.What what, boolean vertical) {
    return layout.covers().stream()
        .filter(cover -> cover.what() == what && cover.vertical() == vertical)
        .map(CoverPiece::length)
        .toList();
  }

  @Test
  void pressurePlates() {
    // as the verticals
    assertThat(covers(inches, CoverPiece.What.PRESSURE_PLATE, true)).isEqualTo(lengths(inches));
    assertThat(covers(metric, CoverPiece.What.PRESSURE_PLATE, true)).isEqualTo(lengths(metric));
    // 60" - 2 1/2" - 2 x 1/8" = 57 1/4"; 1500 - 60 - 2 x 3.175 = 1433.65
    assertThat(covers(inches, CoverPiece.What.PRESSURE_PLATE, false)).containsOnly(in(229, 4));
    assertThat(covers(metric, CoverPiece.What.PRESSURE_PLATE, false)).containsOnly(mm(143365, 100));
  }

  @Test
  void faceCaps() {
    assertThat(covers(inches, CoverPiece.What.FACE_CAP, true)).isEqualTo(lengths(inches));
    assertThat(covers(metric, CoverPiece.What.FACE_CAP, true)).isEqualTo(lengths(metric));
    // 60" - 2 1/2" - 2 x 1/32" = 57 7/16"; 1500 - 60 - 2 x 0.79375 = 1438.4125
    assertThat(covers(inches, CoverPiece.What.FACE_CAP, false)).containsOnly(in(919, 16));
    assertThat(covers(metric, CoverPiece.What.FACE_CAP, false)).containsOnly(mm(14384125, 10000));
  }

  @Test
  void plateStockJoints() {
    // stock 10' = 120": the highest row with the joint within 1" + 120" + 1/16" is R3 at 110"
    // pieces: 1" to 109 15/16" = 108 15/16"; from 110 1/16" next within 230 1/8": R5 at 200":
    // 110 1/16" to 199 15/16" = 89 7/8"; 200 1/16" to 261 1/2" = 61 7/16"
    TestParts parts =
        TestParts.inches()
            .plate("plate", in(5, 2), ft(8, 0), ft(10, 0))
            .cap("cap", in(5, 2), ft(24, 0));
    WallLayout layout =
        TestWalls.of(parts)
            .lines("A B", in(60))
            .row("sill", in(2))
            .row("R1", in(30))
            .row("R2", in(70))
            .row("R3", in(110))
            .row("R4", in(150))
            .row("R5", in(200))
            .row("R6", in(235))
            .row("head", in(260))
            .layOut();
    assertThat(covers(layout, CoverPiece.What.PRESSURE_PLATE, true).subList(0, 3))
        .containsExactly(in(1743, 16), in(719, 8), in(983, 16));
    assertThat(layout.covers().get(1).name())
        .isEqualTo("pressure plate of vertical A, part 2 of 3");
    // 260 1/2" of cap fit 24'
    assertThat(covers(layout, CoverPiece.What.FACE_CAP, true)).containsOnly(in(521, 2));
  }

  @Test
  void aRowExactlyAtTheStockLengthStillTakesTheJoint() {
    // bottom 1", stock 120": joint centre at 121 1/16" leaves a piece of exactly 120"
    TestParts parts = TestParts.inches().plate("plate", in(5, 2), ft(10, 0));
    WallLayout layout =
        TestWalls.of(parts)
            .lines("A B", in(60))
            .row("sill", in(2))
            .row("R1", in(30))
            .row("R2", in(1937, 16))
            .row("head", in(200))
            .layOut();
    assertThat(covers(layout, CoverPiece.What.PRESSURE_PLATE, true).get(0)).isEqualTo(in(120));
  }
}
