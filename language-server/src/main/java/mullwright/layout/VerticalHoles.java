package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/** Finds the holes of the verticals: blocks, anchors, clips, brackets, sleeves. */
final class VerticalHoles {
  private final WallLayout layout;
  private final VerticalsOnLine lines;
  private final HorizontalsOnLine ends;
  private final List<List<DrilledHole>> holes = new ArrayList<>();

  private VerticalHoles(WallLayout layout) {
    this.layout = layout;
    this.lines = new VerticalsOnLine(layout);
    this.ends = new HorizontalsOnLine(layout);
    layout.verticals().forEach(piece -> holes.add(new ArrayList<>()));
  }

  /** By vertical, each from its lower end. */
  static List<List<DrilledHole>> of(WallLayout layout) {
    VerticalHoles all = new VerticalHoles(layout);
    all.blocks();
    layout.anchors().forEach(all::anchor);
    layout.wall().members().brackets().forEach(all::bracket);
    layout.splices().forEach(all::sleeve);
    all.holes.forEach(each -> each.sort(DrilledHole.ORDER));
    return all.holes;
  }

  private void blocks() {
    Optional<Part.ShearBlock> block = SystemPart.shearBlock(layout);
    for (HorizontalPiece piece : layout.horizontals()) {
      block(block, piece, piece.leftLine(), HoleSide.RIGHT, piece.yLeft());
      block(block, piece, piece.rightLine(), HoleSide.LEFT, piece.yRight());
    }
  }

  // on the centre line of the horizontal, at the depths of the pattern
  private void block(
      Optional<Part.ShearBlock> block, HorizontalPiece piece, int line, HoleSide side, Length y) {
    int vertical = lines.inside(line, y);
    if (vertical < 0) {
      return;
    }
    Length along = y.minus(layout.verticals().get(vertical).bottom());
    String name = block.map(Part.ShearBlock::name).orElse("");
    List<Part.Hole> pattern = block.map(Part.ShearBlock::holes).orElse(List.of());
    if (pattern.isEmpty()) {
      holes
          .get(vertical)
          .add(
              unplaced(
                  DrilledHole.Purpose.SHEAR_BLOCK,
                  name.isEmpty() ? piece.profile().name() : name,
                  side,
                  along,
                  0,
                  Optional.empty(),
                  piece.name(),
                  piece.origin()));
    }
    for (Part.Hole hole : pattern) {
      holes
          .get(vertical)
          .add(
              placed(
                  DrilledHole.Purpose.SHEAR_BLOCK,
                  name,
                  side,
                  along,
                  hole,
                  hole.fastener(),
                  piece.name(),
                  piece.origin()));
    }
  }

  private void anchor(PlacedAnchor anchor) {
    if (anchor.vertical() < 0) {
      return;
    }
    VerticalPiece piece = layout.verticals().get(anchor.vertical());
    if (anchor.use().kind() == AnchorUse.Kind.CLIP) {
      clip(anchor, piece);
      return;
    }
    HoleSide side = HoleSide.THROUGH;
    if (piece.endMember()) {
      side = piece.bayLeft() ? HoleSide.LEFT : HoleSide.RIGHT;
    }
    AnchorUse use = anchor.use();
    Optional<String> bolt = use.bolted().map(fixing -> fixing.fastener().value());
    List<Part.Hole> pattern = anchor.part().map(Part.Anchor::holes).orElse(List.of());
    String name = use.part().map(Given::value).orElse("");
    Length datum = anchor.y().minus(piece.bottom()).minus(middle(anchor.part(), pattern));
    if (pattern.isEmpty()) {
      holes
          .get(piece.index())
          .add(
              unplaced(
                  DrilledHole.Purpose.ANCHOR,
                  name,
                  side,
                  datum,
                  use.bolted().map(Members.Fixing::count).orElse(0),
                  bolt,
                  anchor.name(),
                  use.origin()));
    }
    for (Part.Hole hole : pattern) {
      holes
          .get(piece.index())
          .add(
              placed(
                  DrilledHole.Purpose.ANCHOR,
                  name,
                  side,
                  datum.plus(hole.along()),
                  hole,
                  bolt.or(hole::fastener),
                  anchor.name(),
                  use.origin()));
    }
  }

  // from the part's lower end to its bolt line: half its height, else the middle of its holes
  private static Length middle(Optional<Part.Anchor> part, List<Part.Hole> pattern) {
    Optional<Length> height = part.flatMap(Part.Anchor::height).map(given -> given.value().half());
    if (height.isPresent() && !pattern.isEmpty()) {
      return height.get();
    }
    Optional<Length> low = pattern.stream().map(Part.Hole::along).min(Length::compareTo);
    Optional<Length> high = pattern.stream().map(Part.Hole::along).max(Length::compareTo);
    return low.isEmpty() ? Length.ZERO : low.get().plus(high.get()).half();
  }

  private void clip(PlacedAnchor anchor, VerticalPiece piece) {
    Optional<Given<String>> name = anchor.use().part();
    List<Part.Hole> pattern =
        name.flatMap(found -> SystemPart.find(layout, PartKind.CLIP, Part.Clip.class, found))
            .map(Part.Clip::holes)
            .orElse(List.of());
    String part = name.map(Given::value).orElse("");
    ClipLegs legs = ClipLegs.of(layout, anchor, ends);
    Length sits = anchor.y().minus(piece.bottom());
    for (HoleSide side : legs.sides()) {
      if (pattern.isEmpty()) {
        holes
            .get(piece.index())
            .add(
                unplaced(
                    DrilledHole.Purpose.CLIP,
                    part,
                    side,
                    sits,
                    0,
                    Optional.empty(),
                    anchor.name(),
                    anchor.use().origin()));
      }
      for (Part.Hole hole : pattern) {
        holes
            .get(piece.index())
            .add(
                placed(
                    DrilledHole.Purpose.CLIP,
                    part,
                    side,
                    into(piece, sits, hole.along()),
                    hole,
                    hole.fastener(),
                    anchor.name(),
                    anchor.use().origin()));
      }
    }
  }

  /** A clip's pattern begins where it sits and goes into the piece: down from its upper end. */
  private static Length into(VerticalPiece piece, Length sits, Length along) {
    boolean top = piece.length().minus(sits).isShorterThan(sits);
    return top ? sits.minus(along) : sits.plus(along);
  }

  private void bracket(Members.Bracket bracket) {
    Length y = bracket.at().elevation();
    int vertical = lines.touching(bracket.line(), y);
    if (vertical < 0) {
      return;
    }
    VerticalPiece piece = layout.verticals().get(vertical);
    String line = layout.wall().grid().lines().get(bracket.line()).name();
    holes
        .get(vertical)
        .add(
            unplaced(
                DrilledHole.Purpose.BRACKET,
                "",
                HoleSide.THROUGH,
                y.minus(piece.bottom()),
                bracket.bolted().map(Members.Fixing::count).orElse(0),
                bracket.bolted().map(fixing -> fixing.fastener().value()),
                "bracket of vertical " + line,
                bracket.origin()));
  }

  private void sleeve(SpliceJoint joint) {
    Optional<Part.Sleeve> sleeve = SystemPart.sleeve(layout, joint);
    if (sleeve.isEmpty()) {
      return;
    }
    boolean lower = sleeve.get().fixedEnd().value().equals("lower");
    VerticalPiece piece = layout.verticals().get(lower ? joint.below() : joint.above());
    for (Part.Hole hole : sleeve.get().holes()) {
      Length along = lower ? piece.length().minus(hole.along()) : hole.along();
      holes
          .get(piece.index())
          .add(
              placed(
                  DrilledHole.Purpose.SLEEVE,
                  sleeve.get().name(),
                  HoleSide.THROUGH,
                  along,
                  hole,
                  hole.fastener(),
                  joint.name(),
                  joint.splice().origin()));
    }
  }

  private static DrilledHole placed(
      DrilledHole.Purpose purpose,
      String part,
      HoleSide side,
      Length along,
      Part.Hole hole,
      Optional<String> fastener,
      String partner,
      Origin statement) {
    return new DrilledHole(
        purpose,
        part,
        side,
        along,
        Optional.of(hole.back()),
        Optional.of(hole.diameter()),
        fastener,
        1,
        partner,
        statement,
        hole.origin());
  }

  private static DrilledHole unplaced(
      DrilledHole.Purpose purpose,
      String part,
      HoleSide side,
      Length along,
      int count,
      Optional<String> fastener,
      String partner,
      Origin origin) {
    return new DrilledHole(
        purpose,
        part,
        side,
        along,
        Optional.empty(),
        Optional.empty(),
        fastener,
        count,
        partner,
        origin,
        origin);
  }
}
