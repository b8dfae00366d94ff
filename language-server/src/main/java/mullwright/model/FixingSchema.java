package mullwright.model;

import static mullwright.model.PropertyKinds.PRACTICE;
import static mullwright.model.PropertyKinds.hole;
import static mullwright.model.PropertyKinds.metal;
import static mullwright.model.PropertyKinds.of;

import java.util.Map;

/** Properties of clips, anchors and what fastens them. */
final class FixingSchema {
  private FixingSchema() {}

  static void addTo(Map<PartKind, PartSchema> parts) {
    PartSchema.put(
        parts,
        PartKind.CLIP,
        false,
        metal("aluminium"),
        of("projection", "how far it stands out", "LENGTH"),
        hole());
    PartSchema.put(
        parts,
        PartKind.ANCHOR,
        false,
        of("use", "what it may hold; both unless stated", "dead-load|wind-load"),
        metal("steel"),
        of(
                "bolt-line",
                "where its bolts sit against the slab",
                "LENGTH below|above [top|underside] [of] [slab]")
            .assumed("0\" below top of slab", PRACTICE),
        of("reach", "nearest and furthest slab edge it spans", "LENGTH to LENGTH"),
        of("slot", "length of its slots", "LENGTH"),
        hole(),
        of("height", "along the mullion", "LENGTH"),
        of("capacity", "what the engineer gave, by direction", "FORCE down|up|in|out").repeated());
    PartSchema.put(
        parts,
        PartKind.SPREAD_PLATE,
        false,
        metal("steel"),
        of("thickness", "how thick it is", "LENGTH"));
    PartSchema.put(
        parts,
        PartKind.FASTENER,
        true,
        metal(""),
        of("diameter", "of the shank", "LENGTH"),
        of("length", "under the head", "LENGTH"),
        of("head", "form of the head", "WORDS"));
  }
}
