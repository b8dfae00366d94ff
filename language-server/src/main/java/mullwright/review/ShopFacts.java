package mullwright.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.model.Fabrication;
import mullwright.model.Given;
import mullwright.quantity.Kind;

/** Tells how the shop cuts, what it has on the rack and what is bought more. */
final class ShopFacts {
  private final Fabrication fabrication;
  private final SheetWriter to;

  ShopFacts(Fabrication fabrication, SheetWriter to) {
    this.fabrication = fabrication;
    this.to = to;
  }

  void write() {
    Subject subject = to.begin(Topic.FABRICATION);
    to.size(subject, "kerf", fabrication.kerf().value());
    to.size(subject, "end-trim", fabrication.endTrim().value());
    to.size(subject, "least-drop", fabrication.leastDrop().value());
    fabrication
        .piecesPerBar()
        .ifPresent(most -> to.words(subject, "pieces-per-bar", Integer.toString(most.value())));
    to.length(subject, "cut-tolerance", fabrication.cutTolerance());
    to.length(subject, "hole-tolerance", fabrication.holeTolerance());
    to.length(subject, "perimeter-joint", fabrication.perimeterJoint());
    shares(subject, "waste", fabrication.waste());
    shares(subject, "attic", fabrication.attic());
    for (Map.Entry<String, Given<String>> fact : new TreeMap<>(fabrication.facts()).entrySet()) {
      to.words(subject, fact.getKey(), fact.getValue().value());
    }
    for (Fabrication.OnHand lot : fabrication.onHand()) {
      Subject bars = to.begin(Topic.ON_HAND, Name.other(lot.part().value()));
      to.words(bars, "count", Integer.toString(lot.count()));
      to.size(bars, "length", lot.length().value());
      to.word(bars, "finish", lot.finish());
    }
  }

  private void shares(Subject subject, String what, List<Fabrication.Share> shares) {
    for (Fabrication.Share share : shares) {
      String of = (what + " " + share.of()).strip();
      to.amount(subject, of, Kind.RATIO, Optional.of(share.share()));
    }
  }
}
