package mullwright.takeoff;

import java.util.List;
import java.util.Optional;
import mullwright.layout.ClipLegs;
import mullwright.layout.HorizontalsOnLine;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SystemPart;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Part;
import mullwright.model.PartKind;

/** Counts what holds the wall to the building: anchors, clips by form, plates, bolts, isolation. */
final class AnchorTakeoff {
  private final WallLayout layout;
  private final Faces faces;
  private final Tally tally;

  AnchorTakeoff(WallLayout layout, Faces faces, Tally tally) {
    this.layout = layout;
    this.faces = faces;
    this.tally = tally;
  }

  void count() {
    HorizontalsOnLine ends = new HorizontalsOnLine(layout);
    for (PlacedAnchor anchor : layout.anchors()) {
      AnchorUse use = anchor.use();
      int face = faces.ofLine(use.line());
      if (use.kind() == AnchorUse.Kind.CLIP) {
        clip(anchor, face, ends);
      } else {
        count("anchor", face, use.kind().spelling() + " anchor", use.part(), "", 1);
        List<Part.Hole> pattern = anchor.part().map(Part.Anchor::holes).orElse(List.of());
        if (use.bolted().isEmpty()) {
          pattern.forEach(hole -> bolt(face, hole.fastener(), "anchor bolt", 1));
        }
      }
      use.bolted().ifPresent(fixing -> bolts(face, fixing, "anchor bolt"));
      use.spread()
          .ifPresent(
              plate -> count("spread-plate", face, "spread plate", Optional.of(plate), "", 1));
      use.isolation()
          .ifPresent(
              pad -> count("isolation", face, "isolation at anchors", Optional.of(pad), "", 1));
      use.bedding()
          .ifPresent(
              bed -> count("isolation", face, "bedding at the slab", Optional.of(bed), "", 1));
    }
    for (Members.Bracket bracket : layout.wall().members().brackets()) {
      int face = faces.ofLine(bracket.line());
      count("bracket", face, "bracket", Optional.empty(), "", 1);
      bracket.bolted().ifPresent(fixing -> bolts(face, fixing, "bracket bolt"));
    }
    for (ReinforcingBar bar : ReinforcingBars.of(layout)) {
      isolation(bar);
    }
  }

  private void isolation(ReinforcingBar bar) {
    int face = faces.ofLine(layout.verticals().get(bar.vertical()).line());
    layout.wall().members().reinforcements().stream()
        .filter(reinforce -> reinforce.origin().equals(bar.origin()))
        .filter(reinforce -> reinforce.part().value().equals(bar.part()))
        .findFirst()
        .flatMap(Members.Reinforce::isolation)
        .ifPresent(
            pad ->
                tally.length(
                    thing("isolation", face, "isolation of reinforcement", pad.value(), ""),
                    1,
                    bar.length(),
                    Optional.empty()));
  }

  private void clip(PlacedAnchor anchor, int face, HorizontalsOnLine ends) {
    Optional<Given<String>> name = anchor.use().part();
    if (anchor.vertical() < 0) {
      return;
    }
    ClipLegs legs = ClipLegs.of(layout, anchor, ends);
    count("clip", face, "clip", name, legs.two() ? "two legs" : "one leg", 1);
    name.flatMap(found -> SystemPart.find(layout, PartKind.CLIP, Part.Clip.class, found))
        .ifPresent(
            clip ->
                clip.holes()
                    .forEach(
                        hole -> bolt(face, hole.fastener(), "clip fastener", legs.sides().size())));
  }

  private void bolts(int face, Members.Fixing fixing, String item) {
    tally.count(thing("fastener", face, item, fixing.fastener().value(), ""), fixing.count());
  }

  private void bolt(int face, Optional<String> fastener, String item, int count) {
    fastener.ifPresent(name -> tally.count(thing("fastener", face, item, name, ""), count));
  }

  private void count(
      String sort, int face, String item, Optional<Given<String>> part, String size, long count) {
    tally.count(thing(sort, face, item, part.map(Given::value).orElse(""), size), count);
  }

  private static Tally.Thing thing(String sort, int face, String item, String part, String size) {
    boolean named = !part.isEmpty() || sort.equals("bracket");
    return new Tally.Thing(
        Phase.ANCHORS, sort, face, item, part, size, named ? "" : "no part named");
  }
}
