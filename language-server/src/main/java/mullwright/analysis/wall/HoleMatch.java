package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mullwright.analysis.fastener.HolePair;
import mullwright.analysis.fastener.ToleranceStack;
import mullwright.derivation.Derivation;
import mullwright.layout.SystemPart;
import mullwright.layout.WallLayout;
import mullwright.model.Fabrication;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * Whether a hole of a horizontal meets its hole of the shear block, and how much clearance the
 * shop's tolerances leave.
 *
 * <p>Both drilled by the block's pattern they meet as drawn; a profile with a template of its own
 * may miss. Off by tolerance are the horizontal's cut end and the two holes, as far as the wall
 * states those tolerances.
 *
 * @param block the block's hole, {@code horizontal} the horizontal's hole nearest to it
 * @param fastener what goes through both
 * @param offset of the centres as drawn
 * @param play how far they may be apart: half of what each hole is wider than the fastener;
 *     negative if the fastener does not pass a hole at all
 * @param worst sum of the tolerances; empty if none is stated
 * @param statistical root of the sum of their squares; empty for fewer than three
 */
public record HoleMatch(
    Part.Hole block,
    Part.Hole horizontal,
    Given<Length> fastener,
    Length offset,
    Length play,
    Optional<Length> worst,
    Optional<Length> statistical) {

  /** What a shop is asked to hold where the wall states nothing: common practice. */
  public static final Length USUAL_TOLERANCE = Length.ofInches(1, 32);

  /** Every hole of the block against a horizontal's, by the tolerances the wall states. */
  public static List<HoleMatch> of(WallLayout layout, Part.Profile profile) {
    Fabrication shop = layout.wall().fabrication();
    return of(layout, profile, shop.cutTolerance(), shop.holeTolerance());
  }

  /** The same, with the usual tolerance for each the wall does not state. */
  public static List<HoleMatch> expected(WallLayout layout, Part.Profile profile) {
    Fabrication shop = layout.wall().fabrication();
    Given<Length> usual = Given.assumed(USUAL_TOLERANCE, layout.wall().origin(), "common practice");
    return of(
        layout,
        profile,
        Optional.of(shop.cutTolerance().orElse(usual)),
        Optional.of(shop.holeTolerance().orElse(usual)));
  }

  private static List<HoleMatch> of(
      WallLayout layout,
      Part.Profile profile,
      Optional<Given<Length>> cut,
      Optional<Given<Length>> drilled) {
    List<HoleMatch> matches = new ArrayList<>();
    Optional<Part.ShearBlock> block = SystemPart.shearBlock(layout);
    for (Part.Hole hole : block.map(Part.ShearBlock::holes).orElse(List.of())) {
      Part.Hole other = nearest(profile.holes(), hole).orElse(hole);
      hole.fastener()
          .or(other::fastener)
          .flatMap(name -> layout.catalog().find(PartKind.FASTENER, name))
          .filter(Part.Fastener.class::isInstance)
          .flatMap(part -> ((Part.Fastener) part).diameter())
          .ifPresent(diameter -> matches.add(match(hole, other, diameter, cut, drilled)));
    }
    return matches;
  }

  private static HoleMatch match(
      Part.Hole block,
      Part.Hole other,
      Given<Length> fastener,
      Optional<Given<Length>> cut,
      Optional<Given<Length>> drilled) {
    Length diameter = fastener.value();
    Length play =
        block.diameter().minus(diameter).half().plus(other.diameter().minus(diameter).half());
    Length narrower = Length.min(block.diameter(), other.diameter()).minus(diameter);
    if (narrower.signum() < 0) {
      play = Length.min(play, narrower);
    }
    List<Double> terms = new ArrayList<>();
    cut.ifPresent(off -> terms.add(off.value().toMetres()));
    drilled.ifPresent(
        off -> {
          terms.add(off.value().toMetres());
          terms.add(off.value().toMetres());
        });
    Optional<ToleranceStack.Result> stack =
        terms.isEmpty()
            ? Optional.empty()
            : ToleranceStack.solve(new ToleranceStack.Input(terms, 1)).solved();
    OptionalDouble statistical =
        stack.map(ToleranceStack.Result::statistical).orElse(OptionalDouble.empty());
    return new HoleMatch(
        block,
        other,
        fastener,
        distance(block, other),
        play,
        stack.map(sums -> Length.nearest(sums.worst())),
        statistical.isPresent()
            ? Optional.of(Length.nearest(statistical.getAsDouble()))
            : Optional.empty());
  }

  private static Optional<Part.Hole> nearest(List<Part.Hole> holes, Part.Hole to) {
    Part.Hole nearest = null;
    for (Part.Hole hole : holes) {
      boolean nearer = nearest == null || distance(hole, to).isShorterThan(distance(nearest, to));
      nearest = nearer ? hole : nearest;
    }
    return Optional.ofNullable(nearest);
  }

  private static Length distance(Part.Hole one, Part.Hole other) {
    return Length.nearest(
        Math.hypot(
            one.along().minus(other.along()).toMetres(),
            one.back().minus(other.back()).toMetres()));
  }

  /** True if the fastener passes both as drawn. */
  public boolean meets() {
    return !offset.isLongerThan(play);
  }

  /** Play left as drawn. */
  public Length left() {
    return play.minus(offset);
  }

  /** Play left when the tolerances add up in the worst way; empty if none is stated. */
  public Optional<Length> leftAtWorst() {
    return worst.map(sum -> left().minus(sum));
  }

  /** Play left when they add up as they likely do; empty for fewer than three. */
  public Optional<Length> leftLikely() {
    return statistical.map(sum -> left().minus(sum));
  }

  /** The play with how it came about. */
  public Derivation explainPlay() {
    return Derivation.computed(
        "play",
        play,
        HolePair.PLAY.words(),
        HolePair.PLAY.source(),
        Derivation.stated("first hole", block.diameter(), block.origin()),
        Derivation.stated("second hole", horizontal.diameter(), horizontal.origin()),
        Inputs.length("fastener diameter", fastener));
  }

  /** The offset as drawn, with how it came about. */
  public Derivation explainOffset() {
    return Derivation.computed("offset", offset, "from centre to centre, as drawn", "geometry");
  }

  /** The sum of the tolerances, with how it came about. */
  public Optional<Derivation> explainWorst() {
    return worst.map(
        sum ->
            ToleranceStack.WORST.explain(
                "worst case of the tolerances", sum.toMetres(), Kind.LENGTH));
  }
}
