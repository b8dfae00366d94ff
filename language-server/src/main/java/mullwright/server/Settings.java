package mullwright.server;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.check.Severities;
import mullwright.model.NearNames;
import mullwright.quantity.UnitSystem;

/**
 * What a reader may switch in his editor.
 *
 * <p>The defaults stand here and nowhere else. The project sets them for all its readers by lines
 * {@code editor.hints.lengths = off} of {@code mullwright.properties} at the root; what the editor
 * sends goes before that. A value that cannot be is told and changes nothing.
 *
 * @param values by name without {@code editor.}, as words
 * @param faults what sets nothing
 */
public record Settings(Map<String, String> values, List<Severities.Fault> faults) {
  /** Cut lengths behind the statements that make them. */
  public static final String HINTS_LENGTHS = "hints.lengths";

  /** Sizes of glass to order. */
  public static final String HINTS_GLASS = "hints.glass";

  /** What spacings come to: the width and the height of the grid. */
  public static final String HINTS_GRID = "hints.grid";

  /** Figures above the statements that make pieces. */
  public static final String LENS = "lens";

  /** Units of hints: {@code file}, {@code inches} or {@code millimetres}. */
  public static final String UNITS = "units";

  /** Nothing set. */
  public static final Settings NONE = new Settings(Map.of(), List.of());

  private static final String SECTION = "mullwright";
  private static final String SEVERITY = "severity.";
  private static final String ON = "on";
  private static final String OFF = "off";
  private static final List<String> NAMES =
      List.of(HINTS_LENGTHS, HINTS_GLASS, HINTS_GRID, LENS, UNITS);

  /** What the editors' own sides of the section begin with: how the server is run and watched. */
  private static final List<String> OF_EDITORS = List.of("java.", "server.", "trace.");

  private static final List<String> SWITCH = List.of(ON, OFF);
  private static final List<String> UNIT_WORDS = List.of("file", "inches", "millimetres");

  private static List<String> wordsOf(String name) {
    return switch (name) {
      case HINTS_LENGTHS, HINTS_GLASS, HINTS_GRID, LENS -> SWITCH;
      case UNITS -> UNIT_WORDS;
      default -> List.of();
    };
  }

  public Settings {
    values = Map.copyOf(values);
    faults = List.copyOf(faults);
  }

  /** Sentences on what sets nothing. */
  public List<String> problems() {
    return faults.stream().map(Severities.Fault::sentence).toList();
  }

  /** True unless it is switched off. */
  public boolean on(String name) {
    return !OFF.equals(values.get(name));
  }

  /**
   * The system of units to show lengths in.
   *
   * @param own the one the file is written in
   */
  public UnitSystem units(UnitSystem own) {
    return switch (values.getOrDefault(UNITS, "file")) {
      case "inches" -> UnitSystem.US;
      case "millimetres" -> UnitSystem.SI;
      default -> own;
    };
  }

  /** What a project's file sets, by its text. */
  public static Settings read(String text) {
    Properties lines = new Properties();
    try {
      lines.load(new StringReader(text));
    } catch (IOException | IllegalArgumentException unreadable) {
      return NONE;
    }
    Draft draft = new Draft();
    for (String key : new TreeSet<>(lines.stringPropertyNames())) {
      if (key.startsWith(Severities.EDITOR)) {
        draft.set(
            key,
            key.substring(Severities.EDITOR.length()),
            lines.getProperty(key).strip(),
            Severities.FILE + ", “" + key + "”");
      }
    }
    return draft.done();
  }

  /**
   * What an editor sent: an object, nested or with dotted names, all of it or its part {@code
   * mullwright}. Anything else sets nothing.
   *
   * @param own true if the object is about this server only; of others a name that is not known is
   *     told only where it is nearly one that is, or stands in the part {@code mullwright}
   */
  public static Settings read(JsonElement sent, boolean own) {
    Draft draft = new Draft();
    if (sent != null && sent.isJsonObject()) {
      JsonObject all = sent.getAsJsonObject();
      JsonElement part = all.get(SECTION);
      boolean section = part != null && part.isJsonObject();
      collect("", section ? part.getAsJsonObject() : all, own || section, draft);
    }
    return draft.done();
  }

  private static void collect(String before, JsonObject object, boolean own, Draft draft) {
    object
        .entrySet()
        .forEach(
            entry -> {
              String name = before + entry.getKey();
              JsonElement value = entry.getValue();
              if (value.isJsonObject()) {
                collect(name + ".", value.getAsJsonObject(), own, draft);
              } else if (!value.isJsonNull() && isMeant(name, own)) {
                draft.set(
                    name,
                    name,
                    value.isJsonPrimitive() ? value.getAsString() : value.toString(),
                    "The setting “mullwright." + name + "”");
              }
            });
  }

  private static boolean isMeant(String name, boolean own) {
    for (String others : OF_EDITORS) {
      if (name.startsWith(others)) {
        return false;
      }
    }
    return own || !wordsOf(name).isEmpty() || near(name).isPresent();
  }

  private static Optional<String> near(String name) {
    return NAMES.stream().filter(known -> NearNames.isNear(name, known)).findFirst();
  }

  /** These with the others in their place where those say something. */
  public Settings under(Settings others) {
    if (others.values.isEmpty()) {
      return this;
    }
    Map<String, String> both = new TreeMap<>(values);
    both.putAll(others.values);
    return new Settings(both, faults);
  }

  private static final class Draft {
    private final Map<String, String> values = new TreeMap<>();
    private final List<Severities.Fault> faults = new ArrayList<>();

    void set(String key, String name, String given, String where) {
      List<String> words = wordsOf(name);
      String word = plain(given.toLowerCase(Locale.ROOT));
      if (words.contains(word)) {
        values.put(name, word);
      } else if (words.isEmpty()) {
        faults.add(new Severities.Fault(key, where + " is not known. " + instead(name)));
      } else {
        faults.add(
            new Severities.Fault(
                key, where + " is “" + given + "”; it may be " + String.join(", ", words) + "."));
      }
    }

    private static String instead(String name) {
      return name.startsWith(SEVERITY)
          ? "Severities are the project's, in " + Severities.FILE + " at the root."
          : near(name).map(known -> "Is “" + known + "” meant? ").orElse("")
              + "Known are "
              + String.join(", ", NAMES)
              + ".";
    }

    private static String plain(String word) {
      return word.equals("true") ? ON : word.equals("false") ? OFF : word;
    }

    Settings done() {
      return new Settings(values, faults);
    }
  }
}
