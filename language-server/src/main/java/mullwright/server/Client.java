package mullwright.server;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What a client said of itself when it began the talk.
 *
 * <p>The parameters of {@code initialize} are kept as they came and looked into by dotted path: of
 * their hundreds of fields a server needs a dozen, and half of a cold start would go into reading
 * the others. Whatever is missing, null or of another type than expected is as good as not said.
 */
public final class Client {
  private final JsonObject said;
  private RulePageFiles rulePages;

  /** What the parameters of {@code initialize} say. */
  public Client(JsonObject parameters) {
    this.said = parameters;
  }

  /**
   * True if the capability at that path is true: {@code textDocument.foldingRange.lineFoldingOnly}.
   */
  public boolean can(String path) {
    return capability(path)
        .filter(JsonElement::isJsonPrimitive)
        .map(JsonElement::getAsJsonPrimitive)
        .filter(JsonPrimitive::isBoolean)
        .map(JsonPrimitive::getAsBoolean)
        .orElse(false);
  }

  /** True if the capability at that path is an object, whatever it holds. */
  public boolean has(String path) {
    return capability(path).filter(JsonElement::isJsonObject).isPresent();
  }

  /** The whole number at that path, if it is one. */
  public Optional<Integer> number(String path) {
    return capability(path)
        .filter(it -> it.isJsonPrimitive() && it.getAsJsonPrimitive().isNumber())
        .map(JsonElement::getAsInt);
  }

  /** The words of the list at that path, none if it is no list. */
  public List<String> words(String path) {
    return list(path, JsonPrimitive::isString, JsonPrimitive::getAsString);
  }

  /** The whole numbers of the list at that path, none if it is no list. */
  public List<Integer> numbers(String path) {
    return list(path, JsonPrimitive::isNumber, JsonPrimitive::getAsInt);
  }

  private <T> List<T> list(
      String path, Predicate<JsonPrimitive> right, Function<JsonPrimitive, T> read) {
    List<T> list = new ArrayList<>();
    if (capability(path).orElse(null) instanceof JsonArray all) {
      for (JsonElement each : all) {
        if (each instanceof JsonPrimitive value && right.test(value)) {
          list.add(read.apply(value));
        }
      }
    }
    return list;
  }

  /**
   * True if it fetches diagnostics itself and can be told to fetch again; then none are pushed,
   * since clients that get both show both.
   */
  public boolean pullsDiagnostics() {
    return has("textDocument.diagnostic") && can("workspace.diagnostics.refreshSupport");
  }

  /** True if it makes a way to a page of a diagnostic's code. */
  boolean describesCodes() {
    return can("textDocument.publishDiagnostics.codeDescriptionSupport");
  }

  /** Puts those rules' pages where its diagnostics lead, if it goes there. */
  public void giveRulePages(Set<String> rules) {
    if (describesCodes()) {
      rulePages().write(rules);
    }
  }

  /** Where the pages of rules are for it. */
  public RulePageFiles rulePages() {
    if (rulePages == null) {
      rulePages = new RulePageFiles();
    }
    return rulePages;
  }

  /** The part of the server's capabilities about workspaces. */
  public static JsonObject workspaceOf(JsonObject server) {
    JsonObject workspace = server.getAsJsonObject("workspace");
    if (workspace == null) {
      workspace = new JsonObject();
      server.add("workspace", workspace);
    }
    return workspace;
  }

  /** The process to end with, if the client named one. */
  public Optional<Long> process() {
    return field(said, "processId")
        .filter(id -> id.isJsonPrimitive() && id.getAsJsonPrimitive().isNumber())
        .map(JsonElement::getAsLong);
  }

  /** The addresses of the folders that are open, by whichever field the client tells them. */
  public List<String> folders() {
    List<String> folders = new ArrayList<>();
    field(said, "workspaceFolders")
        .filter(JsonElement::isJsonArray)
        .map(JsonElement::getAsJsonArray)
        .orElseGet(JsonArray::new)
        .forEach(folder -> text(folder, "uri").ifPresent(folders::add));
    if (folders.isEmpty()) {
      text(said, "rootUri").ifPresent(folders::add);
    }
    if (folders.isEmpty()) {
      text(said, "rootPath").map(path -> Addresses.ofPath(path)).ifPresent(folders::add);
    }
    return folders;
  }

  /** What it gave beside its capabilities for this server, null if nothing. */
  public JsonElement options() {
    return field(said, "initializationOptions").orElse(null);
  }

  private Optional<JsonElement> capability(String path) {
    Optional<JsonElement> found = field(said, "capabilities");
    for (String name : path.split("\\.")) {
      found = found.flatMap(inside -> field(inside, name));
    }
    return found;
  }

  private static Optional<String> text(JsonElement object, String name) {
    return field(object, name)
        .filter(text -> text.isJsonPrimitive() && text.getAsJsonPrimitive().isString())
        .map(JsonElement::getAsString);
  }

  private static Optional<JsonElement> field(JsonElement object, String name) {
    return object.isJsonObject()
        ? Optional.ofNullable(object.getAsJsonObject().get(name)).filter(e -> !e.isJsonNull())
        : Optional.empty();
  }
}
