package mullwright.server.completion;

import com.google.gson.JsonObject;
import java.util.Optional;
import mullwright.server.Fields;

/**
 * What an offer is about, so that its page can be found when somebody looks at it: {@code part,
 * anchor, angle-6}; {@code line, East, B}; {@code clause, , gap}.
 *
 * @param kind {@code statement}, {@code clause}, {@code property}, {@code part}, {@code unit}, or a
 *     kind of symbol in small letters
 * @param of the kind of part, the wall, or what the property is of; "" where there is none
 */
public record Topic(String kind, String of, String name) {
  /** As it goes over the wire, with the file it is asked in. */
  public JsonObject json(String file) {
    JsonObject data = new JsonObject();
    data.addProperty("file", file);
    data.addProperty("kind", kind);
    if (!of.isEmpty()) {
      data.addProperty("of", of);
    }
    data.addProperty("name", name);
    return data;
  }

  /** What came back, with the file; empty if it is nothing the server gave out. */
  public static Optional<Asked> read(Object data) {
    return Fields.of(data)
        .flatMap(
            fields -> {
              Optional<String> file = fields.text("file");
              Optional<String> kind = fields.text("kind");
              Optional<String> name = fields.text("name");
              return file.isPresent() && kind.isPresent() && name.isPresent()
                  ? Optional.of(
                      new Asked(
                          file.get(),
                          new Topic(kind.get(), fields.text("of").orElse(""), name.get())))
                  : Optional.empty();
            });
  }

  /** A topic that came back from the client. */
  public record Asked(String file, Topic topic) {}
}
