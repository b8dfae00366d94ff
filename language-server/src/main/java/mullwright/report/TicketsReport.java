package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.layout.HolePlaces;
import mullwright.layout.WallLayout;
import mullwright.takeoff.Ticket;
import mullwright.takeoff.Tickets;

/**
 * Tickets for the shop: every piece with its length, end cuts, notches and holes.
 *
 * <p>Tables in this order: pieces, holes, fasteners of the plates, clearance of the holes; rows in
 * the order of the marks (verticals, horizontals, reinforcement, plates, caps; each as its pieces
 * first appear in the layout), then from the piece's lower or left end.
 */
@AutoService(Report.class)
public final class TicketsReport implements Report {
  @Override
  public String name() {
    return "tickets";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return new Document(
        name(),
        "Piece tickets",
        walls.stream().map(TicketsReport::section).toList(),
        List.of(Caution.WORDS));
  }

  private static Document.Section section(WallAtHand wall) {
    WallLayout layout = wall.facts().layout();
    String name = layout.wall().name();
    HolePlaces holes = wall.facts().analysis().holes();
    List<Ticket> tickets = Tickets.of(layout, holes, Marks.of(wall));
    TicketTables tables = new TicketTables(layout, wall.units(), tickets);
    List<Table> all = new ArrayList<>(List.of(tables.pieces(), tables.holes(), tables.plates()));
    all.add(tables.clearances());
    all.removeIf(table -> table.rows().isEmpty());
    return new Document.Section(
        "Wall " + name, wall.file(), name, Warnings.of(wall, "made", all.isEmpty()), all);
  }
}
