package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.analysis.wall.NotChecked;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;

/** What of a wall's members and splices was not checked, and why. */
@AutoService(CalculationSection.class)
public final class NotCheckedCalculations implements CalculationSection {
  private static final List<String> NEVER =
      List.of(
          "local buckling of thin walls",
          "connections: shear blocks, clips, bolts and welds",
          "forces of brackets along the wall",
          "twist of horizontals by glass off their axis",
          "weight of plates, caps, gaskets, shear blocks and anchors: it is in no load here",
          "earthquake");

  @Override
  public int order() {
    return 90;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    WallLayout layout = wall.facts().layout();
    LayoutIndex index = LayoutIndex.of(layout);
    Map<String, List<String>> pieces = new LinkedHashMap<>();
    List<PieceRef> members = new ArrayList<>();
    layout.verticals().forEach(v -> members.add(new PieceRef(PieceRef.Kind.VERTICAL, v.index())));
    layout
        .horizontals()
        .forEach(h -> members.add(new PieceRef(PieceRef.Kind.HORIZONTAL, h.index())));
    layout.splices().forEach(s -> members.add(new PieceRef(PieceRef.Kind.SPLICE, s.index())));
    for (PieceRef member : members) {
      for (String why : NotChecked.of(wall.facts().analysis(), member)) {
        pieces.computeIfAbsent(why, any -> new ArrayList<>()).add(index.name(member));
      }
    }
    List<List<Entry>> rows = new ArrayList<>();
    pieces.forEach((why, names) -> rows.add(List.of(Entry.text(why), new Entry.Names(names))));
    NEVER.forEach(what -> rows.add(List.of(Entry.text(what), Entry.text("any"))));
    return List.of(
        new Table(
            "not-checked",
            "Not checked",
            List.of(Column.text("what", "What"), Column.names("piece", "Piece")),
            rows,
            List.of()));
  }
}
