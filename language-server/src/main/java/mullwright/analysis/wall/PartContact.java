package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.analysis.metal.ContactRule;
import mullwright.analysis.metal.Exposure;
import mullwright.analysis.metal.GalvanicSeries;
import mullwright.analysis.metal.Material;
import mullwright.analysis.metal.MetalContact;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Part;
import mullwright.model.PartKind;
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

  /** What touches the vertical at an anchor or clip: the part, its spread plate, its bolts. */
  public static List<PartContact> of(WallLayout layout, PlacedAnchor anchor) {
    List<PartContact> contacts = new ArrayList<>();
    if (anchor.vertical() < 0) {
      return contacts;
    }
    VerticalPiece piece = layout.verticals().get(anchor.vertical());
    Exposure exposure = exposure(layout);
    AnchorUse use = anchor.use();
    boolean isolated = use.isolation().isPresent();
    anchor
        .part()
        .ifPresent(
            part ->
                contacts.add(contact(part.name(), part.metal(), piece, exposure, isolated, false)));
    clip(layout, use)
        .ifPresent(
            clip ->
                contacts.add(contact(clip.name(), clip.metal(), piece, exposure, isolated, false)));
    use.spread()
        .flatMap(name -> layout.catalog().find(Part.SpreadPlate.class, name.value()))
        .ifPresent(
            plate ->
                contacts.add(
                    contact(plate.name(), plate.metal(), piece, exposure, isolated, false)));
    use.bolted()
        .flatMap(fixing -> layout.catalog().find(Part.Fastener.class, fixing.fastener().value()))
        .ifPresent(
            bolt -> contacts.add(contact(bolt.name(), bolt.metal(), piece, exposure, false, true)));
    return contacts;
  }

  /** What touches where reinforcement stands in a vertical. */
  public static Optional<PartContact> of(
      WallLayout layout, Members.Reinforce reinforce, VerticalPiece piece) {
    return layout
        .catalog()
        .find(Part.Reinforcement.class, reinforce.part().value())
        .map(
            part ->
                contact(
                    part.name(),
                    part.metal(),
                    piece,
                    exposure(layout),
                    reinforce.isolation().isPresent(),
                    false));
  }

  private static Optional<Part.Clip> clip(WallLayout layout, AnchorUse use) {
    if (use.kind() != AnchorUse.Kind.CLIP) {
      return Optional.empty();
    }
    return use.part()
        .or(
            () ->
                layout
                    .wall()
                    .system()
                    .flatMap(s -> Optional.ofNullable(s.parts().get(PartKind.CLIP))))
        .flatMap(name -> layout.catalog().find(Part.Clip.class, name.value()));
  }

  private static PartContact contact(
      String part,
      Given<String> metal,
      VerticalPiece piece,
      Exposure exposure,
      boolean isolated,
      boolean fastener) {
    Given<String> profileMetal = piece.profile().metal();
    Optional<Material> first = GalvanicSeries.find(metal.value());
    Optional<Material> second = GalvanicSeries.find(profileMetal.value());
    Optional<MetalContact.Result> result = Optional.empty();
    if (first.isPresent() && second.isPresent()) {
      MetalContact.Areas areas =
          fastener ? MetalContact.Areas.FIRST_SMALL : MetalContact.Areas.SIMILAR;
      result =
          Optional.of(
              MetalContact.solve(
                  new MetalContact.Input(
                      first.get(), second.get(), areas, exposure, false, isolated)));
    }
    return new PartContact(
        part, metal, piece.profile().name(), profileMetal, fastener, isolated, result);
  }

  // of the two classes an "indoor" wall may be in, the wetter
  private static Exposure exposure(WallLayout layout) {
    return switch (layout.wall().criteria().exposure().value().toLowerCase(Locale.ROOT)) {
      case "coastal" -> Exposure.COASTAL;
      case "indoor", "sheltered" -> Exposure.UNCONDITIONED;
      default -> Exposure.OUTDOOR;
    };
  }

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
