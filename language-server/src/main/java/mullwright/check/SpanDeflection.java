package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import mullwright.analysis.wall.EdgeDeflection;
import mullwright.analysis.wall.HorizontalSpan;
import mullwright.analysis.wall.HorizontalTrace;
import mullwright.analysis.wall.RunTrace;
import mullwright.analysis.wall.SpanLimit;
import mullwright.analysis.wall.VerticalRun;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Criteria;

/**
 * A span of a vertical or horizontal, or the edge of a lite on it, that bends further under wind
 * than the limit.
 *
 * <p>Gaskets open and glass edges lose their bite. AAMA TIR-A11 and IBC 2403.3, from memory, or the
 * project's own limit where that is stricter. An aid to drafting: a licensed engineer and the local
 * code govern.
 */
@AutoService(Rule.class)
public final class SpanDeflection implements WallRule {
  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    for (VerticalRun run : facts.runs()) {
      found.near(run.line(), run.line());
      vertical(run, facts, found);
    }
    for (HorizontalPiece piece : facts.horizontals()) {
      found.near(piece.leftLine(), piece.rightLine());
      horizontal(facts.analysis().spanOf(piece), facts, found);
    }
  }

  private static void vertical(VerticalRun run, WallFacts facts, Findings found) {
    Criteria criteria = facts.wall().criteria();
    Set<VerticalPiece> told = new HashSet<>();
    for (var span : facts.analysis().deflections(run)) {
      if (SpanLimit.surelyWithin(span.deflection(), span.length(), criteria)) {
        continue;
      }
      SpanLimit limit = SpanLimit.of(span, criteria);
      if (limit.passedBy(span.deflection()) && !span.shortEnd()) {
        VerticalPiece piece = run.pieceAt(span.sag().at());
        told.add(piece);
        found
            .at(piece.origin())
            .piece(piece.name())
            .what(
                (span.overhang() ? "The end beyond " : "The span ")
                    + supports(span, facts)
                    + bends(span.length(), span.deflection(), span.response().name(), limit, facts))
            .mend("Take a stiffer profile, reinforce it, or hold it at one more place.")
            .measured(RunTrace.deflection(span))
            .limit(limit.explain());
      }
    }
    for (EdgeDeflection edge : EdgeDeflection.along(facts.analysis(), run)) {
      if (SpanLimit.surelyWithin(edge.sag().value(), edge.length(), criteria)) {
        continue;
      }
      SpanLimit limit = SpanLimit.of(SpanLimit.Of.EDGE, edge.length(), criteria);
      VerticalPiece piece = run.pieceAt(edge.sag().at());
      // where the span itself bends too far its edges need no finding of their own
      if (limit.passedBy(edge.sag().value()) && told.add(piece)) {
        found
            .at(piece.origin())
            .piece(piece.name())
            .what(edge(edge, limit, facts))
            .mend("Take a stiffer profile, reinforce it, or move the splice from beside the lite.")
            .measured(RunTrace.edge(run, edge))
            .limit(limit.explain());
      }
    }
  }

  private static void horizontal(HorizontalSpan span, WallFacts facts, Findings found) {
    if (span.wind().isEmpty()) {
      return;
    }
    HorizontalPiece piece = span.piece();
    Criteria criteria = facts.wall().criteria();
    var sag = span.wind().get().sag(0, span.length());
    boolean within = SpanLimit.surelyWithin(sag.value(), span.length(), criteria);
    if (within && span.oneLiteASide()) {
      return;
    }
    SpanLimit limit = SpanLimit.of(SpanLimit.Of.SPAN, span.length(), criteria);
    if (limit.passedBy(sag.value())) {
      found
          .at(piece.origin())
          .piece(piece.name())
          .what("The span" + bends(span.length(), sag.size(), sag.response().name(), limit, facts))
          .mend("Take a stiffer profile, or a narrower bay.")
          .measured(HorizontalTrace.deflection(span, sag))
          .limit(limit.explain());
      return;
    }
    for (EdgeDeflection edge : EdgeDeflection.along(facts.analysis(), span)) {
      SpanLimit along = SpanLimit.of(SpanLimit.Of.EDGE, edge.length(), criteria);
      if (along.passedBy(edge.sag().value())) {
        found
            .at(piece.origin())
            .piece(piece.name())
            .what(edge(edge, along, facts))
            .mend("Take a stiffer profile.")
            .measured(HorizontalTrace.deflection(span, edge.sag()))
            .limit(along.explain());
        return;
      }
    }
  }

  private static String edge(EdgeDeflection edge, SpanLimit limit, WallFacts facts) {
    return "The edge of the "
        + facts.layout().cells().get(edge.cell()).name()
        + bends(edge.length(), edge.sag().size(), edge.sag().response().name(), limit, facts);
  }

  private static String bends(
      double length, double deflection, String loads, SpanLimit limit, WallFacts facts) {
    Measures say = Measures.of(facts);
    return " ("
        + say.length(length)
        + ") bends "
        + say.length(deflection)
        + " under "
        + loads
        + "; the limit is "
        + say.length(limit.limit().limit())
        + " ("
        + limit.words()
        + ").";
  }

  // L1 to L2; an overhang has one support only
  private static String supports(mullwright.analysis.wall.SpanDeflection span, WallFacts facts) {
    return span.run().supports().stream()
        .filter(support -> support.y() == span.from() || support.y() == span.to())
        .map(support -> Words.place(support, facts))
        .collect(Collectors.joining(" to "));
  }
}
