package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import mullwright.workspace.Files;
import mullwright.workspace.UsedTexts;

/**
 * The record of a released wall: hashes (SHA-256) of every text it stands on and of every result
 * that was made from them, with the program that made them. Whoever has texts and results can prove
 * that these came from those.
 *
 * @param wall path of the wall file, from the folder of the record
 * @param as what it is released as: {@code Rev B}
 * @param program the version that made the results
 * @param texts hash by path, of the wall, of what it uses and of other files named for the record
 * @param results hash by name, of what this program makes from the texts
 * @param files hash by path, of files handed out with the release
 */
public record ReleaseRecord(
    String wall,
    String as,
    String program,
    SortedMap<String, String> texts,
    SortedMap<String, String> results,
    SortedMap<String, String> files) {
  private static final String FORMAT = "mullwright-release";
  private static final int VERSION = 1;
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  /** Hash of every text the file stands on; a file that is not there is left out. */
  public static SortedMap<String, String> texts(String path, Files files) {
    SortedMap<String, String> hashes = new TreeMap<>();
    UsedTexts.of(path, files::read)
        .forEach(
            (name, read) -> {
              if (read instanceof Files.Read.Text text) {
                hashes.put(name, hash(text.text()));
              }
            });
    return hashes;
  }

  /** SHA-256 of a text, in hexadecimal digits. Line ends count as one, however they are stored. */
  public static String hash(String text) {
    return Fingerprint.hash(text.replace("\r\n", "\n"));
  }

  /** SHA-256 of bytes, in hexadecimal digits. */
  public static String hash(byte[] bytes) {
    return Fingerprint.hash(bytes);
  }

  /** The record as it is kept, ending with a line end. */
  public String write() {
    JsonObject all = new JsonObject();
    all.addProperty("format", FORMAT);
    all.addProperty("version", VERSION);
    all.addProperty("caution", Caution.WORDS);
    all.addProperty("wall", wall);
    all.addProperty("as", as);
    all.addProperty("program", program);
    all.add("texts", object(texts));
    all.add("results", object(results));
    all.add("files", object(files));
    // whoever changes a line of the record changes its sum
    all.addProperty("sum", hash(sum()));
    return GSON.toJson(all) + "\n";
  }

  private String sum() {
    return String.join(
        "\n", wall, as, program, texts.toString(), results.toString(), files.toString());
  }

  private static JsonObject object(Map<String, String> hashes) {
    JsonObject object = new JsonObject();
    hashes.forEach(object::addProperty);
    return object;
  }

  /** Reads a record; empty if the text is none, or was changed. */
  public static Optional<ReleaseRecord> read(String text) {
    try {
      JsonObject all = JsonParser.parseString(text).getAsJsonObject();
      for (String needed :
          List.of(
              "format", "version", "wall", "as", "program", "texts", "results", "files", "sum")) {
        if (!all.has(needed)) {
          return Optional.empty();
        }
      }
      ReleaseRecord record =
          new ReleaseRecord(
              all.get("wall").getAsString(),
              all.get("as").getAsString(),
              all.get("program").getAsString(),
              map(all.getAsJsonObject("texts")),
              map(all.getAsJsonObject("results")),
              map(all.getAsJsonObject("files")));
      boolean whole =
          all.get("format").getAsString().equals(FORMAT)
              && all.get("version").getAsInt() == VERSION
              && all.get("sum").getAsString().equals(hash(record.sum()));
      return whole ? Optional.of(record) : Optional.empty();
    } catch (JsonParseException
        | IllegalStateException
        | UnsupportedOperationException
        | ClassCastException
        | NumberFormatException wrong) {
      return Optional.empty();
    }
  }

  private static SortedMap<String, String> map(JsonObject object) {
    SortedMap<String, String> map = new TreeMap<>();
    object.entrySet().forEach(entry -> map.put(entry.getKey(), entry.getValue().getAsString()));
    return map;
  }

  /** Sentences on what differs from another record of the same wall; none if nothing does. */
  public List<String> differences(ReleaseRecord now) {
    List<String> found = new ArrayList<>();
    differences("The text", texts, now.texts, found);
    differences("The result", results, now.results, found);
    differences("The file", files, now.files, found);
    return found;
  }

  private static void differences(
      String what, Map<String, String> then, Map<String, String> now, List<String> found) {
    then.forEach(
        (name, hash) -> {
          if (!now.containsKey(name)) {
            found.add(what + " “" + name + "” of the release is missing.");
          } else if (!now.get(name).equals(hash)) {
            found.add(what + " “" + name + "” is not the one that was released.");
          }
        });
    now.keySet().stream()
        .filter(name -> !then.containsKey(name))
        .forEach(name -> found.add(what + " “" + name + "” was not part of the release."));
  }
}
