package mullwright.report.ifc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.Glazed;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceMarks;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.layout.WallPlan;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Length;
import mullwright.report.Marks;
import mullwright.report.Report;

/** The members, lites, openings by others and anchors of a wall, each in its place. */
final class Parts {
  private static final double[] UP = {0, 0, 1};

  private final StepFile file;
  private final GlobalIds ids;
  private final Shapes shapes;
  private final StepValue.Reference within;
  private final WallLayout layout;
  private final PieceMarks marks;
  private final WallPlan plan;
  private final Types types;
  private final PartFacts facts;

  Parts(
      StepFile file,
      GlobalIds ids,
      Shapes shapes,
      Descriptions told,
      Report.WallAtHand wall,
      StepValue.Reference within) {
    this.file = file;
    this.ids = ids;
    this.shapes = shapes;
    this.within = within;
    this.layout = wall.facts().layout();
    this.marks = Marks.of(wall);
    this.plan = new WallPlan(layout.wall().grid());
    this.types = new Types(file, ids, shapes);
    this.facts = new PartFacts(layout, wall.units(), told);
  }

  /** Adds all of them, and their types. */
  List<StepValue.Reference> add() {
    List<StepValue.Reference> all = new ArrayList<>();
    layout.verticals().forEach(piece -> all.add(vertical(piece)));
    layout.horizontals().forEach(piece -> all.add(horizontal(piece)));
    for (Cell cell : layout.cells()) {
      if (Glazed.lite(cell)) {
        all.add(lite(cell));
      } else if (cell.opening().isPresent()) {
        all.add(opening(cell, cell.opening().get()));
      }
    }
    layout.anchors().forEach(anchor -> all.add(anchor(anchor)));
    types.write();
    return all;
  }

  private StepValue.Reference vertical(VerticalPiece piece) {
    WallPlan.Spot front = plan.onLine(piece.line(), piece.x());
    WallPlan.Spot back = front.inward(backOf(piece));
    StepValue.Reference placement =
        shapes.placed(
            within,
            new double[] {back.x(), back.y(), piece.bottom().toMillimetres()},
            UP,
            new double[] {-back.alongX(), -back.alongY(), 0});
    StepValue.Reference member =
        element(
            "IFCMEMBER",
            piece.name(),
            "",
            placement,
            shapes.bar(piece.profile(), piece.length()),
            marks.vertical(piece.index()),
            "MULLION");
    types.member(member, piece.profile(), "MULLION");
    facts.vertical(member, piece, marks.vertical(piece.index()));
    return member;
  }

  // at a corner the outline stands across the half angle, just behind the glass planes of both
  // faces
  private double backOf(VerticalPiece piece) {
    double turn = plan.turn(piece.line());
    double half = piece.profile().face().value().half().toMillimetres();
    double corner = turn > 0 ? half * StrictMath.tan(turn / 2) : 0;
    return SystemPart.backOf(layout, piece.profile()).toMillimetres() + corner;
  }

  private StepValue.Reference horizontal(HorizontalPiece piece) {
    double run = piece.right().minus(piece.left()).toMillimetres();
    double rise = piece.yRight().minus(piece.yLeft()).toMillimetres();
    double way = StrictMath.hypot(run, rise);
    double cos = run / way;
    double sin = rise / way;
    // a sloping piece is as long as its longer edge: it stands out as much at either end
    double over = (piece.length().toMillimetres() - way) / 2;
    WallPlan.Spot left =
        plan.inBay(piece.firstBay(), piece.left())
            .inward(SystemPart.backOf(layout, piece.profile()).toMillimetres());
    StepValue.Reference placement =
        shapes.placed(
            within,
            new double[] {
              left.x() - over * cos * left.alongX(),
              left.y() - over * cos * left.alongY(),
              piece.yLeft().toMillimetres() - over * sin
            },
            new double[] {cos * left.alongX(), cos * left.alongY(), sin},
            new double[] {-sin * left.alongX(), -sin * left.alongY(), cos});
    StepValue.Reference member =
        element(
            "IFCMEMBER",
            piece.name(),
            "TRANSOM",
            placement,
            shapes.bar(piece.profile(), piece.length()),
            marks.horizontal(piece.index()),
            "USERDEFINED");
    types.member(member, piece.profile(), "TRANSOM");
    facts.horizontal(member, piece, marks.horizontal(piece.index()), StrictMath.atan2(rise, run));
    return member;
  }

  private StepValue.Reference lite(Cell cell) {
    Optional<Length> thickness = cell.glass().flatMap(PartFacts::thickness);
    StepValue.Reference plate =
        element(
            "IFCPLATE",
            cell.name(),
            "",
            standing(
                cell,
                cell.left().minus(cell.biteLeft()),
                cell.bottom().minus(cell.biteBottom()),
                thickness.orElse(Length.ZERO)),
            thickness
                .map(by -> (StepValue) shapes.box(cell.glassWidth(), cell.glassHeight(), by))
                .orElse(StepValue.NONE),
            marks.lite(cell.index()).orElse(""),
            "CURTAIN_PANEL");
    cell.glass().ifPresent(glass -> types.plate(plate, glass));
    facts.lite(plate, cell, marks.lite(cell.index()).orElse(""));
    return plate;
  }

  private StepValue.Reference opening(Cell cell, Grid.Opening opening) {
    Optional<Length> depth =
        layout.wall().system().map(Part.WallSystem::glassPlane).map(given -> given.value());
    StepValue.Reference proxy =
        element(
            "IFCBUILDINGELEMENTPROXY",
            "opening " + opening.name(),
            opening.kind().name(),
            standing(cell, cell.left(), cell.bottom(), depth.orElse(Length.ZERO)),
            depth
                .filter(by -> by.signum() > 0)
                .map(by -> (StepValue) shapes.box(cell.daylightWidth(), cell.daylightHeight(), by))
                .orElse(StepValue.NONE),
            opening.name(),
            "PROVISIONFORVOID");
    facts.opening(proxy, cell, opening);
    return proxy;
  }

  // X along the wall, Y up, Z out of the wall, from its inner face on
  private StepValue.Reference standing(Cell cell, Length left, Length bottom, Length depth) {
    WallPlan.Spot spot = plan.inBay(cell.firstBay(), left).inward(depth.toMillimetres());
    return shapes.placed(
        within,
        new double[] {spot.x(), spot.y(), bottom.toMillimetres()},
        new double[] {spot.alongY(), -spot.alongX(), 0},
        new double[] {spot.alongX(), spot.alongY(), 0});
  }

  private StepValue.Reference anchor(PlacedAnchor anchor) {
    AnchorUse use = anchor.use();
    Length x = layout.wall().grid().lines().get(use.line()).x();
    double back = 0;
    if (anchor.vertical() >= 0) {
      VerticalPiece piece = layout.verticals().get(anchor.vertical());
      x = piece.x();
      back = backOf(piece);
    }
    Length offset = use.offset().map(given -> given.value()).orElse(Length.ZERO);
    WallPlan.Spot spot = plan.onLine(use.line(), x.plus(offset)).inward(back);
    StepValue.Reference accessory =
        element(
            "IFCDISCRETEACCESSORY",
            anchor.name(),
            "",
            shapes.placed(
                within,
                new double[] {spot.x(), spot.y(), anchor.y().toMillimetres()},
                UP,
                new double[] {spot.alongX(), spot.alongY(), 0}),
            StepValue.NONE,
            "",
            "BRACKET");
    facts.anchor(accessory, anchor);
    return accessory;
  }

  private StepValue.Reference element(
      String entity,
      String name,
      String objectType,
      StepValue placement,
      StepValue shape,
      String tag,
      String predefined) {
    return file.add(
        entity,
        ids.of(name),
        StepValue.NONE,
        StepValue.text(name),
        StepValue.NONE,
        StepValue.textOrNone(objectType),
        placement,
        shape,
        StepValue.textOrNone(tag),
        StepValue.word(predefined));
  }
}
