package mullwright.server.completion;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.Optional;

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
    if (!(data instanceof JsonElement json) || !json.isJsonObject()) {
      return Optional.empty();
    }
    JsonObject fields = json.getAsJsonObject();
    return text(fields, "file")
        .flatMap(
            file ->
                text(fields, "kind")
                    .flatMap(
                        kind ->
                            text(fields, "name")
                                .map(
                                    name ->
                                        new Asked(
                                            file,
                                            new Topic(
                                                kind, text(fields, "of").orElse(""), name)))));
  }

  /** A topic that came back from the client. */
  public record Asked(String file, Topic topic) {}

  private static Optional<String> text(JsonObject fields, String name) {
    JsonElement value = fields.get(name);
    return value != null && value.isJsonPrimitive() && value.getAsJsonPrimitive().isString()
        ? Optional.of(value.getAsString())
        : Optional.empty();
  }
}
