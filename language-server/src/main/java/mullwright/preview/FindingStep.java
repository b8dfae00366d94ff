package mullwright.preview;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.layout.PieceRef;

/** Findings as a list, and as numbered marks on the drawing. */
final class FindingStep extends CheckedStep {
  private static final int OTHERS_NAMED = 4;

  private final Tables tables;

  FindingStep(Tables tables) {
    this.tables = tables;
  }

  @Override
  Object basis(SceneWall wall) {
    return wall.file().reading();
  }

  @Override
  Object wishes(SceneWall wall, Look look) {
    return wall.index();
  }

  @Override
  List<Slot> nothing() {
    return List.of(new Slot("findings"), new Slot("pins"), new Slot("summary"));
  }

  @Override
  List<Slot> paint(SceneWall wall, Look look) {
    Pieces pieces = new Pieces(wall.layout());
    Plane plane = DrawingStep.plane(tables.units(wall.file()));
    List<Keynote> notes = Keynote.of(wall, pieces);
    Slot list = new Slot("findings");
    Slot pins = new Slot("pins");
    Map<PieceRef, Integer> crowd = new HashMap<>();
    for (Keynote note : notes) {
      list.put("finding-" + note.number(), item(note, wall));
      for (PieceRef piece : note.pieces()) {
        int before = crowd.merge(piece, 1, Integer::sum) - 1;
        Pieces.Extent extent = pieces.extent(piece);
        pins.put(
            "pin-" + note.number() + "-" + Pieces.id(piece),
            pin(note, piece, plane.x(extent.middleX()), plane.y(extent.middleY()), before));
      }
    }
    return List.of(list, pins, Slot.of("summary", summary(notes)));
  }

  private static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  private static String item(Keynote note, SceneWall wall) {
    Finding shown = note.folded().shown();
    String more = note.folded().more(OTHERS_NAMED);
    String pieces = note.pieces().stream().map(Pieces::id).collect(Collectors.joining(" "));
    String where =
        note.place()
            .flatMap(
                place ->
                    wall.file()
                        .snapshot()
                        .file(place.path())
                        .map(file -> place.path() + ":" + (file.lines().line(place.start()) + 1)))
            .orElse("");
    return "<li class=\"finding "
        + word(shown.severity())
        + "\" data-pieces=\""
        + pieces
        + "\" data-finding=\""
        + note.number()
        + "\"><button type=\"button\"><span class=\"number\" aria-hidden=\"true\">"
        + note.number()
        + "</span><span class=\"what\"><span class=\"kind\">"
        + word(shown.severity())
        + ", keynote "
        + note.number()
        + "</span> <b>"
        + Markup.escaped(shown.piece().isEmpty() ? shown.rule() : shown.piece())
        + "</b> "
        + Markup.escaped(shown.what())
        + (shown.mend().isEmpty()
            ? ""
            : " <span class=\"mend\">" + Markup.escaped(shown.mend()) + "</span>")
        + (more.isEmpty() ? "" : " <span class=\"more\">" + Markup.escaped(more) + "</span>")
        + "<span class=\"rule\">"
        + Markup.escaped(shown.rule() + (where.isEmpty() ? "" : " · " + where))
        + "</span></span></button></li>";
  }

  private static String pin(Keynote note, PieceRef piece, double x, double y, int before) {
    Finding shown = note.folded().shown();
    return "<g class=\"pin "
        + word(shown.severity())
        + "\" data-finding=\""
        + note.number()
        + "\" data-at=\""
        + Pieces.id(piece)
        + "\" transform=\"translate("
        + Markup.number(x)
        + " "
        + Markup.number(y)
        + ")\"><title>"
        + Markup.escaped(note.number() + ": " + shown.what())
        + "</title><g class=\"fixed\"><g transform=\"translate("
        + 20 * before
        + " 0)\"><path d=\"M0 0L7 -11\"/><circle r=\"1.8\"/>"
        + "<polygon points=\"16,-17 11.5,-9.2 2.5,-9.2 -2,-17 2.5,-24.8 11.5,-24.8\"/>"
        + "<text x=\"7\" y=\"-13.2\">"
        + note.number()
        + "</text></g></g></g>";
  }

  private static String summary(List<Keynote> notes) {
    if (notes.isEmpty()) {
      return "No findings";
    }
    return List.of(Severity.values()).stream()
        .map(severity -> counted(notes, severity))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String counted(List<Keynote> notes, Severity severity) {
    long count =
        notes.stream().filter(note -> note.folded().shown().severity() == severity).count();
    String word =
        switch (severity) {
          case ERROR -> count == 1 ? "error" : "errors";
          case WARNING -> count == 1 ? "warning" : "warnings";
          case INFORMATION -> count == 1 ? "note" : "notes";
        };
    return count == 0 ? "" : count + " " + word;
  }

  @Override
  public String what() {
    return "the findings";
  }
}
