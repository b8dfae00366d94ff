package mullwright.server;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;

/**
 * The fields of an object that came over the wire. What is missing, null or of another type than
 * asked for counts as not said.
 */
public record Fields(JsonObject object) {
  /** Those of what was sent, if it is an object. */
  public static Optional<Fields> of(Object sent) {
    return sent instanceof JsonObject object ? Optional.of(new Fields(object)) : Optional.empty();
  }

  /** The text of a field. */
  public Optional<String> text(String name) {
    return element(name).flatMap(Fields::text);
  }

  /** A text. */
  public static Optional<String> text(JsonElement element) {
    return element.isJsonPrimitive() && element.getAsJsonPrimitive().isString()
        ? Optional.of(element.getAsString())
        : Optional.empty();
  }

  /** The whole number of a field. */
  public Optional<Integer> number(String name) {
    return element(name)
        .filter(it -> it.isJsonPrimitive() && it.getAsJsonPrimitive().isNumber())
        .map(JsonElement::getAsInt);
  }

  /** The fields of an object that is a field itself. */
  public Optional<Fields> fields(String name) {
    return element(name).flatMap(Fields::of);
  }

  /** The elements of a list, none if the field is no list. */
  public List<JsonElement> list(String name) {
    return element(name)
        .filter(JsonElement::isJsonArray)
        .map(it -> it.getAsJsonArray().asList())
        .orElse(List.of());
  }

  private Optional<JsonElement> element(String name) {
    return Optional.ofNullable(object.get(name)).filter(it -> !it.isJsonNull());
  }
}
