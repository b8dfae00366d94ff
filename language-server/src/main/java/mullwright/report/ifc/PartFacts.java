package mullwright.report.ifc;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.UnitSystem;
import mullwright.report.ifc.Descriptions.Fact;
import mullwright.takeoff.Faces;
import mullwright.takeoff.cutting.CutList;

/**
 * What is told of each part: the standard sets of properties and quantities, as far as the text
 * states their values, and sets of our own for what the standard ones have no place for.
 *
 * <p>Source: IFC4, Pset_MemberCommon, Pset_PlateCommon, Qto_MemberBaseQuantities,
 * Qto_PlateBaseQuantities.
 */
final class PartFacts {
  private static final int DECIMALS = 9;

  private final WallLayout layout;
  private final UnitSystem units;
  private final Descriptions told;
  private final Faces faces;
  private final String finish;

  PartFacts(WallLayout layout, UnitSystem units, Descriptions told) {
    this.layout = layout;
    this.units = units;
    this.told = told;
    this.faces = new Faces(layout);
    this.finish = CutList.finish(layout.wall());
  }

  void vertical(StepValue.Reference of, VerticalPiece piece, String mark) {
    member(of, piece.profile(), piece.length(), mark, faces.ofLine(piece.line()), List.of());
  }

  /** Its slope is positive where it rises to the right [radians]. */
  void horizontal(StepValue.Reference of, HorizontalPiece piece, String mark, double slope) {
    member(
        of,
        piece.profile(),
        piece.length(),
        mark,
        faces.of(piece),
        List.of(Fact.measure("Slope", "IFCPLANEANGLEMEASURE", rounded(slope))));
  }

  private void member(
      StepValue.Reference of,
      Part.Profile profile,
      Length length,
      String mark,
      int face,
      List<Fact> more) {
    List<Fact> common = new ArrayList<>();
    common.add(Fact.identifier("Reference", profile.name()));
    common.addAll(more);
    common.add(Fact.truth("IsExternal", IfcModel.external(layout)));
    profile.uFactor().ifPresent(u -> common.add(transmittance(u.value())));
    told.properties(of, "Pset_MemberCommon", common);
    List<Fact> own = new ArrayList<>();
    own.add(Fact.identifier("Mark", mark));
    own.add(Fact.length("CutLength", length));
    own.add(Fact.label("Profile", profile.name()));
    own.add(Fact.label("Alloy", profile.alloy().map(Given::value).orElse("")));
    own.add(Fact.label("Finish", finish));
    own.add(Fact.label("Face", faces.name(face)));
    own.add(
        Fact.label(
            "Shape",
            profile.outline().isPresent()
                ? "outline of the catalog"
                : "face by depth: the catalog draws no outline"));
    told.properties(of, "Mullwright_Member", own);
    List<Fact> measured = new ArrayList<>();
    measured.add(Fact.quantity("Length", length));
    profile
        .area()
        .map(area -> area.value().si())
        .ifPresent(
            area -> {
              measured.add(Fact.area("CrossSectionArea", rounded(area)));
              measured.add(Fact.volume("NetVolume", rounded(area.times(length.metres()))));
            });
    profile
        .massPerLength()
        .map(mass -> mass.value().si())
        .ifPresent(
            mass -> measured.add(Fact.mass("NetWeight", rounded(mass.times(length.metres())))));
    told.quantities(of, "Qto_MemberBaseQuantities", measured);
  }

  void lite(StepValue.Reference of, Cell cell, String mark) {
    List<Fact> common = new ArrayList<>();
    cell.glass().ifPresent(glass -> common.add(Fact.identifier("Reference", glass.name())));
    common.add(Fact.truth("IsExternal", IfcModel.external(layout)));
    cell.glass().flatMap(Part.Glass::uFactor).ifPresent(u -> common.add(transmittance(u.value())));
    told.properties(of, "Pset_PlateCommon", common);
    GlassSizes sizes = GlassSizes.of(cell, units);
    List<Fact> own = new ArrayList<>();
    own.add(Fact.identifier("Mark", mark));
    own.add(Fact.label("Glass", cell.use().map(use -> use.glass().value()).orElse("")));
    own.add(Fact.length("OrderWidth", sizes.orderWidth()));
    own.add(Fact.length("OrderHeight", sizes.orderHeight()));
    cell.use()
        .ifPresent(
            use -> {
              own.add(Fact.label("Kind", use.vision() ? "vision" : "spandrel"));
              own.add(Fact.truth("Operable", use.operable()));
            });
    cell.glass().ifPresent(glass -> own.add(Fact.truth("SafetyRated", glass.safety().value())));
    own.add(Fact.label("Face", faces.name(faces.of(cell))));
    own.add(
        Fact.label("Shape", cell.rectangular() ? "rectangle" : "bounding rectangle, not checked"));
    told.properties(of, "Mullwright_Lite", own);
    List<Fact> measured = new ArrayList<>();
    Optional<Length> thickness = cell.glass().flatMap(PartFacts::thickness);
    thickness.ifPresent(by -> measured.add(Fact.quantity("Width", by)));
    measured.add(Fact.quantity("Perimeter", cell.glassWidth().plus(cell.glassHeight()).times(2)));
    Rational area = sizes.area().si();
    measured.add(Fact.area("NetArea", rounded(area)));
    thickness.ifPresent(
        by -> measured.add(Fact.volume("NetVolume", rounded(area.times(by.metres())))));
    sizes.mass().ifPresent(mass -> measured.add(Fact.mass("NetWeight", rounded(mass.si()))));
    told.quantities(of, "Qto_PlateBaseQuantities", measured);
  }

  void opening(StepValue.Reference of, Cell cell, Grid.Opening opening) {
    told.properties(
        of,
        "Mullwright_Opening",
        List.of(
            Fact.truth("ByOthers", opening.byOthers()),
            Fact.length("DaylightWidth", cell.daylightWidth()),
            Fact.length("DaylightHeight", cell.daylightHeight()),
            Fact.label("Face", faces.name(faces.of(cell)))));
  }

  void anchor(StepValue.Reference of, PlacedAnchor anchor) {
    AnchorUse use = anchor.use();
    List<Fact> facts = new ArrayList<>();
    facts.add(Fact.label("Use", use.kind().spelling()));
    use.part().ifPresent(part -> facts.add(Fact.label("Part", part.value())));
    use.floor()
        .ifPresent(
            floor ->
                facts.add(Fact.label("Floor", layout.wall().grid().floors().get(floor).name())));
    facts.add(Fact.length("Height", anchor.y()));
    use.isolation().ifPresent(by -> facts.add(Fact.label("IsolatedBy", by.value())));
    use.bolted()
        .ifPresent(
            fixing ->
                facts.add(Fact.label("Bolts", fixing.count() + " x " + fixing.fastener().value())));
    told.properties(of, "Mullwright_Anchor", facts);
  }

  private static Fact transmittance(Quantity u) {
    return Fact.measure("ThermalTransmittance", "IFCTHERMALTRANSMITTANCEMEASURE", rounded(u.si()));
  }

  /** How thick a make-up is, if it has a layer. */
  static Optional<Length> thickness(Part.Glass glass) {
    return glass.layers().stream().map(Part.Layer::thickness).reduce(Length::plus);
  }

  private static BigDecimal rounded(Rational value) {
    return value.toDecimal(DECIMALS, RoundingMode.HALF_EVEN);
  }

  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }
}
