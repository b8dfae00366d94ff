package mullwright.server.hover;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.AnchorLoad;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.check.WallFacts;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.WallLayout;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.workspace.Reading;

/** Tells the largest loads on anchors, each with the anchor it is on. */
final class Loads {
  private static final String CAUTION =
      "An aid to drafting: a licensed engineer and the local code govern.";

  private Loads() {}

  /** The largest of one direction so far. */
  private record Most(double newtons, String name) {
    Most or(double other, PlacedAnchor anchor) {
      return other > newtons ? new Most(other, anchor.name()) : this;
    }
  }

  /** Adds the largest loads on the anchors among those pieces; nothing if none was solved. */
  static void tell(
      List<PieceRef> pieces, Reading reading, WallLayout layout, Numbers numbers, Page page) {
    Optional<WallAnalysis> analysis =
        reading.walls().stream()
            .filter(facts -> facts.layout() == layout)
            .findFirst()
            .map(WallFacts::analysis);
    if (analysis.isEmpty()) {
      return;
    }
    Most in = new Most(0, "");
    Most out = in;
    Most down = in;
    for (PieceRef piece : pieces) {
      if (piece.kind() == PieceRef.Kind.ANCHOR) {
        PlacedAnchor anchor = layout.anchors().get(piece.index());
        Optional<AnchorLoad> load = analysis.get().loadOn(anchor);
        if (load.isPresent()) {
          in = in.or(load.get().in(), anchor);
          out = out.or(load.get().out(), anchor);
          down = down.or(load.get().down(), anchor);
        }
      }
    }
    tell("largest load in", in, numbers, page);
    tell("largest load out", out, numbers, page);
    tell("largest load down", down, numbers, page);
    if (in.newtons + out.newtons + down.newtons > 0) {
      page.line(CAUTION);
    }
  }

  private static void tell(String what, Most most, Numbers numbers, Page page) {
    if (most.newtons > 0) {
      Quantity force = Quantity.ofSi(most.newtons, Kind.FORCE);
      page.fact(what, numbers.of(force, Kind.FORCE) + ", " + most.name);
    }
  }
}
