package mullwright.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.check.Finding;
import mullwright.check.WallFacts;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Finds where two sides of a merge disagree as a wall, though their texts may merge.
 *
 * <p>Things are told by their own names here: one side that renames a line and another that hangs
 * an anchor on its old name do disagree.
 */
public final class ThreeWay {
  private final Side base;
  private final Side ours;
  private final Side theirs;
  private final Optional<Side> merged;
  private final UnitSystem units;
  private final List<Disagreement> found = new ArrayList<>();

  private ThreeWay(Side base, Side ours, Side theirs, Optional<Side> merged, UnitSystem units) {
    this.base = base;
    this.ours = ours;
    this.theirs = theirs;
    this.merged = merged;
    this.units = units;
  }

  /** One state of the wall, with what the rules find in it. */
  public record Side(WallFacts facts, List<Finding> findings) {
    public Side {
      findings = List.copyOf(findings);
    }

    FactSheet sheet() {
      return WallFactsReader.read(facts);
    }

    Map<PieceKey, PieceState> pieces() {
      return PieceStates.of(facts.layout(), WallNames.of(facts.wall()));
    }
  }

  /**
   * The disagreements, worst first.
   *
   * @param merged what the texts merge to; empty if they do not merge as text
   */
  public static List<Disagreement> of(
      Side base, Side ours, Side theirs, Optional<Side> merged, UnitSystem units) {
    ThreeWay three = new ThreeWay(base, ours, theirs, merged, units);
    three.facts();
    three.merged.ifPresent(
        side -> {
          three.findings(side);
          three.pieces(side);
        });
    three.found.sort(java.util.Comparator.comparing(Disagreement::kind));
    return List.copyOf(three.found);
  }

  private void facts() {
    FactSheet was = base.sheet();
    FactSheet our = ours.sheet();
    FactSheet their = theirs.sheet();
    Optional<FactSheet> both = merged.map(Side::sheet);
    Set<Fact> all = new TreeSet<>(was.facts().keySet());
    all.addAll(our.facts().keySet());
    all.addAll(their.facts().keySet());
    Set<Subject> gone = new LinkedHashSet<>();
    for (Fact fact : all) {
      Value b = was.facts().get(fact);
      Value o = our.facts().get(fact);
      Value t = their.facts().get(fact);
      boolean oursDiffers = !Objects.equals(b, o);
      boolean theirsDiffers = !Objects.equals(b, t);
      Optional<Value> m = both.map(sheet -> sheet.facts().get(fact));
      if (oursDiffers && theirsDiffers && !Objects.equals(o, t)) {
        if (gone.add(fact.subject()) || !fact.property().isEmpty()) {
          add(Disagreement.Kind.CONTRADICTION, fact, b, o, t, m);
        }
      } else if (both.isPresent() && (oursDiffers || theirsDiffers)) {
        Value wanted = oursDiffers ? o : t;
        if (!Objects.equals(m.orElse(null), wanted)) {
          add(Disagreement.Kind.LOST, fact, b, o, t, m);
        }
      }
    }
  }

  private void add(
      Disagreement.Kind kind, Fact fact, Value b, Value o, Value t, Optional<Value> m) {
    found.add(
        new Disagreement(
            kind,
            fact.toString(),
            said(b),
            said(o),
            said(t),
            merged.map(any -> said(m.orElse(null)).orElse("gone"))));
  }

  private Optional<String> said(Value value) {
    return Optional.ofNullable(value).map(known -> known.exactly(units));
  }

  private void findings(Side together) {
    Set<String> known = new LinkedHashSet<>();
    ours.findings().forEach(finding -> known.add(finding.rule() + " " + finding.piece()));
    theirs.findings().forEach(finding -> known.add(finding.rule() + " " + finding.piece()));
    for (Finding finding : together.findings()) {
      if (!known.contains(finding.rule() + " " + finding.piece())) {
        String piece = finding.piece().isEmpty() ? "" : finding.piece() + ": ";
        found.add(
            new Disagreement(
                Disagreement.Kind.TRIPPED,
                finding.rule(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(piece + finding.what())));
      }
    }
  }

  private void pieces(Side together) {
    Map<PieceKey, PieceState> was = base.pieces();
    Map<PieceKey, PieceState> our = ours.pieces();
    Map<PieceKey, PieceState> their = theirs.pieces();
    together
        .pieces()
        .forEach(
            (key, state) -> {
              boolean ofItsOwn =
                  differs(state, our.get(key))
                      && differs(state, their.get(key))
                      && differs(state, was.get(key));
              if (ofItsOwn) {
                found.add(
                    new Disagreement(
                        Disagreement.Kind.SHAPED_BY_BOTH,
                        state.name(),
                        size(was.get(key)),
                        size(our.get(key)),
                        size(their.get(key)),
                        size(state)));
              }
            });
  }

  private static boolean differs(PieceState one, PieceState other) {
    return other == null
        || !one.make().length().equals(other.make().length())
        || !one.make().height().equals(other.make().height())
        || !one.make().part().equals(other.make().part());
  }

  private Optional<String> size(PieceState state) {
    return Optional.ofNullable(state)
        .map(
            piece -> {
              String length = LengthPrinter.in(units, piece.make().length());
              return piece
                  .make()
                  .height()
                  .map(height -> length + " × " + LengthPrinter.in(units, height))
                  .orElse(length);
            });
  }
}
