package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Role;
import mullwright.model.Wall;
import mullwright.quantity.Length;
import mullwright.quantity.UnitSystem;
import mullwright.server.hover.Numbers;
import mullwright.syntax.StatementKind;

/**
 * Whole statements with tab stops that go on what is under way: the next free name, the lines,
 * floors and rows the wall has, the parts that suit the place, lengths in the units of the file.
 */
final class Snippets {
  private final Names names;
  private final Numbers numbers;
  private final FreePlaces places;

  Snippets(Names names, Numbers numbers) {
    this.names = names;
    this.numbers = numbers;
    this.places = new FreePlaces(names.wall(), this);
  }

  /** The statement with tab stops, or "" if there is nothing to fill in. */
  String of(StatementKind kind) {
    Stops stops = new Stops().text(kind.spelling());
    switch (kind) {
      case WALL_BLOCK -> stops.text(" ").stop("Name");
      case PROJECT_BLOCK, CATALOG_BLOCK -> stops.text(" \"").stop("Name").text("\"");
      case LET -> stops.text(" ").stop("name").text(" = ").stop(length("5'-0\"", "1500"));
      case UNITS -> stops.text(" ").choice(Offers.UNITS, "");
      case LINES_STATEMENT,
          LINE,
          FLOOR,
          FLOORS,
          SLAB_STATEMENT,
          ROW,
          FACE,
          CORNER,
          JOINT,
          OPENING ->
          grid(kind, stops);
      case VERTICAL, HORIZONTAL, SPLICE, REINFORCE, BRACKET, END_DAM -> member(kind, stops);
      case DEAD_LOAD, WIND_LOAD, CLIP -> anchor(kind, stops);
      case VISION, SPANDREL -> lite(kind, stops);
      case LADDER, STICK ->
          stops
              .text(" ")
              .stop(places.unsetBays().or(() -> range(texts(names.lines()))).orElse("A..C"));
      default -> {
        if (kind.opens().isEmpty()) {
          return "";
        }
      }
    }
    if (kind.opens().isPresent()) {
      // not through text(): these braces are the snippet's own
      return stops + " {\n\t$0\n}";
    }
    return stops.end().toString();
  }

  private void grid(StatementKind kind, Stops stops) {
    List<String> lines = texts(names.lines());
    List<String> floors = texts(names.floors());
    stops.text(" ");
    switch (kind) {
      case LINES_STATEMENT -> {
        if (lines.isEmpty()) {
          stops.stop("A..G").text(" spaced ").stop("6").text(" @ ");
          stops.stop(length("5'-0\"", "1500"));
        } else {
          // spacings begin at the first line; lines beyond those there are have places
          stops.stop(NextName.after(lines).orElse("Z")).text(" at ").stop(places.nextLine());
        }
      }
      case LINE -> {
        String base = lines.isEmpty() ? "A" : lines.get(0);
        stops.stop(base + ".5").text(" at ").stop(length("2'-6\"", "750"));
        stops.text(" right of ").choice(lines, base);
      }
      case FLOOR -> {
        stops.stop(NextName.after(floors).orElse("L1")).text(" at ").stop(nextFloor());
        stops.text(" slab ").stop(length("10\"", "250"));
      }
      case FLOORS -> {
        String first = NextName.after(floors).orElse("L1");
        stops.stop(first + ".." + NextName.after(with(floors, first)).orElse("L2"));
        stops.text(" spaced ").stop("1").text(" @ ").stop(length("13'-0\"", "4000"));
        if (!floors.isEmpty()) {
          stops.text(" at ").stop(nextFloor());
        }
      }
      case SLAB_STATEMENT ->
          stops.stop(length("10\"", "250")).text(" ").choice(with(List.of("all"), floors), "all");
      case ROW -> {
        stops.stop(NextName.after(bases()).orElse(places.rowName())).text(" at ");
        FreePlaces.Row free = places.row();
        stops.stop(free.height()).text(" above ").choice(first(free.floor(), floors), "L1");
      }
      case FACE -> {
        stops.stop(places.face()).text(" lines ").stop(nextLines(lines));
        stops.text(" spaced ").stop("2").text(" @ ").stop(length("5'-0\"", "1500"));
      }
      case CORNER ->
          stops.choice(texts(names.linesBetween()), "A").text(" ").stop("90").text(" deg");
      case JOINT -> stops.stop(places.openBay().orElse("C..D"));
      default -> {
        stops.choice(Offers.OPENINGS, "door").text(" ").stop(names.nextOpening()).text(" bays ");
        stops.stop(places.openBay().orElse("A..B")).text(" from ").choice(floors, "L1");
        stops.text(" to ").choice(places.heads(), "head").text(" by others");
      }
    }
  }

  private void member(StatementKind kind, Stops stops) {
    List<String> lines = texts(names.lines());
    List<String> floors = texts(names.floors());
    stops.text(" ");
    switch (kind) {
      case VERTICAL -> {
        stops.stop(range(lines).orElse("all")).text(" as ");
        stops.choice(played(true), "mullion");
      }
      case HORIZONTAL -> stops.choice(with(List.of("all"), bases()), "all");
      case SPLICE -> {
        stops.stop("all").text(" at ").stop(length("2'-0\"", "600")).text(" above ");
        stops.choice(floors.size() > 1 ? floors.subList(1, floors.size()) : floors, "L2");
        stops.text(" gap ").stop(length("5/8\"", "16"));
      }
      case REINFORCE -> {
        stops.choice(lines, "B").text(" with ");
        stops.choice(parts(PartKind.REINFORCEMENT), "part");
        stops.text(" from ").choice(floors, "L1").text(" to ");
        stops.choice(floors.size() > 1 ? floors.subList(1, floors.size()) : floors, "L2");
        stops.text(" isolated by ").choice(parts(PartKind.ISOLATION), "isolation");
      }
      case BRACKET -> {
        stops.choice(lines, "B").text(" at ").choice(floors, "L2").text(" ");
        stops.stop(numbers.first() == UnitSystem.US ? "40 lb" : "150 N").text(" down bolted ");
        stops.stop("4").text(" x ").choice(parts(PartKind.FASTENER), "fastener");
      }
      default -> stops.choice(lines, "A").text(" at ").choice(texts(names.rows()), "sill");
    }
  }

  private void anchor(StatementKind kind, Stops stops) {
    stops.text(" ").stop("all").text(" at ");
    if (kind == StatementKind.CLIP) {
      stops.choice(
          bases().stream().filter(it -> it.equals("sill") || it.equals("head")).toList(), "sill");
      return;
    }
    stops.choice(texts(names.floors()), "L2").text(" part ");
    stops.choice(texts(names.anchors(kind)), "anchor").text(" bolted ").stop("2").text(" x ");
    stops.choice(parts(PartKind.FASTENER), "fastener").text(" isolated by ");
    stops.choice(parts(PartKind.ISOLATION), "isolation");
  }

  private void lite(StatementKind kind, Stops stops) {
    stops.text(" ").choice(texts(names.glass(kind == StatementKind.VISION)), "V1").text(" ");
    List<String> rows = bases();
    if (rows.size() < 2) {
      stops.stop("all");
    } else {
      stops.text("rows ").choice(rows.subList(0, rows.size() - 1), rows.get(0)).text("..");
      stops.choice(rows.subList(1, rows.size()), rows.get(1));
    }
  }

  /** A length as the file writes them: US marks, or bare where it says what bare numbers are. */
  String length(String us, String millimetres) {
    if (numbers.first() == UnitSystem.US) {
      return us;
    }
    boolean bare =
        numbers.bare().filter(unit -> unit == mullwright.quantity.Unit.MILLIMETRE).isPresent();
    return bare ? millimetres : millimetres + " mm";
  }

  /** A length exactly, as the file writes them. */
  String exact(Length length) {
    return numbers.written(length);
  }

  /** As high above the last floor as that one is above the one before. */
  private String nextFloor() {
    List<Grid.Floor> floors = names.wall().map(wall -> wall.grid().floors()).orElse(List.of());
    if (floors.size() < 2) {
      return floors.isEmpty() ? length("0\"", "0") : length("13'-0\"", "4000");
    }
    Length last = floors.get(floors.size() - 1).elevation().value();
    Length before = floors.get(floors.size() - 2).elevation().value();
    return exact(last.plus(last.minus(before)));
  }

  /** The roles the wall's system has a profile for, that stand or lie; then such profiles. */
  private List<String> played(boolean standing) {
    List<String> found = new ArrayList<>();
    Optional<Part.WallSystem> system = names.wall().flatMap(Wall::system);
    for (Role role : Role.values()) {
      if (role.vertical() == standing
          && system.filter(it -> it.profiles().containsKey(role)).isPresent()) {
        found.add(role.spelling());
      }
    }
    found.addAll(texts(names.profiles(standing)));
    return found;
  }

  private List<String> bases() {
    return names
        .wall()
        .map(wall -> wall.grid().rows().stream().map(Grid.Row::base).distinct().toList())
        .orElse(List.of());
  }

  private List<String> parts(PartKind kind) {
    return texts(names.parts(List.of(kind)));
  }

  /** A face begins at the last line there is. */
  private static String nextLines(List<String> lines) {
    if (lines.isEmpty()) {
      return "A..C";
    }
    String next = NextName.after(lines).orElse("Y");
    return lines.get(lines.size() - 1) + ".." + NextName.after(with(lines, next)).orElse("Z");
  }

  private static List<String> first(String one, List<String> all) {
    return all.stream().sorted((a, b) -> Boolean.compare(b.equals(one), a.equals(one))).toList();
  }

  private static Optional<String> range(List<String> texts) {
    return texts.size() < 2
        ? Optional.empty()
        : Optional.of(texts.get(0) + ".." + texts.get(texts.size() - 1));
  }

  private static List<String> texts(List<Offer> offers) {
    return offers.stream().map(Offer::text).toList();
  }

  private static List<String> with(List<String> some, String one) {
    return with(some, List.of(one));
  }

  private static List<String> with(List<String> some, List<String> more) {
    List<String> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }
}
