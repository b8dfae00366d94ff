package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.stream.Collectors;
import mullwright.analysis.wall.SpanLimit;
import mullwright.analysis.wall.VerticalRun;
import mullwright.derivation.Derivation;
import mullwright.layout.VerticalPiece;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * A span of a vertical that bends further under wind than the limit.
 *
 * <p>Gaskets open and glass edges lose their bite. AAMA TIR-A11, from memory, or the project's own
 * limit where that is stricter. An aid to drafting: a licensed engineer and the local code govern.
 */
@AutoService(Rule.class)
public final class SpanDeflection implements WallRule {
  private static final String METHOD = "direct stiffness, splices as hinges (closed form)";

  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    for (VerticalRun run : facts.analysis().runs()) {
      for (var span : facts.analysis().deflections(run)) {
        SpanLimit limit = SpanLimit.of(span, facts.wall().criteria());
        if (limit.passed()) {
          tell(limit, facts, found);
        }
      }
    }
  }

  private static void tell(SpanLimit limit, WallFacts facts, Findings found) {
    var span = limit.of();
    VerticalPiece piece = span.run().pieceAt(span.sag().at());
    Measures say = Measures.of(facts);
    found
        .at(piece.origin())
        .piece(piece.name())
        .what(
            (span.overhang() ? "The end beyond " : "The span ")
                + supports(span, facts)
                + " ("
                + say.length(span.length())
                + ") bends "
                + say.length(span.deflection())
                + " under "
                + span.response().name()
                + "; the limit is "
                + say.length(limit.limit().limit())
                + " ("
                + limit.words()
                + ").")
        .mend("Take a stiffer profile, reinforce it, or hold it at one more place.")
        .measured(
            Derivation.computed(
                "deflection",
                Length.nearest(span.deflection()),
                "greatest distance from the line between the supports",
                METHOD,
                Derivation.computed(
                    "height of the greatest deflection",
                    span.sag().at(),
                    Kind.LENGTH,
                    "where it bends most",
                    METHOD)))
        .limit(limit.explain());
  }

  // L1 to L2; an overhang has one support only
  private static String supports(mullwright.analysis.wall.SpanDeflection span, WallFacts facts) {
    return span.run().supports().stream()
        .filter(support -> support.y() == span.from() || support.y() == span.to())
        .map(support -> Words.place(support, facts))
        .collect(Collectors.joining(" to "));
  }
}
