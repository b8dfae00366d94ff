package mullwright.takeoff;

import java.util.List;
import java.util.Optional;
import mullwright.layout.CoverPiece;
import mullwright.layout.DrilledHole;
import mullwright.layout.HolePlaces;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Role;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/** Counts the frame: profiles, reinforcement, sleeves, shear blocks and their screws. */
final class FrameTakeoff {
  /** Shear blocks of a horizontal: one at each end. */
  private static final int BLOCKS = 2;

  private final WallLayout layout;
  private final HolePlaces holes;
  private final Faces faces;
  private final Tally tally;

  FrameTakeoff(WallLayout layout, HolePlaces holes, Faces faces, Tally tally) {
    this.layout = layout;
    this.holes = holes;
    this.faces = faces;
    this.tally = tally;
  }

  void count() {
    for (VerticalPiece piece : layout.verticals()) {
      bar(piece.profile(), faces.ofLine(piece.line()), piece.length());
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      bar(piece.profile(), faces.of(piece), piece.length());
    }
    for (ReinforcingBar bar : ReinforcingBars.of(layout)) {
      Optional<Rational> mass =
          layout
              .catalog()
              .find(PartKind.REINFORCEMENT, bar.part())
              .filter(Part.Reinforcement.class::isInstance)
              .flatMap(part -> ((Part.Reinforcement) part).massPerLength())
              .map(given -> given.value().si());
      int face = faces.ofLine(layout.verticals().get(bar.vertical()).line());
      tally.length(
          thing("reinforcement", face, "reinforcement", bar.part()), 1, bar.length(), mass);
    }
    for (SpliceJoint joint : layout.splices()) {
      String sleeve = SystemPart.sleeve(layout, joint).map(Part.Sleeve::name).orElse("");
      tally.count(thing("sleeve", faces.ofLine(joint.line()), "splice sleeve", sleeve), 1);
    }
    blocks();
    screws();
    covers();
  }

  private void bar(Part.Profile profile, int face, Length length) {
    Optional<Rational> mass = profile.massPerLength().map(Given::value).map(Quantity::si);
    Role role = profile.role().value();
    String item = role == Role.INTERMEDIATE ? "intermediate horizontal" : role.spelling();
    tally.length(thing("bar", face, item, profile.name()), 1, length, mass);
  }

  private void blocks() {
    String block = SystemPart.shearBlock(layout).map(Part.ShearBlock::name).orElse("");
    for (HorizontalPiece piece : layout.horizontals()) {
      tally.count(thing("shear-block", faces.of(piece), "shear block", block), BLOCKS);
    }
  }

  private void screws() {
    for (VerticalPiece piece : layout.verticals()) {
      screws(holes.vertical(piece.index()), faces.ofLine(piece.line()));
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      screws(holes.horizontal(piece.index()), faces.of(piece));
    }
  }

  private void screws(List<DrilledHole> of, int face) {
    for (DrilledHole hole : of) {
      boolean frame =
          hole.purpose() == DrilledHole.Purpose.SHEAR_BLOCK
              || hole.purpose() == DrilledHole.Purpose.SLEEVE;
      if (frame && hole.fastener().isPresent()) {
        String item =
            hole.purpose() == DrilledHole.Purpose.SLEEVE ? "sleeve fastener" : "block fastener";
        tally.count(thing("fastener", face, item, hole.fastener().get()), hole.count());
      }
    }
  }

  private void covers() {
    for (CoverPiece cover : layout.covers()) {
      boolean plate = cover.what() == CoverPiece.What.PRESSURE_PLATE;
      tally.length(
          new Tally.Thing(
              plate ? Phase.WEATHER : Phase.FINISH,
              plate ? "plate" : "cap",
              faces.of(cover),
              (plate ? "pressure plate, " : "face cap, ")
                  + (cover.vertical() ? "vertical" : "horizontal"),
              cover.part(),
              "",
              ""),
          1,
          cover.length(),
          Optional.empty());
    }
  }

  private static Tally.Thing thing(String sort, int face, String item, String part) {
    return new Tally.Thing(
        Phase.FRAME,
        sort,
        face,
        item,
        part,
        "",
        part.isEmpty() ? "no part named in the catalog" : "");
  }
}
