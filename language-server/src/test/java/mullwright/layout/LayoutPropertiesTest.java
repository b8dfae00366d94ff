package mullwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.function.ToLongFunction;
import mullwright.model.Catalog;
import mullwright.model.LiteUse;
import mullwright.model.Members;
import mullwright.model.Wall;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** What must hold for any wall, tried on walls made from numbers. */
class LayoutPropertiesTest {
  private static final int WALLS = 800;

  /** A slope is measured to the nearest tick; sums of a few such may differ by a few. */
  private static final long FEW_TICKS = 16;

  @Test
  void noWallThrowsAndNoPieceIsWithoutLength() {
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, false).wall(1).layOut();
      List<Length> sizes = new ArrayList<>();
      layout.verticals().forEach(piece -> sizes.add(piece.length()));
      layout.horizontals().forEach(piece -> sizes.add(piece.length()));
      layout.covers().forEach(piece -> sizes.add(piece.length()));
      for (Cell cell : layout.cells()) {
        sizes.add(cell.daylightWidth());
        sizes.add(cell.daylightHeight());
        sizes.add(cell.glassWidth());
        sizes.add(cell.glassHeight());
      }
      assertThat(sizes.stream().filter(size -> size.signum() <= 0)).as("seed " + seed).isEmpty();
    }
  }

  @Test
  void indicesPointWhereTheySay() {
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, false).wall(1).layOut();
      for (int i = 0; i < layout.verticals().size(); i++) {
        assertThat(layout.verticals().get(i).index()).isEqualTo(i);
      }
      for (int i = 0; i < layout.horizontals().size(); i++) {
        assertThat(layout.horizontals().get(i).index()).isEqualTo(i);
      }
      for (int i = 0; i < layout.cells().size(); i++) {
        assertThat(layout.cells().get(i).index()).isEqualTo(i);
      }
      for (SpliceJoint joint : layout.splices()) {
        assertThat(layout.splices().get(joint.index())).isSameAs(joint);
        VerticalPiece below = layout.verticals().get(joint.below());
        VerticalPiece above = layout.verticals().get(joint.above());
        assertThat(below.spliceAbove()).isEqualTo(joint.index());
        assertThat(above.spliceBelow()).isEqualTo(joint.index());
        assertThat(above.bottom().minus(below.top())).isEqualTo(joint.splice().gap().value());
        assertThat(above.ordinal()).isEqualTo(below.ordinal() + 1);
      }
      for (PlacedAnchor anchor : layout.anchors()) {
        assertThat(layout.anchors().get(anchor.index())).isSameAs(anchor);
        if (anchor.vertical() >= 0) {
          VerticalPiece piece = layout.verticals().get(anchor.vertical());
          assertThat(piece.line()).isEqualTo(anchor.use().line());
          assertThat(anchor.y()).isBetween(piece.bottom(), piece.top());
        }
      }
    }
  }

  @Test
  void namesAreDifferentForDifferentPieces() {
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, false).wall(1).layOut();
      List<String> names = new ArrayList<>();
      layout.verticals().forEach(piece -> names.add(piece.name()));
      layout.horizontals().forEach(piece -> names.add(piece.name()));
      layout.cells().forEach(cell -> names.add(cell.name()));
      layout.covers().forEach(cover -> names.add(cover.name()));
      assertThat(new HashSet<>(names)).as("seed " + seed).hasSameSizeAs(names);
    }
  }

  @Test
  void lengthsAndGapsMakeUpTheHeight() {
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, true).wall(1).layOut();
      for (int line = 0; line < layout.wall().grid().lines().size(); line++) {
        int at = line;
        List<VerticalPiece> pieces =
            layout.verticals().stream().filter(piece -> piece.line() == at).toList();
        Length sum = Length.ZERO;
        for (VerticalPiece piece : pieces) {
          sum = sum.plus(piece.length());
        }
        for (SpliceJoint joint : layout.splices()) {
          if (joint.line() == at) {
            sum = sum.plus(joint.splice().gap().value());
          }
        }
        // sill and head reach 1" and 1 1/2" beyond their centres, or are given by their edges
        var rows = layout.wall().grid().rows();
        Length height =
            rows.get(rows.size() - 1).left().elevation().minus(rows.get(0).left().elevation());
        Length beyond = rows.get(0).edge() ? Length.ZERO : Length.ofInches(5, 2);
        assertThat(sum).isEqualTo(height.plus(beyond));
      }
    }
  }

  @Test
  void aRowOfDaylightAndSightlinesMakesUpTheWidth() {
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, true).wall(1).layOut();
      if (!layout.impossible().isEmpty()) {
        continue;
      }
      int lowest = layout.cells().get(0).below();
      Length sum = Length.ZERO;
      for (Cell cell : layout.cells()) {
        if (cell.below() == lowest) {
          sum = sum.plus(cell.daylightWidth());
          assertThat(cell.glassWidth())
              .isEqualTo(cell.daylightWidth().plus(cell.biteLeft()).plus(cell.biteRight()));
        }
      }
      for (VerticalPiece piece : layout.verticals()) {
        if (piece.ordinal() == 0) {
          Length sightline = piece.profile().sightline().value();
          sum =
              sum.plus(
                  layout.wall().grid().lines().get(piece.line()).end()
                      ? sightline.half()
                      : sightline);
        }
      }
      List<VerticalPiece> all = layout.verticals();
      assertThat(sum).isEqualTo(all.get(all.size() - 1).x().minus(all.get(0).x()));
    }
  }

  private static List<List<Long>> sizes(WallLayout layout, long scale) {
    return List.of(
        sorted(layout.verticals(), piece -> piece.length().ticks() / scale),
        sorted(layout.horizontals(), piece -> piece.length().ticks() / scale),
        sorted(layout.covers(), piece -> piece.length().ticks() / scale),
        sorted(layout.cells(), cell -> cell.daylightWidth().ticks() / scale),
        sorted(layout.cells(), cell -> cell.daylightHeight().ticks() / scale),
        sorted(layout.cells(), cell -> cell.glassWidth().ticks() / scale),
        sorted(layout.cells(), cell -> cell.glassHeight().ticks() / scale));
  }

  private static <T> List<Long> sorted(List<T> items, ToLongFunction<T> size) {
    return items.stream().mapToLong(size).sorted().boxed().toList();
  }

  private static void assertAlike(long seed, List<List<Long>> one, List<List<Long>> other) {
    for (int list = 0; list < one.size(); list++) {
      assertThat(one.get(list)).as("seed " + seed).hasSameSizeAs(other.get(list));
      long furthest = 0;
      for (int i = 0; i < one.get(list).size(); i++) {
        furthest = Math.max(furthest, Math.abs(one.get(list).get(i) - other.get(list).get(i)));
      }
      assertThat(furthest).as("seed " + seed + ", list " + list).isLessThanOrEqualTo(FEW_TICKS);
    }
  }

  @Test
  void aMirroredWallHasTheSameLengths() {
    for (long seed = 0; seed < WALLS; seed++) {
      RandomWalls plan = new RandomWalls(seed, false);
      WallLayout one = plan.wall(1).layOut();
      WallLayout other = plan.mirrored(1).layOut();
      assertAlike(seed, sizes(one, 1), sizes(other, 1));
      assertThat(one.impossible()).as("seed " + seed).hasSameSizeAs(other.impossible());
    }
  }

  @Test
  void aWallThreeTimesAsLargeHasLengthsThreeTimesAsLong() {
    for (long seed = 0; seed < WALLS; seed++) {
      RandomWalls plan = new RandomWalls(seed, false);
      assertAlike(seed, sizes(plan.wall(1).layOut(), 1), sizes(plan.wall(3).layOut(), 3));
    }
  }

  @Test
  void theSameWallGivesTheSameLayout() {
    for (long seed = 0; seed < 200; seed++) {
      TestWalls plan = new RandomWalls(seed, false).wall(1);
      Wall wall = plan.wall();
      Catalog catalog = plan.catalog();
      assertThat(LayoutBuilder.layOut(wall, catalog))
          .isEqualTo(LayoutBuilder.layOut(wall, catalog));
    }
  }

  @Test
  void theOrderOfMembersAndLitesDoesNotMatter() {
    for (long seed = 0; seed < 300; seed++) {
      TestWalls plan = new RandomWalls(seed, false).wall(1);
      Wall wall = plan.wall();
      WallLayout one = LayoutBuilder.layOut(wall, plan.catalog());
      WallLayout other = LayoutBuilder.layOut(shuffled(wall, new Random(seed)), plan.catalog());
      assertThat(other.verticals()).isEqualTo(one.verticals());
      assertThat(other.horizontals()).isEqualTo(one.horizontals());
      assertThat(other.splices()).isEqualTo(one.splices());
      assertThat(other.cells()).isEqualTo(one.cells());
      assertThat(other.covers()).isEqualTo(one.covers());
      assertThat(other.impossible()).containsExactlyInAnyOrderElementsOf(one.impossible());
    }
  }

  private static Wall shuffled(Wall wall, Random random) {
    Members members = wall.members();
    List<Members.Horizontal> horizontals = new ArrayList<>(members.horizontals());
    List<Members.Splice> splices = new ArrayList<>(members.splices());
    List<LiteUse> lites = new ArrayList<>(wall.lites());
    Collections.shuffle(horizontals, random);
    Collections.shuffle(splices, random);
    Collections.shuffle(lites, random);
    return new Wall(
        wall.name(),
        wall.origin(),
        wall.system(),
        wall.finish(),
        wall.criteria(),
        wall.fabrication(),
        wall.grid(),
        new Members(
            members.verticals(),
            horizontals,
            splices,
            members.reinforcements(),
            members.brackets()),
        wall.anchors(),
        lites,
        wall.installation());
  }
}
