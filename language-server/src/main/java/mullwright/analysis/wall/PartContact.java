package mullwright.analysis.wall;

import java.util.Optional;
import mullwright.analysis.metal.ContactRule;
import mullwright.analysis.metal.GalvanicSeries;
import mullwright.analysis.metal.Material;
import mullwright.analysis.metal.MetalContact;
import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.quantity.Kind;

/**
 * A part that touches a vertical's profile, and whether the two metals need something between.
 *
 * @param part the part's name
 * @param metal its metal as the catalog names it
 * @param profile the profile's name
 * @param profileMetal its metal
 * @param fastener true for a bolt, which passes through what isolates
 * @param isolated true if the text puts an isolation between
 * @param result the decision; empty if one of the two metals is not known by its name
 */
public record PartContact(
    String part,
    Given<String> metal,
    String profile,
    Given<String> profileMetal,
    boolean fastener,
    boolean isolated,
    Optional<MetalContact.Result> result) {

  /** True if the pair is in that state. */
  public boolean is(MetalContact.State state) {
    return result.filter(found -> found.state() == state).isPresent();
  }

  /** Difference of potential [V] as a number, where it decided. */
  public Optional<Derivation> difference() {
    return result
        .filter(found -> found.rule() == ContactRule.POTENTIAL)
        .flatMap(
            found ->
                found.greatestDifference().isPresent()
                    ? Optional.of(
                        GalvanicSeries.DIFFERENCE.explain(
                            "difference of potential, in volts",
                            found.greatestDifference().getAsDouble(),
                            Kind.RATIO,
                            index("first anodic index", found.input().first()),
                            index("second anodic index", found.input().second())))
                    : Optional.empty());
  }

  /** Threshold of the exposure [V] as a number, where it decided. */
  public Optional<Derivation> threshold() {
    return result
        .filter(found -> found.rule() == ContactRule.POTENTIAL)
        .map(
            found ->
                Derivation.computed(
                    "threshold, in volts",
                    found.input().exposure().threshold(),
                    Kind.RATIO,
                    "by exposure: " + found.input().exposure().words(),
                    "anodic-index practice"));
  }

  private static Derivation index(String name, Material material) {
    return Derivation.computed(
        name,
        material.anodicIndex().orElse(0),
        Kind.RATIO,
        material.words(),
        "anodic-index practice");
  }
}
