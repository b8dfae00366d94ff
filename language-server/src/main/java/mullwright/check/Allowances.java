package mullwright.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.model.Origin;
import mullwright.syntax.Comment;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;

/**
 * Findings that the text itself allows: {@code // allow rule-name: reason} at the end of a line for
 * that line, on a line of its own for the next statement.
 *
 * <p>An error of a rule that guards people is not taken away: it stays as a warning that tells the
 * reason. What allows nothing is a finding itself.
 */
public final class Allowances {
  /** Made when a comment first speaks of allowing. */
  private static final class Form {
    static final Pattern ALLOW =
        Pattern.compile(
            "//\\s*allow\\s+([A-Za-z0-9-]+(?:\\s*,\\s*[A-Za-z0-9-]+)*)\\s*(?::\\s*(.*))?");
  }

  private Allowances() {}

  /**
   * A comment that allows.
   *
   * @param origin the comment
   * @param line of its segment's text that findings must start on, counted from 0
   * @param rules names as written
   * @param reason "" if none is given
   */
  record Allow(Origin origin, int line, List<String> rules, String reason) {}

  /**
   * A finding that was allowed.
   *
   * @param finding as found
   * @param reason as written
   */
  public record Allowed(Finding finding, String reason) {}

  /**
   * What is left, and what was allowed.
   *
   * @param findings those not allowed, softened ones in their place, then comments that allow
   *     nothing
   */
  public record Applied(List<Finding> findings, List<Allowed> allowed) {
    public Applied {
      findings = List.copyOf(findings);
      allowed = List.copyOf(allowed);
    }
  }

  /** The names of the rules whose findings a comment allows, as written; none if it does not. */
  public static List<String> named(String comment) {
    return read(comment).map(Allowances::names).orElse(List.of());
  }

  private static List<String> names(Matcher allow) {
    return List.of(allow.group(1).split("\\s*,\\s*"));
  }

  private static Optional<Matcher> read(String comment) {
    if (!comment.contains("allow")) {
      return Optional.empty();
    }
    Matcher allow = Form.ALLOW.matcher(comment.strip());
    // "allow tolerance" is a remark of a drafter, and about no rule
    boolean speaks = allow.matches() && (allow.group(2) != null || allow.group(1).contains("-"));
    return speaks ? Optional.of(allow) : Optional.empty();
  }

  /** Every comment of the files that allows, in order. */
  static List<Allow> in(Map<String, ParsedFile> files) {
    List<Allow> found = new ArrayList<>();
    files.forEach(
        (path, file) -> {
          for (int at = 0; at < file.segments().size(); at++) {
            in(path, at, file.segments().get(at), found);
          }
        });
    return found;
  }

  private static void in(String path, int index, Segment segment, List<Allow> found) {
    LineTable lines = null;
    for (Comment comment : segment.comments()) {
      Matcher allow = comment.documents() ? null : read(comment.text()).orElse(null);
      if (allow != null) {
        lines = lines == null ? LineTable.of(segment.text()) : lines;
        int line = lines.line(comment.range().start());
        String before =
            segment.text().substring(lines.start(line), comment.range().start()).strip();
        found.add(
            new Allow(
                new Origin(path, index, comment.range()),
                before.isEmpty() ? next(segment, lines, line) : line,
                names(allow),
                Optional.ofNullable(allow.group(2)).map(String::strip).orElse("")));
      }
    }
  }

  /** The next line that holds more than comments and blanks. */
  private static int next(Segment segment, LineTable lines, int from) {
    for (int line = from + 1; line < lines.count(); line++) {
      String words = segment.text().substring(lines.start(line), lines.end(line)).strip();
      if (!words.isEmpty() && !words.startsWith("//")) {
        return line;
      }
    }
    return from;
  }

  /**
   * Takes away what the text allows.
   *
   * @param findings of the files, in the order of the text
   * @param own the file whose comments must each allow something; comments of used files may serve
   *     another wall
   */
  public static Applied apply(
      List<Finding> findings, Map<String, ParsedFile> files, String own, Rules rules) {
    List<Allow> allows = in(new TreeMap<>(files));
    if (allows.isEmpty()) {
      return new Applied(findings, List.of());
    }
    Set<String> used = new HashSet<>();
    List<Finding> left = new ArrayList<>();
    List<Allowed> allowed = new ArrayList<>();
    for (Finding finding : findings) {
      Optional<Allow> allow = match(finding, allows, files, rules, used);
      if (allow.isEmpty()) {
        left.add(finding);
      } else {
        boolean guards =
            rules.named(finding.rule()).map(rule -> rule.about().safety()).orElse(false);
        if (guards && finding.severity() == Severity.ERROR) {
          left.add(softened(finding, allow.get().reason()));
        }
        allowed.add(new Allowed(finding, allow.get().reason()));
      }
    }
    for (Allow allow : allows) {
      for (String name : allow.rules()) {
        boolean right = !allow.reason().isEmpty() && rules.named(name).isPresent();
        if (right && allow.origin().file().equals(own) && !used.contains(key(allow, name))) {
          left.add(unused(allow, name));
        }
      }
    }
    return new Applied(left, allowed);
  }

  private static Optional<Allow> match(
      Finding finding,
      List<Allow> allows,
      Map<String, ParsedFile> files,
      Rules rules,
      Set<String> used) {
    if (finding.rule().equals(Allowance.NAME)) {
      return Optional.empty();
    }
    for (Allow allow : allows) {
      boolean there =
          allow.origin().file().equals(finding.origin().file())
              && allow.origin().segment() == finding.origin().segment()
              && !allow.reason().isEmpty();
      if (there && line(finding, files) == allow.line()) {
        for (String name : allow.rules()) {
          if (rules.named(name).filter(rule -> rule.name().equals(finding.rule())).isPresent()) {
            used.add(key(allow, name));
            return Optional.of(allow);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static int line(Finding finding, Map<String, ParsedFile> files) {
    String text =
        files.get(finding.origin().file()).segments().get(finding.origin().segment()).text();
    int end = Math.min(finding.origin().range().start(), text.length());
    return LineTable.of(text.substring(0, end)).count() - 1;
  }

  private static String key(Allow allow, String name) {
    return allow.origin().file()
        + ":"
        + allow.origin().segment()
        + ":"
        + allow.origin().range().start()
        + ":"
        + name;
  }

  private static Finding softened(Finding finding, String reason) {
    return new Finding(
        finding.rule(),
        Severity.WARNING,
        finding.origin(),
        finding.piece(),
        finding.what() + " Allowed here, since: " + reason,
        "The rule guards people, so it stays as a warning.",
        finding.measured(),
        finding.limit(),
        finding.related(),
        finding.fixes());
  }

  private static Finding unused(Allow allow, String name) {
    return new Finding(
        Allowance.NAME,
        Severity.WARNING,
        allow.origin(),
        "",
        "Nothing here trips " + Words.quoted(name) + ", so the comment allows nothing.",
        "Take the comment out, or put it at the line of the finding.",
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }
}
