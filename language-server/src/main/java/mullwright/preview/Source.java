package mullwright.preview;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.FilePlace;

/** What was clicked, as a place of the text. */
record Source(SceneFile file, FilePlace place) {
  private static final int LINES_ROUND = 4;

  /** The place a page means: of a piece, a finding, or an end of the text; empty if none. */
  static Optional<Source> find(Stage.Now now, Query query) {
    Look look = query.look();
    if (!query.get("finding").isEmpty()) {
      return Painter.wall(now.checked(), now, look)
          .flatMap(wall -> ofFinding(wall, query.get("finding")));
    }
    return Painter.wall(now.scene(), now, look).flatMap(wall -> ofPiece(wall, query.get("piece")));
  }

  private static Optional<Source> ofFinding(SceneWall wall, String number) {
    List<Keynote> notes = Keynote.of(wall, new Pieces(wall.layout()));
    return notes.stream()
        .filter(note -> Integer.toString(note.number()).equals(number))
        .findFirst()
        .flatMap(Keynote::place)
        .map(place -> new Source(wall.file(), place));
  }

  private static Optional<Source> ofPiece(SceneWall wall, String id) {
    Optional<PieceRef> piece = new Pieces(wall.layout()).of(id);
    Optional<Origin> origin = piece.flatMap(found -> wall.details().index().origin(found));
    return origin
        .flatMap(found -> wall.file().snapshot().place(found))
        .map(place -> new Source(wall.file(), place));
  }

  /** The lines round it, for a page without an editor behind it. */
  String excerpt() {
    ParsedFile text = file.snapshot().file(place.path()).orElseThrow();
    LineTable lines = text.lines();
    int first = lines.line(place.start());
    int last = lines.line(Math.max(place.start(), place.end() - 1));
    JsonObject json = new JsonObject();
    json.addProperty("file", place.path());
    JsonArray shown = new JsonArray();
    int from = Math.max(0, first - LINES_ROUND);
    int to = Math.min(lines.count() - 1, last + LINES_ROUND);
    for (int line = from; line <= to; line++) {
      JsonObject one = new JsonObject();
      one.addProperty("number", line + 1);
      one.addProperty("text", text.text().substring(lines.start(line), lines.end(line)));
      one.addProperty("meant", first <= line && line <= last);
      shown.add(one);
    }
    json.add("lines", shown);
    return json.toString();
  }
}
