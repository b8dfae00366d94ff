package mullwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.wall.HoleMatch;
import mullwright.layout.DrilledHole;
import mullwright.layout.EndCut;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Part;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Step;
import mullwright.quantity.UnitSystem;
import mullwright.takeoff.Ticket;
import mullwright.takeoff.TicketHole;

/** Tables of tickets. */
final class TicketTables {
  private final WallLayout layout;
  private final UnitSystem units;
  private final List<Ticket> tickets;

  TicketTables(WallLayout layout, UnitSystem units, List<Ticket> tickets) {
    this.layout = layout;
    this.units = units;
    this.tickets = tickets;
  }

  private LengthFormat place() {
    return units == UnitSystem.US
        ? LengthFormat.feetIfAny(Step.THIRTY_SECOND)
        : LengthFormat.millimetres(Step.TENTH_MILLIMETRE);
  }

  private LengthFormat small() {
    return small(units);
  }

  private static LengthFormat small(UnitSystem units) {
    return units == UnitSystem.US
        ? LengthFormat.feetIfAny(Step.SIXTY_FOURTH)
        : LengthFormat.millimetres(Step.TENTH_MILLIMETRE);
  }

  Table pieces() {
    List<Column> columns =
        List.of(
            Column.text("mark", "Mark"),
            Column.text("kind", "Kind"),
            Column.names("piece", "Pieces"),
            Column.text("profile", "Profile"),
            Column.count("quantity", "Qty"),
            Column.length("cut-length", "Cut length", PieceTables.cut(units)),
            Column.text("ends", "Ends"),
            Column.text("notch", "Notches"),
            Column.count("holes", "Holes"),
            Column.text("finish", "Finish").folding());
    String finish = Finish.of(layout.wall());
    List<List<Entry>> rows = new ArrayList<>();
    long count = 0;
    for (Ticket ticket : tickets) {
      boolean steel = ticket.kind() == Ticket.Kind.REINFORCEMENT;
      count += ticket.pieces().size();
      rows.add(
          List.of(
              Entry.text(ticket.mark()),
              Entry.text(ticket.kind().words()),
              new Entry.Names(ticket.pieces().stream().map(TicketTables::bare).toList()),
              Entry.text(ticket.profile()),
              new Entry.Count(ticket.pieces().size()),
              new Entry.Size(ticket.length()),
              Entry.text(ends(ticket)),
              Entry.text(ticket.notch().map(this::notch).orElse("")),
              new Entry.Count(ticket.holeCount()),
              Entry.text(steel ? "" : finish)));
    }
    List<Entry> totals =
        new ArrayList<>(List.of(Entry.NONE, Entry.NONE, Entry.text("in all"), Entry.NONE));
    totals.add(new Entry.Count(count));
    while (totals.size() < columns.size()) {
      totals.add(Entry.NONE);
    }
    return new Table("pieces", "Pieces", columns, rows, totals);
  }

  // the column before says what kind it is
  private static String bare(String name) {
    return name.replaceFirst("^(pressure plate|face cap|reinforcement) of ", "of ");
  }

  private String ends(Ticket ticket) {
    return ends(ticket, units);
  }

  /** How both ends are cut, in words. */
  static String ends(Ticket ticket, UnitSystem units) {
    String first = end(ticket.first(), units);
    String last = end(ticket.last(), units);
    return first.equals(last) ? first : first + "; " + last;
  }

  private static String end(EndCut cut, UnitSystem units) {
    String form =
        cut.square()
            ? "square"
            : "slanted, "
                + small(units).print(cut.slant().abs())
                + (cut.slant().signum() > 0 ? " rising" : " falling");
    return cut.sleeve().isEmpty() ? form : form + ", " + cut.sleeve() + " screwed on";
  }

  private String notch(Part.Notch notch) {
    return "both ends, "
        + LengthPrinter.in(units, notch.along())
        + " along, "
        + LengthPrinter.in(units, notch.back())
        + " back";
  }

  Table holes() {
    List<Column> columns =
        List.of(
            Column.text("mark", "Mark"),
            Column.length("along", "Along", place()),
            Column.length("back", "Back", place()),
            Column.length("diameter", "Diameter", small()),
            Column.text("side", "Side"),
            Column.count("quantity", "Qty"),
            Column.text("for", "For"),
            Column.text("part", "Part"),
            Column.text("fastener", "Fastener"),
            Column.text("remark", "Remark"));
    List<List<Entry>> rows = new ArrayList<>();
    for (Ticket ticket : tickets) {
      for (TicketHole hole : ticket.holes()) {
        if (hole.purpose() != DrilledHole.Purpose.PLATE_FASTENER) {
          rows.add(row(ticket, hole));
        }
      }
    }
    return new Table(
        "holes",
        "Holes, along from the lower or left end, back from the glass's outer face",
        columns,
        rows,
        List.of());
  }

  private static List<Entry> row(Ticket ticket, TicketHole hole) {
    return List.of(
        Entry.text(ticket.mark()),
        new Entry.Size(hole.along()),
        size(hole.back()),
        size(hole.diameter()),
        Entry.text(hole.side()),
        new Entry.Count(hole.count()),
        Entry.text(hole.purpose().words()),
        Entry.text(hole.part()),
        Entry.text(hole.fastener().orElse("")),
        Entry.text(remark(hole)));
  }

  private static String remark(TicketHole hole) {
    if (hole.purpose() == DrilledHole.Purpose.WEEP) {
      return "upper side of the plate";
    }
    return hole.diameter().isEmpty() ? "hole pattern not stated" : "";
  }

  private static Entry size(Optional<Length> length) {
    return length.<Entry>map(Entry.Size::new).orElse(Entry.NONE);
  }

  Table plates() {
    List<Column> columns =
        List.of(
            Column.text("mark", "Mark"),
            Column.text("plate", "Plate"),
            Column.count("quantity", "Qty"),
            Column.length("cut-length", "Cut length", PieceTables.cut(units)),
            Column.count("fasteners", "Fasteners"),
            Column.length("first", "First", place()),
            Column.length("spacing", "Spacing", place()),
            Column.text("fastener", "Fastener"));
    List<List<Entry>> rows = new ArrayList<>();
    for (Ticket ticket : tickets) {
      List<TicketHole> fasteners =
          ticket.holes().stream()
              .filter(hole -> hole.purpose() == DrilledHole.Purpose.PLATE_FASTENER)
              .toList();
      if (!fasteners.isEmpty()) {
        Length first = fasteners.get(0).along();
        rows.add(
            List.of(
                Entry.text(ticket.mark()),
                Entry.text(ticket.profile()),
                new Entry.Count(ticket.pieces().size()),
                new Entry.Size(ticket.length()),
                new Entry.Count(fasteners.size()),
                new Entry.Size(first),
                new Entry.Size(fasteners.get(1).along().minus(first)),
                Entry.text(fasteners.get(0).fastener().orElse(""))));
      }
    }
    return new Table(
        "plate-fasteners", "Fasteners of the pressure plates", columns, rows, List.of());
  }

  Table clearances() {
    List<Column> columns =
        List.of(
            Column.text("profile", "Profile"),
            Column.text("fastener", "Fastener"),
            Column.length("play", "Play", small()),
            Column.length("offset", "Off as drawn", small()),
            Column.length("tolerance-worst", "Off at worst", small()),
            Column.length("tolerance-likely", "Off as a rule", small()),
            Column.length("left-worst", "Left at worst", small()),
            Column.length("left-likely", "Left as a rule", small()),
            Column.text("tolerances", "Tolerances").folding());
    boolean stated =
        layout.wall().fabrication().cutTolerance().isPresent()
            && layout.wall().fabrication().holeTolerance().isPresent();
    Map<Part.Profile, List<HoleMatch>> matches = new LinkedHashMap<>();
    for (HorizontalPiece piece : layout.horizontals()) {
      matches.computeIfAbsent(piece.profile(), profile -> HoleMatch.expected(layout, profile));
    }
    List<List<Entry>> rows = new ArrayList<>();
    matches.forEach(
        (profile, all) ->
            all.stream()
                .min(Comparator.comparing(HoleMatch::left))
                .ifPresent(match -> rows.add(clearance(profile, match, stated))));
    return new Table(
        "clearances", "Clearance of the holes at the shear blocks", columns, rows, List.of());
  }

  private List<Entry> clearance(Part.Profile profile, HoleMatch match, boolean stated) {
    return List.of(
        Entry.text(profile.name()),
        Entry.text(match.block().fastener().orElse("")),
        new Entry.Size(match.play()),
        new Entry.Size(match.offset()),
        size(match.worst()),
        size(match.statistical()),
        size(match.leftAtWorst()),
        size(match.leftLikely()),
        Entry.text(
            stated
                ? "as stated"
                : "where not stated "
                    + LengthPrinter.in(units, HoleMatch.USUAL_TOLERANCE)
                    + " either way, default (common practice)"));
  }
}
