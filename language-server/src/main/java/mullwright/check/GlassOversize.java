package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Optional;
import mullwright.analysis.wall.Inputs;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * A lite larger or smaller than its maker makes that glass.
 *
 * <p>The catalog states the limits; without them nothing is checked.
 */
@AutoService(Rule.class)
public final class GlassOversize implements LiteRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(Cell it, WallFacts facts, Findings found) {
    if (it.use().isEmpty() || it.glass().isEmpty() || it.opening().isPresent()) {
      return;
    }
    Part.Glass glass = it.glass().get();
    if (over(it.glassWidth(), glass.mostWidth()) || over(it.glassHeight(), glass.mostHeight())) {
      tooLarge(it, glass, facts, found);
    } else if (under(it.glassWidth(), glass.leastWidth())
        || under(it.glassHeight(), glass.leastHeight())) {
      boolean width = under(it.glassWidth(), glass.leastWidth());
      side(it, glass, width, width ? glass.leastWidth() : glass.leastHeight(), false, facts, found);
    } else {
      area(it, glass, facts, found);
    }
  }

  private static boolean over(Length size, Optional<Given<Length>> most) {
    return most.filter(limit -> size.isLongerThan(limit.value())).isPresent();
  }

  private static boolean under(Length size, Optional<Given<Length>> least) {
    return least.filter(limit -> size.isShorterThan(limit.value())).isPresent();
  }

  private static void tooLarge(Cell it, Part.Glass glass, WallFacts facts, Findings found) {
    boolean width = over(it.glassWidth(), glass.mostWidth());
    side(it, glass, width, width ? glass.mostWidth() : glass.mostHeight(), true, facts, found);
  }

  private static void side(
      Cell it,
      Part.Glass glass,
      boolean width,
      Optional<Given<Length>> limit,
      boolean large,
      WallFacts facts,
      Findings found) {
    Measures say = Measures.of(facts);
    Length size = width ? it.glassWidth() : it.glassHeight();
    String side = width ? "width" : "height";
    boolean turned =
        large
            && !over(it.glassWidth(), glass.mostHeight())
            && !over(it.glassHeight(), glass.mostWidth());
    found
        .at(it.use().orElseThrow().origin())
        .piece(it.name())
        .what(
            glass.name()
                + " would be "
                + say.size(it.glassWidth(), it.glassHeight())
                + "; its "
                + (large ? "largest " : "smallest ")
                + side
                + " is "
                + say.length(limit.orElseThrow().value())
                + "."
                + (turned ? " Turned on its side it would fit." : ""))
        .mend(
            large
                ? "Divide the opening, or take a glass that is made larger."
                : "Make the opening larger, or take a glass that is made smaller.")
        .measured(
            Derivation.computed(
                "glass " + side, size, "daylight opening + bites", "conventions of measure"))
        .limit(Inputs.length((large ? "largest " : "smallest ") + side, limit.orElseThrow()))
        .related(limit.orElseThrow().origin(), "the maker's limit");
  }

  private static void area(Cell it, Part.Glass glass, WallFacts facts, Findings found) {
    if (glass.mostArea().isEmpty()) {
      return;
    }
    Measures say = Measures.of(facts);
    Quantity area = GlassSizes.of(it, say.system()).area();
    glass
        .mostArea()
        .filter(most -> area.si().compareTo(most.value().si()) > 0)
        .ifPresent(
            most ->
                found
                    .at(it.use().orElseThrow().origin())
                    .piece(it.name())
                    .what(
                        glass.name()
                            + " would be "
                            + say.area(area.toSi())
                            + " large; its largest area is "
                            + say.area(most.value().toSi())
                            + ".")
                    .mend("Divide the opening, or take a glass that is made larger.")
                    .measured(
                        Derivation.computed(
                            "glass area",
                            area,
                            Kind.AREA,
                            "glass width × glass height",
                            "conventions of measure"))
                    .limit(Inputs.quantity("largest area", most, Kind.AREA))
                    .related(most.origin(), "the maker's limit"));
  }
}
