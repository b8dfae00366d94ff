package mullwright.server.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.analysis.wall.AnchorDemand;
import mullwright.analysis.wall.HorizontalSpan;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.Grid;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.server.hover.Numbers;

/** One line on what a piece is and carries, numbers in both systems of units. */
public final class PieceWords {
  /** Stands beside every force: nobody may take it for an engineer's. */
  public static final String CAUTION =
      "An aid to drafting: a licensed engineer and the local code govern.";

  private static final String SHORT_CAUTION = " (aid to drafting)";

  private final WallPieces wall;
  private final Numbers numbers;

  public PieceWords(WallPieces wall) {
    this.wall = wall;
    this.numbers = wall.numbers();
  }

  /** The line on a piece. */
  public String of(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> vertical(wall.layout().verticals().get(piece.index()));
      case HORIZONTAL -> horizontal(wall.layout().horizontals().get(piece.index()));
      case SPLICE ->
          "splice, open " + numbers.of(wall.layout().splices().get(piece.index()).splice().gap());
      case ANCHOR -> anchor(wall.layout().anchors().get(piece.index()));
      case CELL -> lite(wall.layout().cells().get(piece.index()));
      case COVER -> "";
    };
  }

  private String vertical(VerticalPiece piece) {
    return piece.profile().name()
        + ", cut length "
        + numbers.cut(piece.length())
        + ", weight with what hangs on it "
        + force(wall.facts().analysis().weightOf(piece))
        + SHORT_CAUTION
        + ", "
        + wall.facts().analysis().holdOf(piece).landing().words();
  }

  private String horizontal(HorizontalPiece piece) {
    HorizontalSpan span = wall.facts().analysis().spanOf(piece);
    return piece.profile().name()
        + ", cut length "
        + numbers.cut(piece.length())
        + ", weight of the lites on it "
        + force(span.glassWeight())
        + (span.borneWeight() > 0 ? ", of the verticals it bears " + force(span.borneWeight()) : "")
        + SHORT_CAUTION;
  }

  private String anchor(PlacedAnchor anchor) {
    String part = anchor.use().part().map(name -> name.value() + ", ").orElse("");
    List<String> loads = new ArrayList<>();
    for (AnchorDemand demand : AnchorDemand.all(wall.facts().analysis(), anchor)) {
      loads.add(force(demand.newtons()) + " " + demand.direction());
    }
    return part + (loads.isEmpty() ? "no load found" : String.join(", ", loads) + SHORT_CAUTION);
  }

  private String lite(Cell cell) {
    GlassSizes sizes = GlassSizes.of(cell, numbers.first());
    String mass = sizes.mass().map(it -> ", " + numbers.of(it, Kind.MASS)).orElse("");
    return filling(cell)
        + ", "
        + numbers.cut(cell.glassWidth())
        + " × "
        + numbers.cut(cell.glassHeight())
        + mass;
  }

  private static String filling(Cell cell) {
    return cell.use()
        .map(use -> use.glass().value())
        .or(() -> cell.opening().map(Grid.Opening::name))
        .orElse("nothing");
  }

  /** How many lites, and their mass where it is known: {@code 6 lites, 412 lb (186.9 kg)}. */
  public String lites(List<Cell> lites) {
    Rational mass = Rational.ZERO;
    for (Cell cell : lites) {
      mass =
          mass.plus(
              GlassSizes.of(cell, numbers.first()).mass().map(Quantity::si).orElse(Rational.ZERO));
    }
    String count = count(lites.size(), "lite");
    return mass.signum() == 0
        ? count
        : count + ", " + numbers.of(new Quantity(mass, Kind.MASS.dimension()), Kind.MASS);
  }

  /** {@code 1 lite}, {@code 6 lites}. */
  public static String count(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }

  /** A force of that many newtons. */
  public String force(double newtons) {
    return numbers.of(Quantity.ofSi(newtons, Kind.FORCE), Kind.FORCE);
  }

  /** The greatest weight horizontals bring to one of their ends; empty where none was solved. */
  public Optional<String> ends(List<PieceRef> horizontals) {
    double greatest = 0;
    for (PieceRef piece : horizontals) {
      HorizontalSpan span =
          wall.facts().analysis().spanOf(wall.layout().horizontals().get(piece.index()));
      if (span.weight().isPresent()) {
        for (double end : List.of(0.0, span.length())) {
          greatest = Math.max(greatest, span.weight().get().reactions(end).greatest().value());
        }
      }
    }
    return greatest > 0 ? Optional.of(force(greatest) + " down at an end") : Optional.empty();
  }

  /** The greatest force in each direction over anchors. */
  public Optional<String> reactions(List<PieceRef> anchors) {
    Map<String, Double> greatest = new LinkedHashMap<>();
    for (String direction : List.of("down", "in", "out")) {
      for (PieceRef piece : anchors) {
        PlacedAnchor anchor = wall.layout().anchors().get(piece.index());
        for (AnchorDemand demand : AnchorDemand.all(wall.facts().analysis(), anchor)) {
          if (demand.direction().equals(direction)) {
            greatest.merge(direction, demand.newtons(), Math::max);
          }
        }
      }
    }
    return greatest.isEmpty()
        ? Optional.empty()
        : Optional.of(
            greatest.entrySet().stream()
                .map(it -> force(it.getValue()) + " " + it.getKey())
                .collect(Collectors.joining(", ")));
  }
}
