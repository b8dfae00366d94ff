package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Length;

/** Tells how daylight opening and glass size of a cell came about. */
final class CellTrace {
  private final Frame frame;
  private final Trace trace;

  CellTrace(Frame frame, Trace trace) {
    this.frame = frame;
    this.trace = trace;
  }

  Derivation daylightWidth(Cell cell) {
    int left = frame.grid.bays().get(cell.firstBay()).left();
    int right = frame.grid.bays().get(cell.lastBay()).right();
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(trace.spacing(left, right));
    String formula = "line spacing" + sightline(cell, left, Side.RIGHT, inputs);
    formula += sightline(cell, right, Side.LEFT, inputs);
    return computed("daylight width", cell.daylightWidth(), formula, inputs);
  }

  private String sightline(Cell cell, int line, Side of, List<Derivation> inputs) {
    Part.Profile profile = vertical(cell, line);
    return EndTrace.width(
        of, profile, frame.lines.corner(line), "sightline", profile.sightline(), inputs);
  }

  private Part.Profile vertical(Cell cell, int line) {
    Length x = frame.lines.x(line);
    return frame
        .runs
        .beside(
            line,
            below(cell).map(bar -> bar.yAt(x)).orElse(cell.bottom()),
            above(cell).map(bar -> bar.yAt(x)).orElse(cell.top()))
        .flatMap(run -> run.widths().profile())
        .orElseThrow();
  }

  private Optional<Bar> below(Cell cell) {
    return cell.below() < 0
        ? Optional.empty()
        : Optional.of(frame.bars.in(cell.firstBay(), cell.below()));
  }

  private Optional<Bar> above(Cell cell) {
    return cell.above() < 0
        ? Optional.empty()
        : Optional.of(frame.bars.in(cell.firstBay(), cell.above()));
  }

  Derivation daylightHeight(Cell cell) {
    if (!cell.rectangular()) {
      return computed(
          "daylight height",
          cell.daylightHeight(),
          "highest point − lowest point",
          List.of(point("highest point", cell, true), point("lowest point", cell, false)));
    }
    List<Derivation> inputs = new ArrayList<>();
    Derivation top = centre(cell, above(cell), cell.opening().map(Grid.Opening::top), "upper edge");
    Derivation bottom =
        centre(cell, below(cell), cell.opening().map(Grid.Opening::bottom), "lower edge");
    inputs.add(top);
    inputs.add(bottom);
    String formula = top.name() + " − " + bottom.name();
    formula += half(below(cell), "lower sightline", inputs);
    formula += half(above(cell), "upper sightline", inputs);
    return computed("daylight height", cell.daylightHeight(), formula, inputs);
  }

  private Derivation centre(
      Cell cell, Optional<Bar> bar, Optional<mullwright.model.Height> stated, String name) {
    return bar.isPresent()
        ? trace.row(bar.get(), cell.left())
        : trace.place(name, stated.orElseThrow());
  }

  private static String half(Optional<Bar> bar, String name, List<Derivation> inputs) {
    if (bar.isEmpty()) {
      return "";
    }
    inputs.add(Trace.given(name, profile(bar.get()).sightline()));
    return " − ½ " + name;
  }

  private static Part.Profile profile(Bar bar) {
    return bar.widths().profile().orElseThrow();
  }

  private Derivation point(String name, Cell cell, boolean top) {
    Optional<Bar> bar = top ? above(cell) : below(cell);
    Length y = top ? cell.top() : cell.bottom();
    if (bar.isEmpty()) {
      return trace.place(
          name, cell.opening().map(top ? Grid.Opening::top : Grid.Opening::bottom).orElseThrow());
    }
    Bar at = bar.get();
    Length half = at.line().upright(at.widths().halfSightline());
    Length centre = top ? y.plus(half) : y.minus(half);
    Length x = at.yAt(cell.left()).equals(centre) ? cell.left() : cell.right();
    Derivation row = trace.row(at, x);
    Derivation sightline = Trace.given("sightline", profile(at).sightline());
    String formula = row.name() + (top ? " − " : " + ") + "½ sightline";
    return at.line().isLevel()
        ? Derivation.computed(name, y, formula, Trace.PRACTICE, row, sightline)
        : Derivation.computed(
            name, y, formula + " ÷ cos(slope)", Trace.PRACTICE, row, sightline, Trace.slope(at));
  }

  Derivation glassWidth(Cell cell) {
    Derivation daylight = daylightWidth(cell);
    if (bare(cell)) {
      return clear("clear width", cell.glassWidth(), daylight, 2, cell.opening().orElseThrow());
    }
    int left = frame.grid.bays().get(cell.firstBay()).left();
    int right = frame.grid.bays().get(cell.lastBay()).right();
    return computed(
        "glass width",
        cell.glassWidth(),
        "daylight width + left bite + right bite",
        List.of(
            daylight,
            bite("left bite", cell, vertical(cell, left).biteRight()),
            bite("right bite", cell, vertical(cell, right).biteLeft())));
  }

  Derivation glassHeight(Cell cell) {
    Derivation daylight = daylightHeight(cell);
    if (bare(cell) && cell.rectangular()) {
      int framed = (cell.below() < 0 ? 0 : 1) + (cell.above() < 0 ? 0 : 1);
      return clear(
          "clear height", cell.glassHeight(), daylight, framed, cell.opening().orElseThrow());
    }
    if (!cell.rectangular()) {
      return computed(
          "glass height",
          cell.glassHeight(),
          "bounding height of the daylight opening with bite or clearance at each edge",
          List.of(daylight));
    }
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(daylight);
    String formula = "daylight height";
    if (cell.below() >= 0) {
      inputs.add(bite("lower bite", cell, profile(below(cell).orElseThrow()).biteRight()));
      formula += " + lower bite";
    }
    if (cell.above() >= 0) {
      inputs.add(bite("upper bite", cell, profile(above(cell).orElseThrow()).biteLeft()));
      formula += " + upper bite";
    }
    return computed("glass height", cell.glassHeight(), formula, inputs);
  }

  private static Derivation bite(String name, Cell cell, Given<Length> ofProfile) {
    return Trace.given(name, cell.glass().flatMap(Part.Glass::bite).orElse(ofProfile));
  }

  private static boolean bare(Cell cell) {
    return cell.opening().map(CellMaker::bare).orElse(false);
  }

  // a door or void is less than the daylight opening by its clearance at each framed edge
  private static Derivation clear(
      String name, Length value, Derivation daylight, int edges, Grid.Opening opening) {
    if (opening.clear().isEmpty() || edges == 0) {
      return Derivation.computed(name, value, daylight.name(), Trace.PRACTICE, daylight);
    }
    return Derivation.computed(
        name,
        value,
        daylight.name() + (edges == 2 ? " − 2 × clearance" : " − clearance"),
        Trace.PRACTICE,
        daylight,
        Trace.given("clearance", opening.clear().get()));
  }

  private static Derivation computed(
      String name, Length value, String formula, List<Derivation> inputs) {
    return Derivation.computed(
        name, value, formula, Trace.PRACTICE, inputs.toArray(Derivation[]::new));
  }
}
