package mullwright.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.CoverPiece;
import mullwright.layout.EndCut;
import mullwright.layout.HolePlaces;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceMarks;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;

/**
 * The tickets of a wall: verticals, horizontals, reinforcement, plates, caps; of each kind in the
 * order its pieces first appear in the layout.
 *
 * <p>Pieces of a mark that are turned end for end are told as the first of them lies.
 */
public final class Tickets {
  private final WallLayout layout;
  private final HolePlaces holes;
  private final PieceMarks marks;
  private final Map<String, Ticket> first = new LinkedHashMap<>();
  private final Map<String, List<String>> names = new LinkedHashMap<>();

  private Tickets(WallLayout layout, HolePlaces holes, PieceMarks marks) {
    this.layout = layout;
    this.holes = holes;
    this.marks = marks;
  }

  /** One ticket for each mark. */
  public static List<Ticket> of(WallLayout layout, HolePlaces holes, PieceMarks marks) {
    Tickets tickets = new Tickets(layout, holes, marks);
    layout.verticals().forEach(tickets::add);
    layout.horizontals().forEach(tickets::add);
    Map<String, String> bars = new LinkedHashMap<>();
    for (ReinforcingBar each : ReinforcingBars.of(layout)) {
      String form = each.part() + " " + each.length().ticks();
      String mark = bars.computeIfAbsent(form, any -> "R" + (bars.size() + 1));
      tickets.add(each, mark);
    }
    for (int at = 0; at < layout.covers().size(); at++) {
      tickets.addCover(at);
    }
    List<Ticket> all = new ArrayList<>();
    tickets.first.forEach((mark, ticket) -> all.add(tickets.whole(mark, ticket)));
    return all;
  }

  private Ticket whole(String mark, Ticket ticket) {
    return new Ticket(
        ticket.kind(),
        mark,
        names.get(mark),
        ticket.profile(),
        ticket.length(),
        ticket.first(),
        ticket.last(),
        ticket.holes(),
        ticket.notch());
  }

  private boolean known(String mark, String name) {
    names.computeIfAbsent(mark, any -> new ArrayList<>()).add(name);
    return first.containsKey(mark);
  }

  private void add(VerticalPiece piece) {
    String mark = marks.vertical(piece.index());
    if (!known(mark, piece.name())) {
      first.put(
          mark,
          new Ticket(
              Ticket.Kind.VERTICAL,
              mark,
              List.of(),
              piece.profile().name(),
              piece.length(),
              holes.bottom(piece),
              holes.top(piece),
              TicketHole.of(holes.vertical(piece.index())),
              Optional.empty()));
    }
  }

  private void add(HorizontalPiece piece) {
    String mark = marks.horizontal(piece.index());
    if (!known(mark, piece.name())) {
      EndCut ends = holes.ends(piece);
      first.put(
          mark,
          new Ticket(
              Ticket.Kind.HORIZONTAL,
              mark,
              List.of(),
              piece.profile().name(),
              piece.length(),
              ends,
              ends,
              TicketHole.of(holes.horizontal(piece.index())),
              piece.profile().notch()));
    }
  }

  private void add(ReinforcingBar bar, String mark) {
    if (!known(mark, bar.name())) {
      first.put(
          mark,
          new Ticket(
              Ticket.Kind.REINFORCEMENT,
              mark,
              List.of(),
              bar.part(),
              bar.length(),
              EndCut.SQUARE,
              EndCut.SQUARE,
              List.of(),
              Optional.empty()));
    }
  }

  private void addCover(int index) {
    CoverPiece cover = layout.covers().get(index);
    String mark = marks.cover(index);
    if (!known(mark, cover.name())) {
      EndCut ends = holes.ends(cover);
      first.put(
          mark,
          new Ticket(
              cover.what() == CoverPiece.What.PRESSURE_PLATE
                  ? Ticket.Kind.PRESSURE_PLATE
                  : Ticket.Kind.FACE_CAP,
              mark,
              List.of(),
              cover.part(),
              cover.length(),
              ends,
              ends,
              TicketHole.of(holes.cover(index)),
              Optional.empty()));
    }
  }
}
