package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.Outcome;
import mullwright.analysis.movement.Expansion;
import mullwright.analysis.movement.MetalTemperature;
import mullwright.analysis.movement.SleeveEngagement;
import mullwright.analysis.movement.SpliceGap;
import mullwright.analysis.movement.SpliceMovement;
import mullwright.analysis.movement.SpliceRange;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * The gap a splice of a wall needs: which anchors move against one another, and by how much.
 *
 * <p>The two lengths grow from the dead-load anchors nearest to the joint on either side; the slab
 * that sinks is that of the upper one. Tolerance {@link #TOLERANCE} and residual gap 0 are defaults
 * by common practice.
 */
public final class JointMovement {
  /** Tolerance of cutting and erecting: 1/16" (common practice). */
  public static final Length TOLERANCE = Length.ofInches(1, 16);

  private static final String PRACTICE = "common practice";

  private final SpliceJoint joint;
  private final PlacedAnchor lower;
  private final PlacedAnchor upper;
  private final Given<Criteria.Temperature> temperature;
  private final Optional<Given<Length>> slab;
  private final SpliceGap.Result result;
  private final Optional<Part.Sleeve> sleeve;

  private JointMovement(
      SpliceJoint joint,
      PlacedAnchor lower,
      PlacedAnchor upper,
      Given<Criteria.Temperature> temperature,
      Optional<Given<Length>> slab,
      SpliceGap.Result result,
      Optional<Part.Sleeve> sleeve) {
    this.joint = joint;
    this.lower = lower;
    this.upper = upper;
    this.temperature = temperature;
    this.slab = slab;
    this.result = result;
    this.sleeve = sleeve;
  }

  /**
   * The movement at a splice; empty if the project gives no temperature of the metal, or if one of
   * the two lengths has no dead-load anchor to grow from.
   */
  public static Optional<JointMovement> of(WallAnalysis analysis, SpliceJoint joint) {
    Criteria criteria = analysis.layout().wall().criteria();
    List<VerticalPiece> verticals = analysis.layout().verticals();
    Optional<PlacedAnchor> lower = growsFrom(analysis, verticals.get(joint.below()), joint);
    Optional<PlacedAnchor> upper = growsFrom(analysis, verticals.get(joint.above()), joint);
    if (criteria.temperature().isEmpty() || lower.isEmpty() || upper.isEmpty()) {
      return Optional.empty();
    }
    Given<Criteria.Temperature> temperature = criteria.temperature().get();
    Optional<Given<Length>> slab = slab(analysis, upper.get());
    double distance = upper.get().y().minus(lower.get().y()).toMetres();
    SpliceMovement movement =
        new SpliceMovement(
            expansion(verticals.get(joint.below())).coefficient(),
            distance,
            new MetalTemperature(
                temperature.value().least().toSi(),
                temperature.value().most().toSi(),
                temperature.value().set().toSi()),
            slab.map(given -> given.value().toMetres()).orElse(0.0),
            0,
            0);
    Outcome<SpliceGap.Result> gap =
        SpliceGap.solve(new SpliceGap.Input(movement, TOLERANCE.toMetres(), 0));
    return gap.solved()
        .map(
            solved ->
                new JointMovement(
                    joint,
                    lower.get(),
                    upper.get(),
                    temperature,
                    slab,
                    solved,
                    SystemPart.sleeve(analysis.layout(), joint)));
  }

  /** The dead-load anchor a length grows from at a joint: its nearest. */
  static Optional<PlacedAnchor> growsFrom(
      WallAnalysis analysis, VerticalPiece piece, SpliceJoint joint) {
    PlacedAnchor nearest = null;
    for (PlacedAnchor anchor : analysis.anchorsOn(piece)) {
      if (anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD
          && (nearest == null || off(anchor, joint) < off(nearest, joint))) {
        nearest = anchor;
      }
    }
    return Optional.ofNullable(nearest);
  }

  static Expansion expansion(VerticalPiece piece) {
    boolean steel = Stiffness.modulus(piece.profile().metal().value()) == Stiffness.STEEL;
    return steel ? Expansion.STEEL : Expansion.ALUMINUM;
  }

  private static double off(PlacedAnchor anchor, SpliceJoint joint) {
    return Math.abs(anchor.y().minus(joint.y()).toMetres());
  }

  /** How far the slab of an anchor sinks, if the project says so. */
  static Optional<Given<Length>> slab(WallAnalysis analysis, PlacedAnchor upper) {
    List<Grid.Floor> floors = analysis.layout().wall().grid().floors();
    var byFloor = analysis.layout().wall().criteria().slabDeflection();
    Optional<Given<Length>> own =
        upper.use().floor().map(floor -> byFloor.get(floors.get(floor).name()));
    return own.or(() -> Optional.ofNullable(byFloor.get("")));
  }

  /** The splice. */
  public SpliceJoint joint() {
    return joint;
  }

  /** The dead-load anchor the lower length grows from. */
  public PlacedAnchor lower() {
    return lower;
  }

  /** The dead-load anchor the upper length grows from. */
  public PlacedAnchor upper() {
    return upper;
  }

  /** True if the project says how far the slab sinks. */
  public boolean slabStated() {
    return slab.isPresent();
  }

  /** The numbers. */
  public SpliceGap.Result result() {
    return result;
  }

  /** True if the gap as stated is less than what must fit. */
  public boolean tooSmall() {
    // a tenth of a micrometre keeps binary images of exact sums from deciding
    return joint.splice().gap().value().toMetres() < result.needed() - 1e-7;
  }

  /** The gap as stated. */
  public Derivation gap() {
    return Inputs.length("gap", joint.splice().gap());
  }

  /** The gap needed, with everything put in. */
  public Derivation needed() {
    Derivation slabDown =
        slab.map(given -> Inputs.length("slab deflection", given))
            .orElseGet(
                () ->
                    Derivation.assumed(
                        "slab deflection", Length.ZERO, "not stated, so taken as none"));
    return SpliceGap.NEEDED.explain(
        "gap needed",
        result.needed(),
        Kind.LENGTH,
        closing(),
        slabDown,
        Derivation.assumed("shortening", Length.ZERO, "not asked for, so taken as none"),
        Derivation.assumed("tolerance", TOLERANCE, PRACTICE),
        Derivation.assumed("residual gap", Length.ZERO, PRACTICE));
  }

  /** What heat alone closes. */
  public Derivation closing() {
    return SpliceGap.CLOSING.explain(
        "thermal closing",
        result.thermalClosing(),
        Kind.LENGTH,
        coefficient(),
        distance(),
        temperature("hottest metal", temperature.value().most()),
        temperature("metal when set", temperature.value().set()));
  }

  private Derivation temperature(String name, Quantity value) {
    return temperature.assumed()
        ? Derivation.assumed(name, value, Kind.TEMPERATURE, temperature.source())
        : Derivation.stated(name, value, Kind.TEMPERATURE, temperature.origin());
  }

  /** How wide the gap is on the hottest and the coldest day, and at the very worst. */
  public SpliceRange.Result range() {
    return SpliceRange.solve(
            new SpliceRange.Input(
                joint.splice().gap().value().toMetres(),
                result.input().movement(),
                TOLERANCE.toMetres()))
        .solved()
        .orElseThrow();
  }

  /** The gap on the hottest day, by heat alone. */
  public Derivation hottestDay() {
    return SpliceRange.HOTTEST_DAY.explain(
        "gap on the hottest day", range().hottestDay(), Kind.LENGTH, whenSet(), closing());
  }

  /** The gap on the coldest day, by cold alone. */
  public Derivation coldestDay() {
    return SpliceRange.COLDEST_DAY.explain(
        "gap on the coldest day", range().coldestDay(), Kind.LENGTH, whenSet(), opening());
  }

  private Derivation whenSet() {
    return Inputs.length("gap when set", joint.splice().gap());
  }

  /** What cold alone opens. */
  private Derivation opening() {
    return SpliceGap.OPENING.explain(
        "thermal opening",
        result.thermalOpening(),
        Kind.LENGTH,
        coefficient(),
        distance(),
        temperature("metal when set", temperature.value().set()),
        temperature("coldest metal", temperature.value().least()));
  }

  private Derivation coefficient() {
    return Derivation.assumed(
        "coefficient of expansion",
        Quantity.ofSi(result.input().movement().expansion(), Kind.THERMAL_EXPANSION),
        Kind.THERMAL_EXPANSION,
        Expansion.SOURCE);
  }

  private Derivation distance() {
    return Derivation.computed(
        "distance between dead-load supports",
        upper.y().minus(lower.y()),
        "height of " + upper.name() + " − height of " + lower.name(),
        "conventions of measure");
  }

  /** Its numbers for whoever shows them. */
  void numbers(List<FrameNumber> into) {
    SpliceRange.Result range = range();
    into.add(
        FrameNumber.held(
            "gap needed",
            joint.name(),
            result.needed(),
            joint.splice().gap().value().toMetres(),
            Kind.LENGTH,
            "movement",
            this::needed,
            this::gap));
    into.add(
        FrameNumber.free(
            "gap on the hottest day",
            joint.name(),
            range.hottestDay(),
            Kind.LENGTH,
            "heat",
            this::hottestDay));
    into.add(
        FrameNumber.free(
            "gap on the coldest day",
            joint.name(),
            range.coldestDay(),
            Kind.LENGTH,
            "cold",
            this::coldestDay));
    sleeve
        .flatMap(part -> lap(part, range))
        .ifPresent(
            lap ->
                into.add(
                    FrameNumber.free(
                        "lap of the sleeve at the widest gap",
                        joint.name(),
                        lap.lapAtWidest(),
                        Kind.LENGTH,
                        "movement",
                        () -> lapAtWidest(lap))));
  }

  private Optional<SleeveEngagement.Result> lap(Part.Sleeve part, SpliceRange.Result range) {
    double gap = joint.splice().gap().value().toMetres();
    return SleeveEngagement.solve(
            new SleeveEngagement.Input(
                part.length().value().toMetres(),
                part.engagement().value().toMetres(),
                gap,
                range.greatest(),
                0))
        .solved();
  }

  private Derivation lapAtWidest(SleeveEngagement.Result lap) {
    Part.Sleeve part = sleeve.orElseThrow();
    return SleeveEngagement.LEAST_LAP.explain(
        "lap of the sleeve at the widest gap",
        lap.lapAtWidest(),
        Kind.LENGTH,
        Inputs.length("sleeve length", part.length()),
        Inputs.length("fixed end", part.engagement()),
        SpliceRange.GREATEST.explain(
            "greatest gap",
            lap.input().greatestGap(),
            Kind.LENGTH,
            whenSet(),
            opening(),
            Derivation.assumed(
                "upward slab movement", Length.ZERO, "not asked for, so taken as none"),
            Derivation.assumed("tolerance", TOLERANCE, PRACTICE)));
  }
}
