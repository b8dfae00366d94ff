package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.analysis.lite.LiteBend;
import mullwright.layout.Cell;

/**
 * A lite whose centre bends further under wind than it may.
 *
 * <p>The project's limit, or the usual one of EN 16612 as a warning. An aid to drafting: a licensed
 * engineer and the local code govern.
 */
@AutoService(Rule.class)
public final class GlassDeflection implements LiteRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(Cell it, WallFacts facts, Findings found) {
    if (LiteBend.plainlyWithin(facts.analysis(), it)) {
      return;
    }
    LiteBend.of(facts.analysis(), it)
        .filter(LiteBend::passed)
        .ifPresent(bend -> tell(it, bend, facts, found));
  }

  private static void tell(Cell it, LiteBend bend, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    String glass = bend.bearing().makeUp().glass().name();
    found
        .at(it.use().orElseThrow().origin())
        .piece(it.name())
        .what(
            "The centre of "
                + glass
                + " bends "
                + say.length(bend.deflection())
                + " under "
                + say.pressure(bend.bearing().wind().largest())
                + "; the limit is "
                + say.length(bend.limit())
                + (bend.stated() ? "." : ", the usual one, as the project states none.")
                + (bend.bearing().open()
                    ? " Plies are taken to slip, as no shear-modulus is stated."
                    : ""))
        .mend(
            bend.stated()
                ? "Take a stiffer glass, or make the lite smaller."
                : "Take a stiffer glass, or state glass deflection limit in the criteria.")
        .severity(bend.stated() ? Severity.ERROR : Severity.WARNING)
        .measured(bend.explain(facts.analysis()))
        .limit(bend.explainLimit(facts.wall().criteria().glass()))
        .related(bend.bearing().makeUp().glass().origin(), "the glass");
  }
}
