package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.anchor.AnchorCouple;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * What the weight on an anchor does at the slab edge, off whose line it hangs: a moment, and a pull
 * in the fastener over the height of the part.
 *
 * @param distance from the slab edge to the back of the vertical
 * @param height of the part along the vertical, the arm of the couple
 * @param couple the numbers
 */
public record SlabCouple(SlabDistance distance, Given<Length> height, AnchorCouple.Result couple) {

  /**
   * The couple at an anchor; empty if it carries no weight, its floor does not state the slab edge,
   * or its part not its height.
   */
  public static Optional<SlabCouple> of(WallAnalysis analysis, PlacedAnchor anchor) {
    double weight = analysis.loadOn(anchor).map(AnchorLoad::down).orElse(0.0);
    Optional<SlabDistance> distance = SlabDistance.of(analysis.layout(), anchor);
    Optional<Given<Length>> height = anchor.part().flatMap(Part.Anchor::height);
    if (weight <= 0 || distance.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    double off = distance.get().value().toMetres();
    return AnchorCouple.solve(
            new AnchorCouple.Input(weight, Math.abs(off), height.get().value().toMetres()))
        .solved()
        .map(couple -> new SlabCouple(distance.get(), height.get(), couple));
  }

  void numbers(PlacedAnchor anchor, List<FrameNumber> into) {
    into.add(
        FrameNumber.free(
            "moment at the slab edge",
            anchor.name(),
            couple.moment(),
            Kind.MOMENT,
            "weight",
            () ->
                AnchorCouple.MOMENT.explain(
                    "moment at the slab edge", couple.moment(), Kind.MOMENT, weight(), off())));
    into.add(
        FrameNumber.free(
            "pull in the slab's fasteners by weight",
            anchor.name(),
            couple.pull(),
            Kind.FORCE,
            "weight",
            () ->
                AnchorCouple.PULL.explain(
                    "pull in the slab's fasteners by weight",
                    couple.pull(),
                    Kind.FORCE,
                    weight(),
                    off(),
                    Inputs.length("arm of the couple", height))));
  }

  private Derivation weight() {
    return Derivation.computed(
        "weight", couple.input().weight(), Kind.FORCE, "force down on the anchor", "statics");
  }

  private Derivation off() {
    Derivation measured = distance.explain();
    return Derivation.computed(
        "eccentricity",
        couple.input().eccentricity(),
        Kind.LENGTH,
        measured.name() + ", without its sign",
        "geometry",
        measured);
  }
}
