package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Optional;
import mullwright.analysis.lite.LiteBearing;
import mullwright.analysis.lite.StrengthTrace;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.LiteUse;

/**
 * A lite that bears less wind than it takes.
 *
 * <p>Load resistance by ASTM E1300 against 0.6 of the ultimate or the whole of the service pressure
 * (IBC 2404.1, from memory). An aid to drafting: a licensed engineer and the local code govern.
 */
@AutoService(Rule.class)
public final class GlassOverloaded implements LiteRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(Cell it, WallFacts facts, Findings found) {
    if (!facts.analysis().wind().given()) {
      return;
    }
    if (LiteBearing.plainlyBears(facts.analysis(), it)) {
      return;
    }
    Optional<LiteBearing> bearing = LiteBearing.of(facts.analysis(), it);
    if (bearing.isEmpty()) {
      return;
    }
    LiteBearing lite = bearing.get();
    if (lite.least().isEmpty() || lite.most().isEmpty()) {
      notChecked(lite, facts, found);
    } else if (lite.wind().largest() > lite.most().get().resistance()) {
      tell(lite, Severity.ERROR, facts, found);
    } else if (lite.wind().largest() > lite.least().get().resistance()) {
      tell(lite, Severity.WARNING, facts, found);
    }
  }

  private static void notChecked(LiteBearing lite, WallFacts facts, Findings found) {
    LiteUse use = lite.cell().use().orElseThrow();
    found
        .at(use.origin())
        .piece(lite.cell().name())
        .what(
            "Strength and deflection of "
                + use.glass().value()
                + " are not checked: "
                + lite.outside().orElse("the method declines")
                + ".")
        .mend("Have it checked by an engineer or by the maker of the glass.")
        .severity(Severity.INFORMATION)
        .related(lite.makeUp().glass().origin(), "the glass");
  }

  private static void tell(LiteBearing lite, Severity severity, WallFacts facts, Findings found) {
    Cell cell = lite.cell();
    Measures say = Measures.of(facts);
    boolean inward = lite.wind().in() >= lite.wind().out();
    String glass = lite.makeUp().glass().name();
    String zone = inward ? lite.wind().zoneIn() : lite.wind().zoneOut();
    Derivation resistance = StrengthTrace.resistance(lite);
    Findings.Draft draft =
        found
            .at(cell.use().orElseThrow().origin())
            .piece(cell.name())
            .what(
                glass
                    + ", "
                    + say.size(cell.glassWidth(), cell.glassHeight())
                    + ", bears "
                    + say.pressure(lite.least().orElseThrow().resistance())
                    + between(lite, say)
                    + "; wind "
                    + (inward ? "in" : "out")
                    + " is "
                    + say.pressure(lite.wind().largest())
                    + " (zone "
                    + zone
                    + ").")
            .mend(
                severity == Severity.WARNING
                    ? "State the shear-modulus of its interlayer, or take a stronger glass."
                    : "Take thicker or heat-treated glass, or make the lite smaller.")
            .severity(severity)
            .limit(resistance)
            .related(lite.makeUp().glass().origin(), "the glass");
    facts.analysis().wind().explain(cell).ifPresent(draft::measured);
  }

  private static String between(LiteBearing lite, Measures say) {
    return lite.open()
        ? " if its plies slip and "
            + say.pressure(lite.most().orElseThrow().resistance())
            + " if they hold together"
        : "";
  }
}
