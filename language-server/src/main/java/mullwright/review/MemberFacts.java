package mullwright.review;

import java.util.Optional;
import mullwright.model.AnchorUse;
import mullwright.model.LiteUse;
import mullwright.model.Members;
import mullwright.model.Wall;
import mullwright.quantity.Kind;

/** Takes down what members, anchors and lites say, thing by thing. */
final class MemberFacts {
  private final Wall wall;
  private final WallNames names;
  private final SheetWriter to;

  MemberFacts(Wall wall, SheetWriter to) {
    this.wall = wall;
    this.names = to.names();
    this.to = to;
  }

  void write() {
    verticals();
    for (Members.Horizontal horizontal : wall.members().horizontals()) {
      Subject subject =
          to.begin(
              Topic.HORIZONTAL,
              row(horizontal.row()),
              Name.line(names.left(wall, horizontal.bay())),
              Name.line(names.right(wall, horizontal.bay())));
      to.words(subject, "as", horizontal.profile().value());
    }
    for (Members.Splice splice : wall.members().splices()) {
      Subject subject = to.begin(Topic.SPLICE, line(splice.line()), base(names.base(splice.at())));
      to.place(subject, "at", splice.at());
      to.size(subject, "gap", splice.gap().value());
      to.word(subject, "sleeve", splice.sleeve());
    }
    for (Members.Reinforce reinforce : wall.members().reinforcements()) {
      Subject subject = to.begin(Topic.REINFORCEMENT, line(reinforce.line()));
      to.words(subject, "with", reinforce.part().value());
      to.place(subject, "from", reinforce.from());
      to.place(subject, "to", reinforce.to());
      to.word(subject, "isolated by", reinforce.isolation());
    }
    wall.members().brackets().forEach(this::bracket);
    wall.anchors().forEach(this::anchor);
    wall.lites().forEach(this::lite);
  }

  private Name line(int index) {
    return Name.line(names.lines().get(index));
  }

  private Name row(int index) {
    return Name.row(names.rows().get(index));
  }

  private static Name base(Optional<Name> base) {
    return base.orElse(Name.other("datum"));
  }

  private void verticals() {
    for (Members.Vertical vertical : wall.members().verticals()) {
      Subject subject = to.begin(Topic.VERTICAL, line(vertical.line()));
      to.words(subject, "as", vertical.profile().value());
      to.place(subject, "from", vertical.from());
      to.place(subject, "to", vertical.to());
    }
  }

  private void bracket(Members.Bracket bracket) {
    Subject subject = to.begin(Topic.BRACKET, line(bracket.line()), base(names.base(bracket.at())));
    to.place(subject, "at", bracket.at());
    int number = 0;
    for (Members.Load load : bracket.loads()) {
      number++;
      String which = "load " + number + " " + load.direction();
      to.amount(subject, which, Kind.FORCE, Optional.of(load.force()));
      to.length(subject, which + " at", load.arm());
    }
    bolted(subject, bracket.bolted());
  }

  private void bolted(Subject subject, Optional<Members.Fixing> fixing) {
    fixing.ifPresent(
        bolts -> to.words(subject, "bolted", bolts.count() + " × " + bolts.fastener().value()));
  }

  private void anchor(AnchorUse use) {
    Subject subject = to.begin(Topic.ANCHOR, line(use.line()), placeOf(use, names));
    to.words(subject, "kind", use.kind().spelling());
    if (use.heightStated()) {
      to.place(subject, "at", use.place());
    }
    to.word(subject, "part", use.part());
    bolted(subject, use.bolted());
    to.word(subject, "isolated by", use.isolation());
    to.word(subject, "bedded on", use.bedding());
    to.word(subject, "spread by", use.spread());
    to.length(subject, "offset", use.offset());
  }

  /** What an anchor is told by beside its line. */
  static Name placeOf(AnchorUse use, WallNames names) {
    Optional<Name> floor = use.floor().map(index -> Name.floor(names.floors().get(index)));
    return base(names.base(use.place()).or(() -> floor));
  }

  private void lite(LiteUse lite) {
    Subject subject =
        to.begin(
            Topic.LITE,
            Name.line(names.left(wall, lite.bay())),
            Name.line(names.right(wall, lite.bay())),
            row(lite.below()),
            row(lite.above()));
    to.words(subject, "as", lite.vision() ? "vision" : "spandrel");
    to.words(subject, "glass", lite.glass().value());
    if (lite.operable()) {
      to.words(subject, "leaf", "operable");
    }
    lite.mark().ifPresent(mark -> to.words(subject, "mark", mark));
  }
}
