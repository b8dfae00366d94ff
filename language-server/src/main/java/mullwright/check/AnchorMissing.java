package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.EndHold;
import mullwright.analysis.wall.FloorCrossing;
import mullwright.analysis.wall.MovingLengths;
import mullwright.analysis.wall.VerticalRun;
import mullwright.derivation.Derivation;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/**
 * A vertical that passes a floor without an anchor there, or whose end nothing holds in and out.
 *
 * <p>The span doubles, or the end waves in the wind. The zone at a floor and the quarter of a span
 * an end may stand free are common practice.
 */
@AutoService(Rule.class)
public final class AnchorMissing implements MemberRule {
  @Override
  public About about() {
    return About.of(Group.ANCHOR, Severity.ERROR).guardingPeople();
  }

  @Override
  public void check(VerticalPiece it, WallFacts facts, Findings found) {
    // a length that hangs from nothing is told of by splice-unsupported, one mistake once
    if (!facts.analysis().holdOf(it).unsupported()) {
      for (FloorCrossing crossing : bare(it, facts)) {
        if (facts.readWhole()) {
          floorWithoutAnchor(crossing, facts, found);
        }
      }
    }
    VerticalRun run = facts.analysis().runOf(it);
    for (EndHold end : EndHold.of(run)) {
      if (end.piece().index() == it.index()
          && end.free()
          && noFloorBeyond(end, facts)
          && MovingLengths.of(run).isEmpty()
          && facts.readWhole()) {
        freeEnd(end, facts, found);
      }
    }
  }

  private static List<FloorCrossing> bare(VerticalPiece piece, WallFacts facts) {
    return FloorCrossing.of(facts.analysis(), piece).stream()
        .filter(crossing -> crossing.anchors().isEmpty())
        .toList();
  }

  // an anchor at a floor it passes without one would hold the end too
  private static boolean noFloorBeyond(EndHold end, WallFacts facts) {
    double support = end.support().y();
    return facts.analysis().runOf(end.piece()).pieces().stream()
        .flatMap(piece -> bare(piece, facts).stream())
        .mapToDouble(crossing -> crossing.floor().elevation().value().toMetres())
        .noneMatch(y -> end.lower() ? y < support : y > support);
  }

  private static void floorWithoutAnchor(FloorCrossing crossing, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    VerticalPiece piece = crossing.piece();
    String floor = crossing.floor().name();
    Findings.Draft draft =
        found
            .at(piece.origin())
            .piece(piece.name())
            .what(
                "It passes "
                    + floor
                    + " without an anchor: 0 found between "
                    + say.length(crossing.zoneBottom())
                    + " and "
                    + say.length(crossing.zoneTop())
                    + ", 1 needed.")
            .mend("Add a wind-load anchor at " + floor + ".")
            .measured(count("anchors at the floor", 0))
            .limit(count("anchors needed", 1))
            .related(crossing.floor().origin(), "the floor it passes");
    new AnchorEdits(facts)
        .add(AnchorUse.Kind.WIND_LOAD, piece, crossing.floor())
        .ifPresent(draft::fix);
  }

  private static Derivation count(String name, long count) {
    return Derivation.computed(
        name, Quantity.of(Rational.of(count)), Kind.RATIO, "counted", "common practice");
  }

  private static void freeEnd(EndHold end, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    String line = facts.wall().grid().lines().get(end.piece().line()).name();
    Optional<Grid.Row> row = rowAt(end, facts);
    Findings.Draft draft =
        found
            .at(end.piece().origin())
            .piece(end.piece().name())
            .what(
                "Nothing holds its "
                    + (end.lower() ? "lower" : "upper")
                    + " end: it stands "
                    + say.length(end.overhang())
                    + " beyond the "
                    + Words.onLine(end.support().name(), line)
                    + ", more than a quarter of the next span, "
                    + say.length(EndHold.GREATEST_SHARE * end.span())
                    + ".")
            .mend(
                row.map(r -> "Add a clip at " + r.name() + ".")
                    .orElse("Add a clip or a wind-load anchor near the end."))
            .measured(end.measured())
            .limit(end.limit());
    row.flatMap(r -> new AnchorEdits(facts).addClip(end.piece(), r)).ifPresent(draft::fix);
  }

  // the row whose horizontal meets the end
  private static Optional<Grid.Row> rowAt(EndHold end, WallFacts facts) {
    Length y = end.lower() ? end.piece().bottom() : end.piece().top();
    return facts.analysis().horizontalsOn(end.piece().line()).stream()
        .filter(
            h -> {
              boolean left = h.leftLine() == end.piece().line();
              Length off = (left ? h.yLeft() : h.yRight()).minus(y);
              return !off.abs().isLongerThan(h.profile().face().value());
            })
        .findFirst()
        .map(h -> facts.wall().grid().rows().get(h.row()));
  }
}
