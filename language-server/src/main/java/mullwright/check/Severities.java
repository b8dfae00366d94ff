package mullwright.check;

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
import mullwright.model.NearNames;

/**
 * The severities a project sets for rules: lines {@code severity.rule-name = error}, {@code
 * warning}, {@code information} or {@code off} of the file {@link #FILE} at the root.
 *
 * <p>A rule that guards people keeps its severity: it can only be allowed where it trips, with a
 * reason.
 *
 * @param byRule empty for off
 * @param faults lines that set nothing
 */
public record Severities(Map<String, Optional<Severity>> byRule, List<Fault> faults) {
  /** The file's name, at the root. */
  public static final String FILE = "mullwright.properties";

  /** Every rule as it is. */
  public static final Severities USUAL = new Severities(Map.of(), List.of());

  /** Lines that begin with it are about the editor and set no severity. */
  public static final String EDITOR = "editor.";

  private static final String PREFIX = "severity.";

  public Severities {
    byRule = Map.copyOf(byRule);
    faults = List.copyOf(faults);
  }

  /**
   * A line of the file that sets nothing.
   *
   * @param key what the line begins with, "" where it is the whole file
   * @param sentence what is wrong and what would be right
   */
  public record Fault(String key, String sentence) {}

  /** Sentences on lines that set nothing. */
  public List<String> problems() {
    return faults.stream().map(Fault::sentence).toList();
  }

  /** Reads the text of the file. */
  public static Severities read(String text, Rules rules) {
    Properties lines = new Properties();
    Map<String, Optional<Severity>> byRule = new TreeMap<>();
    List<Fault> faults = new ArrayList<>();
    try {
      lines.load(new StringReader(text));
    } catch (IOException | IllegalArgumentException unreadable) {
      return new Severities(
          Map.of(),
          List.of(new Fault("", FILE + " cannot be read: " + unreadable.getMessage() + ".")));
    }
    for (String key : new TreeSet<>(lines.stringPropertyNames())) {
      if (key.startsWith(EDITOR)) {
        continue;
      }
      String value = lines.getProperty(key).strip().toLowerCase(Locale.ROOT);
      Optional<Rule> rule =
          key.startsWith(PREFIX) ? rules.named(key.substring(PREFIX.length())) : Optional.empty();
      String where = FILE + ", “" + key + " = " + value + "”: ";
      if (rule.isEmpty()) {
        faults.add(
            new Fault(
                key,
                where
                    + "a line begins with severity. and the name of a rule, or with editor. and a"
                    + " setting."
                    + near(key, rules).map(name -> " Is “" + name + "” meant?").orElse("")));
      } else if (rule.get().about().safety()) {
        faults.add(
            new Fault(
                key,
                where
                    + "the rule guards people and keeps its severity. Allow it where it trips, with"
                    + " a reason: // allow "
                    + rule.get().name()
                    + ": the reason."));
      } else {
        set(rule.get().name(), value, where, byRule)
            .ifPresent(sentence -> faults.add(new Fault(key, sentence)));
      }
    }
    return new Severities(byRule, faults);
  }

  private static Optional<String> near(String key, Rules rules) {
    return rules.all().stream()
        .map(rule -> PREFIX + rule.name())
        .filter(name -> NearNames.isNear(key, name))
        .findFirst();
  }

  /** Sets the severity of a rule; what is wrong if the word is none. */
  private static Optional<String> set(
      String rule, String value, String where, Map<String, Optional<Severity>> byRule) {
    switch (value) {
      case "off" -> byRule.put(rule, Optional.empty());
      case "error" -> byRule.put(rule, Optional.of(Severity.ERROR));
      case "warning" -> byRule.put(rule, Optional.of(Severity.WARNING));
      case "information" -> byRule.put(rule, Optional.of(Severity.INFORMATION));
      default -> {
        return Optional.of(where + "a severity is error, warning or information, or the word off.");
      }
    }
    return Optional.empty();
  }

  /** The findings as the project wants them. */
  public List<Finding> apply(List<Finding> findings) {
    if (byRule.isEmpty()) {
      return findings;
    }
    List<Finding> set = new ArrayList<>();
    for (Finding finding : findings) {
      Optional<Severity> wanted =
          byRule.getOrDefault(finding.rule(), Optional.of(finding.severity()));
      wanted.ifPresent(severity -> set.add(with(finding, severity)));
    }
    return set;
  }

  private static Finding with(Finding finding, Severity severity) {
    return severity == finding.severity()
        ? finding
        : new Finding(
            finding.rule(),
            severity,
            finding.origin(),
            finding.piece(),
            finding.what(),
            finding.mend(),
            finding.measured(),
            finding.limit(),
            finding.related(),
            finding.fixes());
  }
}
