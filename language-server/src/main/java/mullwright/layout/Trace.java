package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/** The places and widths that derivations of lengths start from, each with its origin. */
final class Trace {
  /** Source of a formula that is nothing but sums. */
  static final String GEOMETRY = "plain geometry";

  /** Source of a formula the trade goes by. */
  static final String PRACTICE = "common practice";

  private final Frame frame;

  Trace(Frame frame) {
    this.frame = frame;
  }

  /** A length the catalog or the wall gives, stated or taken as a default. */
  static Derivation given(String name, Given<Length> given) {
    return given.assumed()
        ? Derivation.assumed(name, given.value(), given.source())
        : Derivation.stated(name, given.value(), given.origin());
  }

  /** A line's centre: {@code line C}. */
  Derivation line(int index) {
    Grid.Line line = frame.grid.lines().get(index);
    String name = "line " + line.name();
    Length centre = frame.lines.x(index);
    if (centre.equals(line.x())) {
      return Derivation.stated(name, line.x(), line.origin());
    }
    Derivation edge = Derivation.stated("outer edge", line.x(), line.origin());
    Widths widths =
        frame.wall.members().verticals().stream()
            .filter(vertical -> vertical.line() == index)
            .map(vertical -> frame.profiles.widths(vertical.profile().value()))
            .findFirst()
            .orElse(Widths.UNKNOWN);
    return Derivation.computed(
        name,
        centre,
        line.x().isShorterThan(centre) ? "outer edge + ½ face" : "outer edge − ½ face",
        GEOMETRY,
        edge,
        given("face", widths.profile().orElseThrow().face()));
  }

  /** From line to line. */
  Derivation spacing(int left, int right) {
    Derivation from = line(left);
    Derivation to = line(right);
    return Derivation.computed(
        "line spacing",
        frame.lines.x(right).minus(frame.lines.x(left)),
        to.name() + " − " + from.name(),
        GEOMETRY,
        to,
        from);
  }

  /** A place the text states, taken back to its floor if it is measured from one. */
  Derivation place(String name, Height height) {
    Optional<Grid.Floor> floor =
        height
            .base()
            .flatMap(
                base ->
                    frame.grid.floors().stream()
                        .filter(known -> known.name().equals(base))
                        .findFirst());
    boolean named = name.equals(floor.map(Grid.Floor::name).orElse(""));
    if (floor.isEmpty()
        || named
        || height.offset().signum() == 0
        || !floor.get().elevation().value().plus(height.offset()).equals(height.elevation())) {
      return Derivation.stated(name, height.elevation(), height.origin());
    }
    boolean above = height.offset().signum() > 0;
    String distance = above ? "distance above" : "distance below";
    return Derivation.computed(
        name,
        height.elevation(),
        floor.get().name() + (above ? " + " : " − ") + distance,
        GEOMETRY,
        given(floor.get().name(), floor.get().elevation()),
        Derivation.stated(distance, height.offset().abs(), height.origin()));
  }

  /** Centre of a row in a bay at that place along the wall: {@code row R2}. */
  Derivation row(Bar bar, Length x) {
    Grid.Row row = frame.grid.rows().get(bar.row());
    String name = "row " + row.name();
    Derivation centre =
        bar.line().isLevel() ? place(name, row.left()) : sloped(name, row, bar.line(), x);
    if (bar.shift().signum() == 0) {
      return centre;
    }
    Derivation edge = renamed("outer edge", centre);
    Derivation face = given("face", bar.widths().profile().orElseThrow().face());
    String sign = bar.shift().signum() > 0 ? "outer edge + " : "outer edge − ";
    return bar.line().isLevel()
        ? Derivation.computed(name, bar.yAt(x), sign + "½ face", GEOMETRY, edge, face)
        : Derivation.computed(
            name, bar.yAt(x), sign + "½ face ÷ cos(slope)", GEOMETRY, edge, face, slope(bar));
  }

  private static Derivation renamed(String name, Derivation same) {
    return new Derivation(
        name,
        same.value(),
        same.kind(),
        same.formula(),
        same.inputs(),
        same.source(),
        same.standing(),
        same.locus());
  }

  private Derivation sloped(String name, Grid.Row row, RowLine line, Length x) {
    Rational share = Rational.of(x.minus(line.x()).ticks(), line.run().ticks());
    return Derivation.computed(
        name,
        line.yAt(x),
        "left height + share of the reach × (right height − left height)",
        GEOMETRY,
        place("left height", row.left()),
        Derivation.computed(
            "share of the reach",
            Quantity.of(share),
            Kind.RATIO,
            "distance from its left end ÷ reach",
            GEOMETRY,
            Derivation.computed(
                "distance from its left end",
                x.minus(line.x()),
                "here − left end of the row",
                GEOMETRY),
            Derivation.computed("reach", line.run(), "right end − left end of the row", GEOMETRY)),
        place("right height", row.right()));
  }

  /** How steep a row is: the angle from the level. */
  static Derivation slope(Bar bar) {
    RowLine line = bar.line();
    double degrees =
        StrictMath.toDegrees(StrictMath.atan2(line.rise().abs().toMetres(), line.run().toMetres()));
    return Derivation.computed(
        "slope",
        degrees,
        Kind.ANGLE,
        "atan(rise ÷ reach)",
        GEOMETRY,
        Derivation.computed(
            "rise", line.rise().abs(), "right height − left height, without its sign", GEOMETRY),
        Derivation.computed("reach", line.run(), "right end − left end of the row", GEOMETRY));
  }

  /** Lower or upper edge of a horizontal's face. */
  Derivation edge(String name, Bar bar, Length x, boolean lower) {
    Derivation centre = row(bar, x);
    Derivation face = given("face of " + profile(bar), bar.widths().profile().orElseThrow().face());
    String formula = centre.name() + (lower ? " − ½ " : " + ½ ") + face.name();
    Length value = lower ? bar.lowerEdge(x) : bar.upperEdge(x);
    return bar.line().isLevel()
        ? Derivation.computed(name, value, formula, PRACTICE, centre, face)
        : Derivation.computed(
            name, value, formula + " ÷ cos(slope)", PRACTICE, centre, face, slope(bar));
  }

  private static String profile(Bar bar) {
    return bar.widths().profile().orElseThrow().name();
  }

  /** Height of an anchor's bolt line, or of the row's centre it sits at. */
  Derivation anchor(PlacedAnchor anchor) {
    AnchorUse use = anchor.use();
    for (Side side : Side.values()) {
      Optional<Bar> bar = frame.bars.named(use.place(), frame.lines.bay(use.line(), side));
      if (bar.isPresent()) {
        return row(bar.get(), frame.lines.x(use.line()));
      }
    }
    if (use.heightStated() || use.floor().isEmpty() || anchor.part().isEmpty()) {
      return place("bolt line", use.place());
    }
    Grid.Floor floor = frame.grid.floors().get(use.floor().get());
    Given<Part.BoltLine> bolt = anchor.part().get().boltLine();
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(given(floor.name(), floor.elevation()));
    String formula = floor.name();
    if (!bolt.value().fromTop()) {
      inputs.add(given("slab", floor.slab().orElseThrow()));
      formula += " − slab";
    }
    boolean below = bolt.value().below();
    Given<Length> distance =
        new Given<>(bolt.value().distance(), bolt.origin(), bolt.assumed(), bolt.source());
    inputs.add(given("distance of bolt line", distance));
    formula += (below ? " − " : " + ") + "distance of bolt line";
    return Derivation.computed(
        "bolt line", anchor.y(), formula, GEOMETRY, inputs.toArray(Derivation[]::new));
  }
}
