package mullwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.analysis.wall.AnchorLoad;
import mullwright.check.Finding;
import mullwright.check.WallFacts;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;

/** Compares two states of a wall. */
public final class WallReviewer {
  /** Forces [N] that differ by less came out of rounding. */
  private static final double SAME_FORCE = 1e-6;

  private final Sides sides;
  private final List<Change> changes;
  private final Causes causes;

  private WallReviewer(Sides sides) {
    this.sides = sides;
    this.changes = ChangeFinder.between(sides);
    this.causes = new Causes(sides, changes);
  }

  /**
   * What changed from one to the other.
   *
   * @param oldFindings what the rules about walls find in the older, {@code nowFindings} in the
   *     newer
   */
  public static WallReview compare(
      WallFacts old, List<Finding> oldFindings, WallFacts now, List<Finding> nowFindings) {
    return new WallReviewer(Sides.of(old, now)).review(oldFindings, nowFindings);
  }

  /** The facts that differ, without what follows: quick, for comparing three. */
  static List<Change> changes(Sides sides) {
    return ChangeFinder.between(sides);
  }

  /** A wall that is new: everything it takes is more. */
  public static WallReview added(WallFacts now, List<Finding> findings) {
    return new WallReview(
        now.wall().name(),
        Optional.empty(),
        Optional.of(now.layout()),
        List.of(),
        List.of(),
        List.of(),
        goods(Map.of(), Goods.of(now)),
        List.of(),
        findings.stream().map(finding -> new FindingChange(finding, List.of())).toList(),
        List.of(),
        0,
        (change, units) -> "");
  }

  /** A wall that is gone. */
  public static WallReview removed(WallFacts old, List<Finding> findings) {
    return new WallReview(
        old.wall().name(),
        Optional.of(old.layout()),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        goods(Goods.of(old), Map.of()),
        List.of(),
        List.of(),
        findings.stream().map(finding -> new FindingChange(finding, List.of())).toList(),
        0,
        (change, units) -> "");
  }

  private WallReview review(List<Finding> oldFindings, List<Finding> nowFindings) {
    Renamed renamed = Renamed.of(sides);
    FindingPairs findings = FindingPairs.of(oldFindings, nowFindings, renamed::piece);
    return new WallReview(
        sides.now().wall().name(),
        Optional.of(sides.old().layout()),
        Optional.of(sides.now().layout()),
        changes,
        pieces(),
        fixings(),
        goods(Goods.of(sides.old()), Goods.of(sides.now())),
        reactions(),
        findings.tripped().stream().map(one -> explained(one, one.piece())).toList(),
        findings.mended().stream().map(one -> explained(one, renamed.piece(one.piece()))).toList(),
        findings.standing(),
        (change, units) -> new ChangeWords(sides, units).of(change));
  }

  private FindingChange explained(Finding finding, String piece) {
    if (piece.isEmpty()) {
      return new FindingChange(finding, List.of());
    }
    Set<String> named = new HashSet<>(List.of(piece.split("[ ,\\-;]+")));
    named.retainAll(new HashSet<>(sides.lines()));
    return new FindingChange(finding, causes.ofFinding(finding.rule(), named));
  }

  private List<PieceChange> pieces() {
    Map<PieceKey, PieceState> old = PieceStates.of(sides.old().layout(), sides.oldNames());
    Map<PieceKey, PieceState> now = PieceStates.of(sides.now().layout(), sides.nowNames());
    List<PieceChange> found = new ArrayList<>();
    now.forEach(
        (key, state) -> {
          PieceState before = old.get(key);
          if (before == null || !before.make().equals(state.make())) {
            found.add(changed(key, Optional.ofNullable(before), Optional.of(state)));
          }
        });
    old.forEach(
        (key, state) -> {
          if (!now.containsKey(key)) {
            found.add(changed(key, Optional.of(state), Optional.empty()));
          }
        });
    return found;
  }

  private PieceChange changed(
      PieceKey key, Optional<PieceState> before, Optional<PieceState> after) {
    PieceChange bare = new PieceChange(key, before, after, List.of());
    return new PieceChange(key, before, after, causes.of(bare));
  }

  private List<FixingChange> fixings() {
    Map<Subject, PieceRef> old = fixings(sides.old(), sides.oldNames());
    Map<Subject, PieceRef> now = fixings(sides.now(), sides.nowNames());
    List<FixingChange> found = new ArrayList<>();
    Set<Subject> all = new TreeSet<>(old.keySet());
    all.addAll(now.keySet());
    for (Subject subject : all) {
      boolean both = old.containsKey(subject) && now.containsKey(subject);
      if (!both || !sides.before().of(subject).equals(sides.after().of(subject))) {
        found.add(
            new FixingChange(
                Optional.ofNullable(old.get(subject)), Optional.ofNullable(now.get(subject))));
      }
    }
    return found;
  }

  private static Map<Subject, PieceRef> fixings(WallFacts facts, WallNames names) {
    Map<Subject, PieceRef> found = new TreeMap<>();
    for (PlacedAnchor anchor : facts.layout().anchors()) {
      Name line = Name.line(names.lines().get(anchor.use().line()));
      Name place = MemberFacts.placeOf(anchor.use(), names);
      found.putIfAbsent(
          Subject.of(Topic.ANCHOR, line, place),
          new PieceRef(PieceRef.Kind.ANCHOR, anchor.index()));
    }
    for (SpliceJoint joint : facts.layout().splices()) {
      Name line = Name.line(names.lines().get(joint.line()));
      Name place = names.base(joint.splice().at()).orElse(Name.other("datum"));
      found.putIfAbsent(
          Subject.of(Topic.SPLICE, line, place), new PieceRef(PieceRef.Kind.SPLICE, joint.index()));
    }
    return found;
  }

  private static List<GoodsChange> goods(
      Map<Goods.Item, Goods.Amount> old, Map<Goods.Item, Goods.Amount> now) {
    List<GoodsChange> found = new ArrayList<>();
    Set<Goods.Item> all = new TreeSet<>(old.keySet());
    all.addAll(now.keySet());
    for (Goods.Item item : all) {
      Goods.Amount before = old.getOrDefault(item, Goods.Amount.NONE);
      Goods.Amount after = now.getOrDefault(item, Goods.Amount.NONE);
      if (!before.equals(after)) {
        found.add(new GoodsChange(item, before, after));
      }
    }
    return found;
  }

  private List<ReactionChange> reactions() {
    Map<List<Name>, PlacedAnchor> old = anchors(sides.old(), sides.oldNames());
    List<ReactionChange> found = new ArrayList<>();
    anchors(sides.now(), sides.nowNames())
        .forEach(
            (key, anchor) -> {
              Optional<AnchorLoad> after = sides.now().analysis().loadOn(anchor);
              Optional<AnchorLoad> before =
                  Optional.ofNullable(old.get(key))
                      .flatMap(was -> sides.old().analysis().loadOn(was));
              if (before.isPresent() && after.isPresent()) {
                Map<String, double[]> forces = new TreeMap<>();
                forces.put("down", new double[] {before.get().down(), after.get().down()});
                forces.put("in", new double[] {before.get().in(), after.get().in()});
                forces.put("out", new double[] {before.get().out(), after.get().out()});
                forces.forEach(
                    (direction, force) -> {
                      double size = Math.max(Math.abs(force[0]), Math.abs(force[1]));
                      if (Math.abs(force[1] - force[0]) > SAME_FORCE * Math.max(1, size)) {
                        found.add(
                            new ReactionChange(
                                anchor.name(),
                                direction,
                                force[0],
                                force[1],
                                causes.ofReaction(key.get(0).id())));
                      }
                    });
              }
            });
    return found;
  }

  private static Map<List<Name>, PlacedAnchor> anchors(WallFacts facts, WallNames names) {
    Map<List<Name>, PlacedAnchor> found = new LinkedHashMap<>();
    for (PlacedAnchor anchor : facts.layout().anchors()) {
      List<Name> key =
          List.of(
              Name.line(names.lines().get(anchor.use().line())),
              MemberFacts.placeOf(anchor.use(), names));
      found.putIfAbsent(key, anchor);
    }
    return found;
  }

  /** Names of pieces of the older wall as the newer calls them. */
  private record Renamed(Map<String, String> names) {
    static Renamed of(Sides sides) {
      Map<String, String> names = new HashMap<>();
      var grid = sides.old().wall().grid();
      grid.lines().forEach(l -> names.put(l.name(), sides.oldNames().lines().get(l.index())));
      grid.floors().forEach(f -> names.put(f.name(), sides.oldNames().floors().get(f.index())));
      grid.rows().forEach(r -> names.put(r.name(), sides.oldNames().rows().get(r.index())));
      names.entrySet().removeIf(entry -> entry.getKey().equals(entry.getValue()));
      return new Renamed(names);
    }

    String piece(String piece) {
      if (names.isEmpty()) {
        return piece;
      }
      StringBuilder said = new StringBuilder();
      for (String word : piece.split("(?<=[ ,\\-;])|(?=[ ,\\-;])")) {
        said.append(names.getOrDefault(word, word));
      }
      return said.toString();
    }
  }
}
