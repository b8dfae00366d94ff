package mullwright.cli;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.report.CheckJson;

/**
 * Holds a document against a schema, by the words of JSON Schema (draft 2020-12, from memory) that
 * ours use; a word it does not know is a fault of the schema.
 */
final class SchemaCheck {
  private static final Set<String> NOTES = Set.of("$schema", "title", "description", "$defs");

  private final JsonObject schema;

  private SchemaCheck(JsonObject schema) {
    this.schema = schema;
  }

  static SchemaCheck of(String name) {
    try (InputStream in = CheckJson.class.getResourceAsStream(name)) {
      return new SchemaCheck(
          JsonParser.parseString(new String(in.readAllBytes(), StandardCharsets.UTF_8))
              .getAsJsonObject());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  List<String> faults(JsonElement document) {
    return faults(document, schema, "$");
  }

  private List<String> faults(JsonElement value, JsonObject rule, String at) {
    List<String> faults = new ArrayList<>();
    for (Map.Entry<String, JsonElement> word : rule.entrySet()) {
      JsonElement said = word.getValue();
      switch (word.getKey()) {
        case "type" -> {
          if (!is(value, said.getAsString())) {
            faults.add(at + " is no " + said.getAsString());
          }
        }
        case "const" -> {
          if (!value.equals(said)) {
            faults.add(at + " is not " + said);
          }
        }
        case "enum" -> {
          if (!said.getAsJsonArray().contains(value)) {
            faults.add(at + " is none of " + said);
          }
        }
        case "minimum" -> {
          if (is(value, "number") && value.getAsDouble() < said.getAsDouble()) {
            faults.add(at + " is below " + said);
          }
        }
        case "pattern" -> {
          if (is(value, "string") && !value.getAsString().matches(said.getAsString())) {
            faults.add(at + " does not look like " + said);
          }
        }
        case "required" ->
            said.getAsJsonArray()
                .forEach(
                    name -> {
                      if (value.isJsonObject()
                          && !value.getAsJsonObject().has(name.getAsString())) {
                        faults.add(at + " lacks " + name);
                      }
                    });
        case "properties", "additionalProperties" -> {
          // told together below
        }
        case "items" -> {
          if (value.isJsonArray()) {
            value
                .getAsJsonArray()
                .forEach(item -> faults.addAll(faults(item, said.getAsJsonObject(), at + "[]")));
          }
        }
        case "anyOf" -> {
          boolean any = false;
          for (JsonElement one : said.getAsJsonArray()) {
            any |= faults(value, one.getAsJsonObject(), at).isEmpty();
          }
          if (!any) {
            faults.add(at + " is nothing of what it may be");
          }
        }
        case "$ref" -> faults.addAll(faults(value, referred(said.getAsString()), at));
        default -> {
          if (!NOTES.contains(word.getKey())) {
            throw new AssertionError("unknown word of the schema: " + word.getKey());
          }
        }
      }
    }
    if (value.isJsonObject()) {
      value
          .getAsJsonObject()
          .entrySet()
          .forEach(member -> faults.addAll(member(member.getKey(), member.getValue(), rule, at)));
    }
    return faults;
  }

  private List<String> member(String name, JsonElement value, JsonObject rule, String at) {
    JsonObject known =
        rule.has("properties") ? rule.getAsJsonObject("properties") : new JsonObject();
    if (known.has(name)) {
      return faults(value, known.getAsJsonObject(name), at + "." + name);
    }
    JsonElement others = rule.get("additionalProperties");
    if (others == null) {
      return List.of();
    }
    return others.isJsonObject()
        ? faults(value, others.getAsJsonObject(), at + "." + name)
        : List.of(at + " may not hold " + name);
  }

  private JsonObject referred(String reference) {
    return schema
        .getAsJsonObject("$defs")
        .getAsJsonObject(reference.substring("#/$defs/".length()));
  }

  private static boolean is(JsonElement value, String type) {
    boolean number = value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber();
    return switch (type) {
      case "object" -> value.isJsonObject();
      case "array" -> value.isJsonArray();
      case "null" -> value.isJsonNull();
      case "string" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isString();
      case "boolean" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isBoolean();
      case "number" -> number;
      case "integer" -> number && value.getAsBigDecimal().stripTrailingZeros().scale() <= 0;
      default -> throw new AssertionError("unknown type: " + type);
    };
  }
}
