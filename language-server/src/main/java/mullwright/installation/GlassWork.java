package mullwright.installation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.Glazed;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/** The steps from the frame to the seal: zones, blocks, lites, plates, caps. */
final class GlassWork {
  private final WallLayout layout;
  private final WorkGraphBuilder work;
  private final FrameWork frame;
  private final int[] ofLite;

  GlassWork(WallLayout layout, WorkGraphBuilder work, FrameWork frame) {
    this.layout = layout;
    this.work = work;
    this.frame = frame;
    this.ofLite = new int[layout.cells().size()];
    Arrays.fill(ofLite, -1);
  }

  void add() {
    int[] lowerLite = new int[layout.wall().grid().bays().size()];
    Arrays.fill(lowerLite, -1);
    for (Cell cell : layout.cells()) {
      if (Glazed.lite(cell)) {
        lite(cell, lowerLite);
      }
    }
    covers();
  }

  private void lite(Cell cell, int[] lowerLite) {
    int place = work.stretches().ofBay(cell.firstBay());
    Origin origin = cell.use().orElseThrow().origin();
    List<PieceRef> lite = List.of(new PieceRef(PieceRef.Kind.CELL, cell.index()));
    int zone = work.step(WorkKind.ZONE, place, cell.bottom(), cell.name(), origin, lite);
    int blocks = work.step(WorkKind.BLOCKS, place, cell.bottom(), cell.name(), origin, lite);
    int glass = work.step(WorkKind.GLASS, place, cell.bottom(), cell.name(), origin, lite);
    ofLite[cell.index()] = glass;
    for (int bay = cell.firstBay(); bay <= cell.lastBay(); bay++) {
      work.before(
          frame.squared(bay), zone, "nothing is sealed or glazed before the frame is squared");
      work.before(lowerLite[bay], glass, "glass goes in from the bottom");
      lowerLite[bay] = glass;
    }
    work.before(zone, blocks, "the blocks stand in the sealed pocket");
    work.before(zone, glass, "dams and indoor gaskets are behind the glass");
    work.before(blocks, glass, "the lite stands on its blocks");
  }

  private void covers() {
    List<List<Integer>> verticalPlates = lists(layout.verticals().size());
    List<Integer> plates = new ArrayList<>();
    int[] plateOf = new int[layout.verticals().size() + layout.horizontals().size()];
    Arrays.fill(plateOf, -1);
    for (int at = 0; at < layout.covers().size(); at++) {
      CoverPiece cover = layout.covers().get(at);
      boolean plate = cover.what() == CoverPiece.What.PRESSURE_PLATE;
      int step =
          work.step(
              plate ? WorkKind.PLATE : WorkKind.CAP,
              place(cover),
              height(cover),
              cover.name().replaceFirst("^(pressure plate|face cap) of ", ""),
              origin(cover),
              List.of(new PieceRef(PieceRef.Kind.COVER, at)));
      int carrier = cover.carrier() + (cover.vertical() ? 0 : layout.verticals().size());
      if (plate) {
        plates.add(step);
        clamp(cover, step);
        if (cover.vertical()) {
          verticalPlates.get(cover.carrier()).add(step);
          plateOf[carrier] = step;
        } else {
          between(cover, step, verticalPlates);
          plateOf[carrier] = step;
        }
      } else {
        List<Integer> under =
            cover.vertical() ? verticalPlates.get(cover.carrier()) : List.of(plateOf[carrier]);
        under.forEach(one -> work.before(one, step, "the cap snaps over the plate"));
      }
    }
    if (!plates.isEmpty()) {
      int seal =
          work.step(
              WorkKind.SEAL,
              Integer.MAX_VALUE,
              Length.ZERO,
              "wall " + layout.wall().name(),
              layout.wall().origin(),
              List.of());
      plates.forEach(
          plate -> work.before(plate, seal, "the wall is clamped before it is sealed in"));
    }
  }

  private static List<List<Integer>> lists(int size) {
    List<List<Integer>> lists = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      lists.add(new ArrayList<>(2));
    }
    return lists;
  }

  private int place(CoverPiece cover) {
    return cover.vertical()
        ? work.stretches().ofLine(layout.verticals().get(cover.carrier()).line())
        : work.stretches().ofBay(layout.horizontals().get(cover.carrier()).firstBay());
  }

  private Length height(CoverPiece cover) {
    return cover.vertical() ? cover.start() : layout.horizontals().get(cover.carrier()).yLeft();
  }

  private Origin origin(CoverPiece cover) {
    return cover.vertical()
        ? layout.verticals().get(cover.carrier()).origin()
        : layout.horizontals().get(cover.carrier()).origin();
  }

  // a plate holds the lites on both its sides
  private void clamp(CoverPiece cover, int step) {
    for (Cell cell : layout.cells()) {
      if (ofLite[cell.index()] >= 0 && beside(cell, cover)) {
        work.before(ofLite[cell.index()], step, "the plate clamps the lite");
      }
    }
  }

  private boolean beside(Cell cell, CoverPiece cover) {
    if (cover.vertical()) {
      VerticalPiece piece = layout.verticals().get(cover.carrier());
      var bays = layout.wall().grid().bays();
      boolean onLine =
          bays.get(cell.firstBay()).left() == piece.line()
              || bays.get(cell.lastBay()).right() == piece.line();
      return onLine
          && cell.bottom().isShorterThan(cover.end())
          && cover.start().isShorterThan(cell.top());
    }
    HorizontalPiece piece = layout.horizontals().get(cover.carrier());
    return (cell.below() == piece.row() || cell.above() == piece.row())
        && cell.firstBay() <= piece.lastBay()
        && piece.firstBay() <= cell.lastBay();
  }

  private void between(CoverPiece cover, int step, List<List<Integer>> verticalPlates) {
    HorizontalPiece piece = layout.horizontals().get(cover.carrier());
    for (VerticalPiece vertical : layout.verticals()) {
      boolean at =
          (vertical.line() == piece.leftLine() || vertical.line() == piece.rightLine())
              && !piece.yLeft().isShorterThan(vertical.bottom())
              && !piece.yLeft().isLongerThan(vertical.top());
      if (at) {
        verticalPlates
            .get(vertical.index())
            .forEach(one -> work.before(one, step, "it runs between the verticals' plates"));
      }
    }
  }
}
