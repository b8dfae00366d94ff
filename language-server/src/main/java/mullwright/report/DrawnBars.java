package mullwright.report;

import java.util.List;
import java.util.Optional;
import mullwright.drawing.piece.Bar;
import mullwright.layout.HolePlaces;
import mullwright.layout.SystemPart;
import mullwright.layout.WallLayout;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.UnitSystem;
import mullwright.takeoff.Ticket;
import mullwright.takeoff.TicketHole;
import mullwright.takeoff.Tickets;

/** The tickets of verticals and horizontals, as a drawing wants to know of them. */
public final class DrawnBars {
  private DrawnBars() {}

  /** One bar for each mark, in the order of the tickets. */
  public static List<Bar> of(Report.WallAtHand wall) {
    WallLayout layout = wall.facts().layout();
    HolePlaces holes = wall.facts().analysis().holes();
    return Tickets.of(layout, holes, Marks.of(wall)).stream()
        .filter(
            ticket ->
                ticket.kind() == Ticket.Kind.VERTICAL || ticket.kind() == Ticket.Kind.HORIZONTAL)
        .flatMap(ticket -> bar(layout, ticket, wall.units()).stream())
        .toList();
  }

  private static Optional<Bar> bar(WallLayout layout, Ticket ticket, UnitSystem units) {
    return layout
        .catalog()
        .find(PartKind.PROFILE, ticket.profile())
        .filter(Part.Profile.class::isInstance)
        .map(Part.Profile.class::cast)
        .map(
            profile ->
                new Bar(
                    ticket.kind() == Ticket.Kind.VERTICAL,
                    ticket.mark(),
                    ticket.kind().words(),
                    ticket.pieces(),
                    ticket.profile(),
                    profile.face().value(),
                    profile.depth().value(),
                    SystemPart.backOf(layout, profile),
                    ticket.length(),
                    TicketTables.ends(ticket, units),
                    ticket.first().slant(),
                    ticket.last().slant(),
                    ticket.holes().stream().map(DrawnBars::hole).toList(),
                    ticket.notch().map(notch -> new Bar.Notch(notch.along(), notch.back())),
                    Finish.of(layout.wall())));
  }

  private static Bar.Hole hole(TicketHole hole) {
    return new Bar.Hole(
        (hole.purpose().words() + " " + hole.part()).strip(),
        hole.side(),
        hole.along(),
        hole.back(),
        hole.diameter(),
        hole.fastener().orElse(""),
        hole.count());
  }
}
