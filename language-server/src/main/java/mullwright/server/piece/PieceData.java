package mullwright.server.piece;

import com.google.gson.JsonObject;
import java.util.Locale;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.server.Desk;
import mullwright.server.Fields;

/**
 * A piece as it goes to the client and comes back with the next question: by names, which outlive
 * an edit, and not by places in lists, which do not.
 *
 * @param file address of the file the wall is read from
 * @param kind which list of the layout, as a word in small letters
 */
public record PieceData(String file, String wall, String kind, String name) {
  /** A piece of a wall. */
  public static PieceData of(WallPieces wall, PieceRef piece) {
    return new PieceData(
        wall.document().address(),
        wall.name(),
        piece.kind().name().toLowerCase(Locale.ROOT),
        wall.index().name(piece));
  }

  /** As it goes over the wire. */
  public JsonObject json() {
    JsonObject data = new JsonObject();
    data.addProperty("file", file);
    data.addProperty("wall", wall);
    data.addProperty("kind", kind);
    data.addProperty("name", name);
    return data;
  }

  /** What came back; empty if it is nothing the server gave out. */
  public static Optional<PieceData> read(Object data) {
    return Fields.of(data)
        .flatMap(
            fields -> {
              Optional<String> file = fields.text("file");
              Optional<String> wall = fields.text("wall");
              Optional<String> kind = fields.text("kind");
              Optional<String> name = fields.text("name");
              boolean whole =
                  file.isPresent() && wall.isPresent() && kind.isPresent() && name.isPresent();
              return whole
                  ? Optional.of(new PieceData(file.get(), wall.get(), kind.get(), name.get()))
                  : Optional.empty();
            });
  }

  /** A piece found again in its wall. */
  public record Found(WallPieces wall, PieceRef piece) {}

  /** The piece as the texts stand now; empty if they have no such piece any more. */
  public Optional<Found> find(Desk desk) {
    Optional<WallPieces> in =
        desk.document(file).flatMap(document -> WallPieces.of(document, wall));
    for (PieceRef.Kind candidate : PieceRef.Kind.values()) {
      if (in.isPresent() && candidate.name().toLowerCase(Locale.ROOT).equals(kind)) {
        return in.get().named(candidate, name).map(piece -> new Found(in.get(), piece));
      }
    }
    return Optional.empty();
  }
}
