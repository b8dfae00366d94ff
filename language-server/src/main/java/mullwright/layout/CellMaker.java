package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.LiteUse;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * Measures a framed opening: daylight opening between sightlines, glass size with its bites.
 *
 * <p>Where an edge slopes the sizes are those of the bounding rectangle. A door or void is less
 * than the daylight opening by its stated clearance at each framed edge.
 */
final class CellMaker {
  /** What bounds a cell; a grid opening's lower or upper edge may be without a horizontal. */
  private record Edges(
      int firstBay,
      int lastBay,
      Optional<Bar> below,
      Optional<Bar> above,
      Length sill,
      Length head) {}

  /** How far the filling goes behind each sightline. */
  private record Bites(Length left, Length right, Length bottom, Length top) {}

  private final Frame frame;
  private final List<Cell> cells = new ArrayList<>();

  CellMaker(Frame frame) {
    this.frame = frame;
  }

  List<Cell> cells() {
    return cells;
  }

  void lite(Bar below, Bar above, int lastBay, Optional<LiteUse> use) {
    String name = frame.names.cell(use.isPresent(), below.bay(), lastBay, below.row(), above.row());
    Edges edges =
        new Edges(
            below.bay(),
            lastBay,
            Optional.of(below),
            Optional.of(above),
            below.middle(),
            above.middle());
    Origin origin = use.map(LiteUse::origin).orElse(below.origin());
    make(edges, use, Optional.empty(), name, origin);
  }

  void opening(Span span, int lastBay) {
    String name = frame.names.opening(span.opening(), span.bay(), lastBay);
    Edges edges =
        new Edges(span.bay(), lastBay, span.sill(), span.head(), span.bottom(), span.top());
    make(edges, Optional.empty(), Optional.of(span.opening()), name, span.opening().origin());
  }

  private void make(
      Edges edges,
      Optional<LiteUse> use,
      Optional<Grid.Opening> opening,
      String name,
      Origin origin) {
    int leftLine = frame.grid.bays().get(edges.firstBay()).left();
    int rightLine = frame.grid.bays().get(edges.lastBay()).right();
    Optional<Run> leftRun = beside(leftLine, edges);
    Optional<Run> rightRun = beside(rightLine, edges);
    if (leftRun.isEmpty() || rightRun.isEmpty()) {
      frame.impossible.add(
          Impossible.because(Impossible.Reason.NO_VERTICAL, name, leftLine, rightLine, origin));
      return;
    }
    Widths leftWidths = leftRun.get().widths();
    Widths rightWidths = rightRun.get().widths();
    if (!leftWidths.known()
        || !rightWidths.known()
        || !edges.below().map(bar -> bar.widths().known()).orElse(true)
        || !edges.above().map(bar -> bar.widths().known()).orElse(true)) {
      return;
    }
    Length left =
        frame
            .lines
            .x(leftLine)
            .plus(leftWidths.toSightline(Side.RIGHT, frame.lines.corner(leftLine)));
    Length right =
        frame
            .lines
            .x(rightLine)
            .minus(rightWidths.toSightline(Side.LEFT, frame.lines.corner(rightLine)));
    Optional<Part.Glass> glass = use.flatMap(lite -> frame.profiles.glass(lite.glass().value()));
    Bites bites =
        opening.filter(CellMaker::bare).isPresent()
            ? clearances(edges, opening.get())
            : bites(edges, glass, leftWidths, rightWidths);
    Length glassLeft = left.minus(bites.left());
    Length glassRight = right.plus(bites.right());
    Length bottom = lower(edges, left, Length.ZERO);
    Length top = upper(edges, left, Length.ZERO);
    Length height = top.minus(bottom);
    Length glassHeight = height.plus(bites.bottom()).plus(bites.top());
    boolean rectangular = level(edges.below()) && level(edges.above());
    if (!rectangular) {
      Length rightBottom = lower(edges, right, Length.ZERO);
      Length rightTop = upper(edges, right, Length.ZERO);
      // at its taller side: a triangle has no height at the other
      height = Length.max(height, rightTop.minus(rightBottom));
      bottom = Length.min(bottom, rightBottom);
      top = Length.max(top, rightTop);
      glassHeight = slopedGlass(edges, bites, glassLeft, glassRight);
    }
    Length least =
        Length.min(
            Length.min(right.minus(left), height),
            Length.min(glassRight.minus(glassLeft), glassHeight));
    if (least.signum() <= 0) {
      frame.impossible.add(Impossible.noLength(name, least, leftLine, rightLine, origin));
      return;
    }
    cells.add(
        new Cell(
            cells.size(),
            edges.firstBay(),
            edges.lastBay(),
            edges.below().map(Bar::row).orElse(-1),
            edges.above().map(Bar::row).orElse(-1),
            left,
            right,
            bottom,
            top,
            rectangular,
            use,
            glass,
            opening,
            glassRight.minus(glassLeft),
            glassHeight,
            bites.left(),
            bites.right(),
            bites.bottom(),
            bites.top(),
            name));
  }

  private Optional<Run> beside(int line, Edges edges) {
    Length x = frame.lines.x(line);
    return frame.runs.beside(
        line,
        edges.below().map(bar -> bar.yAt(x)).orElse(edges.sill()),
        edges.above().map(bar -> bar.yAt(x)).orElse(edges.head()));
  }

  /** The lower boundary at that place, so far behind the sightline. */
  private static Length lower(Edges edges, Length x, Length behind) {
    return edges
        .below()
        .map(bar -> bar.yAt(x).plus(bar.line().upright(bar.widths().halfSightline().minus(behind))))
        .orElse(edges.sill().minus(behind));
  }

  private static Length upper(Edges edges, Length x, Length behind) {
    return edges
        .above()
        .map(
            bar -> bar.yAt(x).minus(bar.line().upright(bar.widths().halfSightline().minus(behind))))
        .orElse(edges.head().plus(behind));
  }

  private static Length slopedGlass(Edges edges, Bites bites, Length left, Length right) {
    Length top = Length.max(upper(edges, left, bites.top()), upper(edges, right, bites.top()));
    Length bottom =
        Length.min(lower(edges, left, bites.bottom()), lower(edges, right, bites.bottom()));
    return top.minus(bottom);
  }

  private static boolean level(Optional<Bar> bar) {
    return bar.map(found -> found.line().isLevel()).orElse(true);
  }

  /** True for a door or a void. */
  static boolean bare(Grid.Opening opening) {
    return opening.kind() == Grid.OpeningKind.DOOR || opening.kind() == Grid.OpeningKind.VOID;
  }

  private static Bites clearances(Edges edges, Grid.Opening opening) {
    Length less = opening.clear().map(Given::value).orElse(Length.ZERO).negated();
    return new Bites(
        less,
        less,
        edges.below().isPresent() ? less : Length.ZERO,
        edges.above().isPresent() ? less : Length.ZERO);
  }

  private static Bites bites(Edges edges, Optional<Part.Glass> glass, Widths left, Widths right) {
    Optional<Length> own = glass.flatMap(Part.Glass::bite).map(Given::value);
    return new Bites(
        own.orElseGet(() -> left.profile().orElseThrow().biteRight().value()),
        own.orElseGet(() -> right.profile().orElseThrow().biteLeft().value()),
        edges.below().map(bar -> bite(bar, own, true)).orElse(Length.ZERO),
        edges.above().map(bar -> bite(bar, own, false)).orElse(Length.ZERO));
  }

  private static Length bite(Bar bar, Optional<Length> own, boolean above) {
    Part.Profile profile = bar.widths().profile().orElseThrow();
    return own.orElse(above ? profile.biteRight().value() : profile.biteLeft().value());
  }
}
