package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.drawing.NotesPage;
import mullwright.drawing.Panel;
import mullwright.drawing.Paper;
import mullwright.drawing.Scale;
import mullwright.drawing.Sheet;
import mullwright.drawing.TitleBlock;
import mullwright.layout.WallLayout;

/**
 * Puts an elevation on sheets: one if it fits at a usual scale, else several that meet at grid
 * lines and floors, numbered from the lower left, and sheets of notes if those need more room.
 */
public final class ElevationSheets {
  /** Scales smaller than this are for sketches: the wall is cut instead (common practice). */
  private static final double SMALLEST = 100;

  /** Scales larger than this are for details. */
  private static final double LARGEST = 20;

  /** A wall in more parts than these is drawn smaller, if it may be. */
  private static final int MOST_PARTS = 9;

  /** How far both sheets reach beyond the line they have in common [mm of paper]. */
  private static final double LAP = 8;

  /** A set of notes can be as long as its rows, each on a sheet of its own, and no longer. */
  private static final int MOST_NOTE_SHEETS = 200;

  private final WallLayout layout;
  private final ElevationOptions options;
  private final Paper paper;
  private final TitleBlock titleBlock;
  private final Box room;

  private ElevationSheets(
      WallLayout layout, ElevationOptions options, Paper paper, TitleBlock titleBlock) {
    this.layout = layout;
    this.options = options;
    this.paper = paper;
    this.titleBlock = titleBlock;
    this.room = Sheet.room(paper);
  }

  /**
   * The sheets of a wall's elevation.
   *
   * @param options their scale is what is wanted only if {@code scale} is empty and nothing else
   *     fits
   * @param scale to draw at; empty for the largest usual one that fits
   * @param notes to be printed with it, each a sentence
   */
  public static List<Sheet> of(
      WallLayout layout,
      ElevationOptions options,
      Optional<Scale> scale,
      Paper paper,
      TitleBlock titleBlock,
      List<String> notes) {
    Scale chosen = scale.orElseGet(() -> fitting(layout, options, Sheet.room(paper)));
    return new ElevationSheets(layout, options.at(chosen), paper, titleBlock).sheets(notes);
  }

  // the largest that fits one sheet; else that of the options, unless it makes too many
  private static Scale fitting(WallLayout layout, ElevationOptions options, Box room) {
    Elevation drawn = Elevation.of(layout, options);
    Box margins = margins(drawn);
    List<Scale> usual =
        Scale.usual(options.units()).stream()
            .filter(scale -> scale.ratio() >= LARGEST && scale.ratio() <= SMALLEST)
            .toList();
    for (Scale scale : usual) {
      double share = options.scale().ratio() / scale.ratio();
      if (drawn.frame().width() * share + margins.width() <= room.width()
          && drawn.frame().height() * share + margins.height() <= room.height()) {
        return scale;
      }
    }
    for (Scale scale : usual) {
      if (scale.ratio() >= options.scale().ratio()
          && parts(layout, options.at(scale), room).windows().size() <= MOST_PARTS) {
        return scale;
      }
    }
    return usual.get(usual.size() - 1);
  }

  private static Parts parts(WallLayout layout, ElevationOptions options, Box room) {
    Elevation whole = Elevation.of(layout, options);
    return Parts.of(layout, options, whole, margins(whole), room, LAP);
  }

  // what stands round the frame takes the same room at any scale
  private static Box margins(Elevation drawn) {
    Box extent = drawn.extent();
    Box frame = drawn.frame();
    return new Box(0, 0, extent.width() - frame.width(), extent.height() - frame.height());
  }

  private List<Sheet> sheets(List<String> notes) {
    Elevation whole = Elevation.of(layout, options);
    List<Elevation> parts = new ArrayList<>();
    Optional<Parts> cut = Optional.empty();
    if (whole.extent().width() <= room.width() && whole.extent().height() <= room.height()
        || layout.verticals().isEmpty()) {
      parts.add(whole);
    } else {
      Parts found = parts(layout, options, room);
      for (Window window : found.windows()) {
        parts.add(Elevation.of(layout, options, window));
      }
      cut = Optional.of(found);
    }
    List<Panel> panels = Legends.of(layout, options, notes);
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      int number = i;
      List<Panel> here =
          cut.isEmpty() ? panels : Legends.with(Legends.key(cut.get(), number), panels);
      sheets.add(sheet(parts.get(i), i == 0 || cut.isEmpty() ? here : here.subList(0, 1)));
    }
    noteSheets(sheets);
    List<Sheet> numbered = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      numbered.add(sheets.get(i).of(i + 1, sheets.size()));
    }
    return Collections.unmodifiableList(numbered);
  }

  private Sheet sheet(Elevation part, List<Panel> panels) {
    return new Sheet(
        paper,
        titleBlock,
        part.title(),
        options.scale(),
        1,
        1,
        List.of(Sheet.Placed.centred(part, room)),
        panels);
  }

  private void noteSheets(List<Sheet> sheets) {
    List<Panel> left = sheets.get(0).overflow();
    for (int i = 0; i < MOST_NOTE_SHEETS && !left.isEmpty(); i++) {
      NotesPage page = new NotesPage(room, left);
      sheets.add(
          new Sheet(
              paper,
              titleBlock,
              page.title(),
              page.scale(),
              1,
              1,
              List.of(new Sheet.Placed(page, 0, 0)),
              List.of()));
      left = page.overflow();
    }
  }
}
