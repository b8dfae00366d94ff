package mullwright.installation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mullwright.layout.HoleSide;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.HorizontalsOnLine;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.VerticalsOnLine;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/** The steps of the frame: anchors, clips, verticals, ladders, horizontals, squaring. */
final class FrameWork {
  private final WallLayout layout;
  private final WorkGraphBuilder work;
  private final VerticalsOnLine lines;
  private final HorizontalsOnLine ends;
  private final int[] ofVertical;
  private final int[] ofHorizontal;
  private final int[] ofAnchor;
  private final int[] squared;

  /** The bays on either side of each line, from the left. */
  private final List<List<Grid.Bay>> beside = new ArrayList<>();

  FrameWork(WallLayout layout, WorkGraphBuilder work) {
    this.layout = layout;
    this.work = work;
    this.lines = new VerticalsOnLine(layout);
    this.ends = new HorizontalsOnLine(layout);
    this.ofVertical = none(layout.verticals().size());
    this.ofHorizontal = none(layout.horizontals().size());
    this.ofAnchor = none(layout.anchors().size());
    this.squared = none(layout.wall().grid().bays().size());
    layout.wall().grid().lines().forEach(line -> beside.add(new ArrayList<>(2)));
    for (Grid.Bay bay : layout.wall().grid().bays()) {
      beside.get(bay.left()).add(bay);
      beside.get(bay.right()).add(bay);
    }
  }

  private static int[] none(int size) {
    int[] none = new int[size];
    Arrays.fill(none, -1);
    return none;
  }

  /** The step that brings a vertical. */
  int vertical(int index) {
    return ofVertical[index];
  }

  /** The step that sets an anchor or clip. */
  int anchor(int index) {
    return ofAnchor[index];
  }

  /** The step that squares and locks a bay. */
  int squared(int bay) {
    return squared[bay];
  }

  void add() {
    ladders();
    singles();
    anchors();
    splices();
    supports();
    butts();
    tiedBays();
    squaring();
  }

  /** What stands, without what holds it and what is done once it stands. */
  void standing() {
    ladders();
    singles();
    splices();
    supports();
    butts();
    tiedBays();
  }

  private void ladders() {
    for (Grid.Bay bay : layout.wall().grid().bays()) {
      if (!work.stretches().ladder(bay.index())) {
        continue;
      }
      List<VerticalPiece> left = lines.of(bay.left());
      List<VerticalPiece> right = lines.of(bay.right());
      for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
        ladder(bay, left.get(i), right.get(i));
      }
    }
  }

  // two lengths side by side with the horizontals between them; neither may be another ladder's
  private void ladder(Grid.Bay bay, VerticalPiece left, VerticalPiece right) {
    if (ofVertical[left.index()] >= 0 || ofVertical[right.index()] >= 0) {
      return;
    }
    List<HorizontalPiece> rungs =
        ends.of(bay.left(), HoleSide.RIGHT).stream()
            .filter(piece -> piece.rightLine() == bay.right())
            .filter(piece -> left.bottom().isShorterThan(piece.yLeft()))
            .filter(piece -> piece.yLeft().isShorterThan(left.top()))
            .filter(piece -> lines.inside(bay.left(), piece.yLeft()) == left.index())
            .filter(piece -> lines.inside(bay.right(), piece.yRight()) == right.index())
            .toList();
    if (rungs.isEmpty()) {
      return;
    }
    int step =
        work.step(
            WorkKind.LADDER,
            work.stretches().ofBay(bay.index()),
            Length.min(left.bottom(), right.bottom()),
            "ladder of " + left.name() + " and " + right.name(),
            left.origin(),
            pieces(left, right, rungs));
    ofVertical[left.index()] = step;
    ofVertical[right.index()] = step;
    rungs.forEach(piece -> ofHorizontal[piece.index()] = step);
  }

  private static List<PieceRef> pieces(
      VerticalPiece left, VerticalPiece right, List<HorizontalPiece> rungs) {
    List<PieceRef> pieces = new ArrayList<>(rungs.size() + 2);
    pieces.add(new PieceRef(PieceRef.Kind.VERTICAL, left.index()));
    pieces.add(new PieceRef(PieceRef.Kind.VERTICAL, right.index()));
    rungs.forEach(piece -> pieces.add(new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index())));
    return pieces;
  }

  private void singles() {
    for (VerticalPiece piece : layout.verticals()) {
      if (ofVertical[piece.index()] < 0) {
        ofVertical[piece.index()] =
            work.step(
                WorkKind.VERTICAL,
                work.stretches().ofLine(piece.line()),
                piece.bottom(),
                piece.name(),
                piece.origin(),
                List.of(new PieceRef(PieceRef.Kind.VERTICAL, piece.index())));
      }
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      if (ofHorizontal[piece.index()] < 0) {
        ofHorizontal[piece.index()] =
            work.step(
                WorkKind.HORIZONTAL,
                work.stretches().ofBay(piece.lastBay()),
                piece.yLeft(),
                piece.name(),
                piece.origin(),
                List.of(new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index())));
      }
    }
  }

  private void anchors() {
    for (PlacedAnchor anchor : layout.anchors()) {
      AnchorUse use = anchor.use();
      int place = work.stretches().ofLine(use.line());
      boolean clip = use.kind() == AnchorUse.Kind.CLIP;
      List<PieceRef> of = List.of(new PieceRef(PieceRef.Kind.ANCHOR, anchor.index()));
      int step =
          work.step(
              clip ? WorkKind.CLIP : WorkKind.ANCHOR,
              place,
              anchor.y(),
              anchor.name(),
              use.origin(),
              of);
      ofAnchor[anchor.index()] = step;
      int held = anchor.vertical() < 0 ? -1 : ofVertical[anchor.vertical()];
      work.before(step, held, clip ? "it stands over its clip" : "it hangs on its anchor");
      if (use.isolation().isPresent()) {
        int pad = work.step(WorkKind.ISOLATION, place, anchor.y(), anchor.name(), use.origin(), of);
        work.before(step, pad, "it is put on the anchor");
        work.before(pad, held, "isolated before steel meets aluminium");
      }
      if (clip && anchor.vertical() >= 0) {
        hide(anchor, step);
      }
    }
  }

  private void hide(PlacedAnchor clip, int step) {
    VerticalPiece piece = layout.verticals().get(clip.vertical());
    Length face = piece.profile().face().value();
    for (HoleSide side : List.of(HoleSide.LEFT, HoleSide.RIGHT)) {
      for (HorizontalPiece horizontal : ends.of(piece.line(), side)) {
        Length off = HorizontalsOnLine.height(horizontal, side).minus(clip.y()).abs();
        if (!off.isLongerThan(face)) {
          work.before(step, ofHorizontal[horizontal.index()], "its end hides the clip's screws");
        }
      }
    }
  }

  private void splices() {
    for (SpliceJoint joint : layout.splices()) {
      int below = ofVertical[joint.below()];
      int above = ofVertical[joint.above()];
      int sleeve =
          work.step(
              WorkKind.SLEEVE,
              work.stretches().ofLine(joint.line()),
              joint.y(),
              joint.name(),
              joint.splice().origin(),
              List.of(new PieceRef(PieceRef.Kind.SPLICE, joint.index())));
      work.before(below, sleeve, "the sleeve goes into the lower length");
      work.before(sleeve, above, "the upper length slides over the sleeve");
      work.before(below, above, "the upper length stands on the lower");
    }
  }

  private void supports() {
    boolean endwise =
        SystemPart.shearBlock(layout)
            .filter(block -> block.entry().value().equals("end"))
            .isPresent();
    for (HorizontalPiece piece : layout.horizontals()) {
      int step = ofHorizontal[piece.index()];
      int left = holder(piece.leftLine(), piece.yLeft());
      int right = holder(piece.rightLine(), piece.yRight());
      String reason =
          work.stretches().infill(piece.firstBay())
              ? "it is filled in between what stands on both sides"
              : "its shear blocks sit on it";
      int near = first(piece) == piece.leftLine() ? left : right;
      int far = near == left ? right : left;
      work.before(near, step, reason);
      if (endwise && !work.stretches().infill(piece.firstBay())) {
        work.before(
            step, far, "slid on endwise, it is held before the next vertical closes the bay");
      } else {
        work.before(far, step, reason);
      }
      if (endwise && work.stretches().infill(piece.firstBay())) {
        work.before(step, far, "slid on endwise, it must be on before the next vertical stands");
      }
    }
  }

  private int first(HorizontalPiece piece) {
    return work.stretches().ofLine(piece.leftLine()) <= work.stretches().ofLine(piece.rightLine())
        ? piece.leftLine()
        : piece.rightLine();
  }

  private int holder(int line, Length y) {
    int vertical = lines.inside(line, y);
    return vertical < 0 ? -1 : ofVertical[vertical];
  }

  // a vertical that starts or stops at a horizontal which runs on past it
  private void butts() {
    for (HorizontalPiece piece : layout.horizontals()) {
      if (piece.firstBay() == piece.lastBay()) {
        continue;
      }
      for (int line = piece.leftLine() + 1; line < piece.rightLine(); line++) {
        List<VerticalPiece> on = lines.of(line);
        if (on.isEmpty()) {
          continue;
        }
        Length y = height(piece, on.get(0).x());
        Length reach = piece.profile().face().value();
        for (VerticalPiece vertical : lines.near(line, y.minus(reach), y.plus(reach))) {
          boolean lower = !vertical.bottom().minus(y).abs().isLongerThan(reach);
          if (lower || !vertical.top().minus(y).abs().isLongerThan(reach)) {
            work.before(
                ofHorizontal[piece.index()],
                ofVertical[vertical.index()],
                "it butts that horizontal");
          }
        }
      }
    }
  }

  // of its centre, at that place along the wall
  private static Length height(HorizontalPiece piece, Length x) {
    Length rise = piece.yRight().minus(piece.yLeft());
    Length run = piece.right().minus(piece.left());
    return piece.yLeft().plus(rise.scaled(x.minus(piece.left()).ticks(), run.ticks()));
  }

  // stick by stick: the bay behind is tied before the next vertical is set
  private void tiedBays() {
    boolean[] full = full();
    for (HorizontalPiece piece : layout.horizontals()) {
      boolean simple =
          piece.firstBay() == piece.lastBay()
              && !work.stretches().ladder(piece.firstBay())
              && !work.stretches().infill(piece.firstBay())
              && full[piece.leftLine()]
              && full[piece.rightLine()];
      if (!simple) {
        continue;
      }
      int far = first(piece) == piece.leftLine() ? piece.rightLine() : piece.leftLine();
      for (Grid.Bay bay : beside.get(far)) {
        int beyond = bay.left() == far ? bay.right() : bay.left();
        boolean next =
            work.stretches().ofLine(beyond) > work.stretches().ofLine(far)
                && !work.stretches().ladder(bay.index())
                && full[beyond];
        int vertical = next ? lines.inside(beyond, piece.yLeft()) : -1;
        if (vertical >= 0) {
          work.before(
              ofHorizontal[piece.index()],
              ofVertical[vertical],
              "the bay before is tied by its horizontals first");
        }
      }
    }
  }

  // lines with one run from bottom to top, which no horizontal runs past
  private boolean[] full() {
    boolean[] full = new boolean[layout.wall().grid().lines().size()];
    for (int line = 0; line < full.length; line++) {
      List<VerticalPiece> on = lines.of(line);
      full[line] = !on.isEmpty() && on.stream().allMatch(piece -> piece.run() == on.get(0).run());
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      Arrays.fill(
          full, piece.leftLine() + 1, Math.max(piece.leftLine() + 1, piece.rightLine()), false);
    }
    return full;
  }

  private void squaring() {
    List<List<HorizontalPiece>> crossing = new ArrayList<>();
    layout.wall().grid().bays().forEach(bay -> crossing.add(new ArrayList<>()));
    for (HorizontalPiece piece : layout.horizontals()) {
      for (int bay = piece.firstBay(); bay <= piece.lastBay(); bay++) {
        crossing.get(bay).add(piece);
      }
    }
    for (Grid.Bay bay : layout.wall().grid().bays()) {
      List<HorizontalPiece> inBay = crossing.get(bay.index());
      if (inBay.isEmpty()) {
        continue;
      }
      String name =
          "bay "
              + layout.wall().grid().lines().get(bay.left()).name()
              + "-"
              + layout.wall().grid().lines().get(bay.right()).name();
      squared[bay.index()] =
          work.step(
              WorkKind.SQUARE,
              work.stretches().ofBay(bay.index()),
              inBay.get(0).yLeft(),
              name,
              inBay.get(0).origin(),
              inBay.stream()
                  .map(piece -> new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index()))
                  .toList());
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      for (int bay = piece.firstBay(); bay <= piece.lastBay(); bay++) {
        work.before(
            ofHorizontal[piece.index()], squared[bay], "squared once all its horizontals are on");
      }
    }
    for (PlacedAnchor anchor : layout.anchors()) {
      for (Grid.Bay bay : beside.get(anchor.use().line())) {
        work.before(ofAnchor[anchor.index()], squared[bay.index()], "its bolts are locked then");
      }
    }
  }
}
