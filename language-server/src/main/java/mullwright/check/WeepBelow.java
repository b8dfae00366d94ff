package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import mullwright.layout.HolePlaces;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.SystemPart;
import mullwright.layout.Weep;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;

/**
 * A pressure plate whose weeps serve the lite below it.
 *
 * <p>The zone of the lite above stands full of water, and the one below is opened to the rain at
 * its top. Common practice: weeps on the upper side of the plate.
 */
@AutoService(Rule.class)
public final class WeepBelow implements WallRule {
  @Override
  public About about() {
    return About.of(Group.WEATHER, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    Optional<Part.PressurePlate> plate =
        SystemPart.of(facts.layout(), PartKind.PRESSURE_PLATE, Part.PressurePlate.class)
            .filter(part -> part.weeps().value().equals("lower"));
    if (plate.isEmpty()) {
      return;
    }
    HolePlaces holes = facts.analysis().holes();
    BitSet told = new BitSet();
    for (Weep weep : holes.weeps()) {
      if (weep.cover() < 0 || told.get(weep.cover())) {
        continue;
      }
      told.set(weep.cover());
      HorizontalPiece piece =
          facts.layout().horizontals().get(facts.layout().covers().get(weep.cover()).carrier());
      Findings.Draft draft =
          found
              .at(piece.origin())
              .piece("pressure plate of " + piece.name())
              .what(
                  "Its weeps are on the lower side, so they drain nothing of the "
                      + facts.layout().cells().get(weep.cell()).name()
                      + " above it.")
              .mend("Turn the plate over, and say “weeps upper” of it in the catalog.")
              .related(plate.get().weeps().origin(), "the side of its weeps");
      Origin side = plate.get().weeps().origin();
      facts
          .text()
          .textAt(side)
          .filter(text -> text.contains("lower"))
          .map(
              text ->
                  new Fix(
                      "Say weeps upper of the plate",
                      List.of(new Fix.Edit(side, text.replace("lower", "upper")))))
          .ifPresent(draft::fix);
    }
  }
}
