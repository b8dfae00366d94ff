package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.Glazed;
import mullwright.model.Part;
import mullwright.model.PartKind;

/**
 * A lite whose zone is not dammed at both ends of the horizontal under it.
 *
 * <p>Water that got in runs along the pocket into the next lite's zone, and down the vertical,
 * until it finds a leak. Common practice.
 */
@AutoService(Rule.class)
public final class ZoneOpen implements WallRule {
  @Override
  public About about() {
    return About.of(Group.WEATHER, Severity.WARNING);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    Optional<Part.WallSystem> system = facts.wall().system();
    // a system without plates is not yet said to be glazed from outdoors
    if (system.isEmpty()
        || !system.get().parts().containsKey(PartKind.PRESSURE_PLATE)
        || system.get().parts().containsKey(PartKind.ZONE_DAM)) {
      return;
    }
    long lites = facts.layout().cells().stream().filter(ZoneOpen::drains).count();
    if (lites == 0) {
      return;
    }
    Findings.Draft draft =
        found
            .at(facts.wall().origin())
            .piece("wall " + facts.wall().name())
            .what(
                "The zones of its "
                    + (lites == 1 ? "lite are" : lites + " lites are")
                    + " open at both ends: the system "
                    + system.get().name()
                    + " names no zone dam.")
            .mend("Add “zone-dam NAME” to the system, and the dam to the catalog.")
            .related(system.get().origin(), "the system");
    StatementEdits edits = new StatementEdits(facts.text());
    for (Part dam : facts.catalog().all(PartKind.ZONE_DAM)) {
      edits
          .addInside(system.get().origin(), "zone-dam " + Words.asName(dam.name()))
          .map(edit -> new Fix("Name the dam " + dam.name() + " in the system", List.of(edit)))
          .ifPresent(draft::fix);
    }
  }

  private static boolean drains(Cell cell) {
    return Glazed.pocket(cell) && cell.below() >= 0;
  }
}
