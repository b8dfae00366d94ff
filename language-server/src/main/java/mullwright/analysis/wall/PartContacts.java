package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.analysis.metal.Exposure;
import mullwright.analysis.metal.GalvanicSeries;
import mullwright.analysis.metal.Material;
import mullwright.analysis.metal.MetalContact;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Part;

/**
 * What touches the verticals of one wall, and what comes of it. A pair of metals is judged once
 * however often it occurs.
 */
public final class PartContacts {
  private final WallLayout layout;
  private final Exposure exposure;
  private final Map<Pair, Optional<MetalContact.Result>> judged = new ConcurrentHashMap<>();

  private record Pair(String metal, String profileMetal, boolean fastener, boolean isolated) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Pair same
          && fastener == same.fastener
          && isolated == same.isolated
          && metal.equals(same.metal)
          && profileMetal.equals(same.profileMetal);
    }

    @Override
    public int hashCode() {
      return metal.hashCode() * 31 + profileMetal.hashCode();
    }
  }

  PartContacts(WallLayout layout) {
    this.layout = layout;
    this.exposure = exposure(layout);
  }

  /** What touches the vertical at an anchor or clip: the part, its spread plate, its bolts. */
  public List<PartContact> of(PlacedAnchor anchor) {
    List<PartContact> contacts = new ArrayList<>(3);
    if (anchor.vertical() < 0) {
      return contacts;
    }
    VerticalPiece piece = layout.verticals().get(anchor.vertical());
    AnchorUse use = anchor.use();
    boolean isolated = use.isolation().isPresent();
    anchor
        .part()
        .ifPresent(
            part -> contacts.add(contact(part.name(), part.metal(), piece, isolated, false)));
    clip(use)
        .ifPresent(
            clip -> contacts.add(contact(clip.name(), clip.metal(), piece, isolated, false)));
    use.spread()
        .flatMap(name -> layout.catalog().find(Part.SpreadPlate.class, name.value()))
        .ifPresent(
            plate -> contacts.add(contact(plate.name(), plate.metal(), piece, isolated, false)));
    use.bolted()
        .flatMap(fixing -> layout.catalog().find(Part.Fastener.class, fixing.fastener().value()))
        .ifPresent(bolt -> contacts.add(contact(bolt.name(), bolt.metal(), piece, false, true)));
    return contacts;
  }

  /** What touches where reinforcement stands in a vertical. */
  public Optional<PartContact> of(Members.Reinforce reinforce, VerticalPiece piece) {
    boolean isolated = reinforce.isolation().isPresent();
    return layout
        .catalog()
        .find(Part.Reinforcement.class, reinforce.part().value())
        .map(part -> contact(part.name(), part.metal(), piece, isolated, false));
  }

  private Optional<Part.Clip> clip(AnchorUse use) {
    if (use.kind() != AnchorUse.Kind.CLIP) {
      return Optional.empty();
    }
    return use.part().flatMap(name -> layout.catalog().find(Part.Clip.class, name.value()));
  }

  private PartContact contact(
      String part, Given<String> metal, VerticalPiece piece, boolean isolated, boolean fastener) {
    Given<String> profileMetal = piece.profile().metal();
    Optional<MetalContact.Result> result =
        judged.computeIfAbsent(
            new Pair(metal.value(), profileMetal.value(), fastener, isolated), this::judge);
    return new PartContact(
        part, metal, piece.profile().name(), profileMetal, fastener, isolated, result);
  }

  private Optional<MetalContact.Result> judge(Pair pair) {
    Optional<Material> first = GalvanicSeries.find(pair.metal);
    Optional<Material> second = GalvanicSeries.find(pair.profileMetal);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    MetalContact.Areas areas =
        pair.fastener ? MetalContact.Areas.FIRST_SMALL : MetalContact.Areas.SIMILAR;
    return Optional.of(
        MetalContact.solve(
            new MetalContact.Input(
                first.get(), second.get(), areas, exposure, false, pair.isolated)));
  }

  // of the two classes an "indoor" wall may be in, the wetter
  private static Exposure exposure(WallLayout layout) {
    return switch (layout.wall().criteria().exposure().value().toLowerCase(Locale.ROOT)) {
      case "coastal" -> Exposure.COASTAL;
      case "indoor", "sheltered" -> Exposure.UNCONDITIONED;
      default -> Exposure.OUTDOOR;
    };
  }
}
