package mullwright.server.hover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.GlassSizes;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.quantity.Kind;
import mullwright.workspace.WallDetails;

/** Tells of the pieces of a wall: each by itself if they are few, equal ones together. */
final class Pieces {
  private static final int NAMED = 4;
  private static final int GROUPS = 12;
  private static final int WORKING_LINES = 28;

  private final WallDetails wall;
  private final WallLayout layout;
  private final Numbers numbers;

  Pieces(WallDetails wall, Numbers numbers) {
    this.wall = wall;
    this.layout = wall.layout();
    this.numbers = numbers;
  }

  /**
   * Pieces that are told in the same words.
   *
   * @param working how the first of them came to its size
   */
  private record Group(List<String> names, List<Derivation> working) {}

  /** Adds to a page what is to be told of those pieces; covers are only counted. */
  void tell(List<PieceRef> pieces, Page page) {
    Map<String, Group> groups = new LinkedHashMap<>();
    int plates = 0;
    int caps = 0;
    for (PieceRef piece : pieces) {
      switch (piece.kind()) {
        case VERTICAL -> add(groups, layout.verticals().get(piece.index()));
        case HORIZONTAL -> add(groups, layout.horizontals().get(piece.index()));
        case SPLICE -> add(groups, layout.splices().get(piece.index()));
        case ANCHOR -> add(groups, layout.anchors().get(piece.index()));
        case CELL -> add(groups, layout.cells().get(piece.index()));
        case COVER -> {
          boolean plate =
              layout.covers().get(piece.index()).what() == CoverPiece.What.PRESSURE_PLATE;
          plates += plate ? 1 : 0;
          caps += plate ? 0 : 1;
        }
      }
    }
    groups.entrySet().stream()
        .limit(GROUPS)
        .forEach(group -> page.fact(names(group.getValue().names), group.getKey()));
    if (groups.size() > GROUPS) {
      page.line("… and " + (groups.size() - GROUPS) + " more sizes.");
    }
    if (plates + caps > 0) {
      page.fact("on them", plates + " pressure plates, " + caps + " face caps");
    }
    groups.values().stream()
        .filter(group -> !group.working.isEmpty())
        .findFirst()
        .ifPresent(group -> page.working(working(group)));
  }

  private static String names(List<String> names) {
    if (names.size() == 1) {
      return names.get(0);
    }
    String some = String.join("; ", names.subList(0, Math.min(NAMED, names.size())));
    int more = names.size() - NAMED;
    return names.size() + " × (" + some + (more > 0 ? "; … " + more + " more" : "") + ")";
  }

  private List<String> working(Group group) {
    List<String> lines = new ArrayList<>();
    lines.add(group.names.get(0) + ":");
    for (Derivation number : group.working) {
      lines.addAll(DerivationText.allLines(number, numbers.first()));
    }
    if (lines.size() > WORKING_LINES) {
      lines.subList(WORKING_LINES, lines.size()).clear();
      lines.add("…");
    }
    return lines;
  }

  private static void add(
      Map<String, Group> groups, String name, String told, List<Derivation> working) {
    groups.computeIfAbsent(told, words -> new Group(new ArrayList<>(), working)).names.add(name);
  }

  private void add(Map<String, Group> groups, VerticalPiece piece) {
    String told =
        wall.marks().vertical(piece.index())
            + ", "
            + piece.profile().name()
            + ", cut length "
            + numbers.cut(piece.length());
    add(groups, piece.name(), told, first(groups, told, () -> wall.trace().vertical(piece)));
  }

  private void add(Map<String, Group> groups, HorizontalPiece piece) {
    String told =
        wall.marks().horizontal(piece.index())
            + ", "
            + piece.profile().name()
            + ", cut length "
            + numbers.cut(piece.length());
    add(groups, piece.name(), told, first(groups, told, () -> wall.trace().horizontal(piece)));
  }

  private void add(Map<String, Group> groups, SpliceJoint joint) {
    String told = "at " + numbers.of(joint.y()) + ", open " + numbers.of(joint.splice().gap());
    add(groups, joint.name(), told, List.of());
  }

  private void add(Map<String, Group> groups, PlacedAnchor anchor) {
    String told =
        anchor.use().kind().spelling()
            + anchor.use().part().map(part -> ", part " + part.value()).orElse("")
            + ", bolt line at "
            + numbers.of(anchor.y());
    add(groups, anchor.name(), told, first(groups, told, () -> wall.trace().height(anchor)));
  }

  private void add(Map<String, Group> groups, Cell cell) {
    Optional<String> mark = wall.marks().lite(cell.index());
    String what =
        cell.use()
            .map(use -> use.glass().value())
            .or(
                () ->
                    cell.opening()
                        .map(opening -> opening.kind().name().toLowerCase(java.util.Locale.ROOT)))
            .orElse("nothing fills it");
    StringBuilder told = new StringBuilder(mark.map(m -> m + ", ").orElse("")).append(what);
    told.append(", size ")
        .append(numbers.of(cell.glassWidth()))
        .append(" × ")
        .append(numbers.of(cell.glassHeight()));
    told.append(", daylight ")
        .append(numbers.of(cell.daylightWidth()))
        .append(" × ")
        .append(numbers.of(cell.daylightHeight()));
    GlassSizes sizes = GlassSizes.of(cell, numbers.first());
    told.append(", area ").append(numbers.of(sizes.area(), Kind.AREA));
    sizes.mass().ifPresent(mass -> told.append(", mass ").append(numbers.of(mass, Kind.MASS)));
    if (!cell.rectangular()) {
      told.append(", bounding size of a sloped lite, not checked");
    }
    String words = told.toString();
    add(
        groups,
        cell.name(),
        words,
        groups.containsKey(words)
            ? List.of()
            : List.of(wall.trace().glassWidth(cell), wall.trace().glassHeight(cell)));
  }

  /** Tracing is work: only the first of equal pieces is traced. */
  private static List<Derivation> first(
      Map<String, Group> groups, String told, java.util.function.Supplier<Derivation> trace) {
    return groups.containsKey(told) ? List.of() : List.of(trace.get());
  }
}
