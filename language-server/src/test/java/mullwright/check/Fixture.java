package mullwright.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A wall with the findings it must have, drawn under their places.
 *
 * <pre>
 * vertical B as mullion
 * // ^^^^^^^^^^^^^^^^^^ splice-unsupported: vertical B, upper length
 * </pre>
 *
 * <p>The carets stand under the range of the finding, up to the end of its first line; what follows
 * the rule's name must stand in the message. Where the range begins too far left for that, {@code
 * // > rule: text} tells of a finding on the line above.
 *
 * @param path below {@link #ROOT}, {@code splice-unsupported/trips.wall}
 * @param text as it stands in the file, marks included
 */
record Fixture(String path, String text) {
  /** Where the fixtures of all rules stand, from the module's folder. */
  static final Path ROOT = Path.of("src", "test", "resources", "rules");

  /**
   * The walls of a rule: {@code trips.wall}, {@code passes.wall}, {@code mended.wall}, and more of
   * each kind with a word after, {@code trips-end.wall} and {@code mended-end.wall}. Other files in
   * its folder are there to be used by them.
   */
  private static final Pattern WALL =
      Pattern.compile("[^/]+/(trips|passes|mended)(-[a-z-]+)?\\.wall");

  /** Every file below {@link #ROOT}, by its path there. */
  static Map<String, String> texts() {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(ROOT)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".wall")).toList()) {
        texts.put(ROOT.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
    return texts;
  }

  /** Every wall of every rule. */
  static List<Fixture> all() {
    List<Fixture> fixtures = new ArrayList<>();
    texts()
        .forEach(
            (path, text) -> {
              if (WALL.matcher(path).matches()) {
                fixtures.add(new Fixture(path, text));
              }
            });
    return fixtures;
  }

  /** The rule it is of. */
  String rule() {
    return path.substring(0, path.indexOf('/'));
  }

  boolean trips() {
    return path.contains("/trips");
  }

  boolean passes() {
    return path.contains("/passes");
  }

  /** Path of the wall this one is after its first fix. */
  String mendedPath() {
    return path.replace("/trips", "/mended");
  }

  Path file() {
    return ROOT.resolve(path);
  }

  /** What is found in it. */
  CheckedText check(Rules rules) {
    return new CheckedText(path, texts(), rules);
  }

  /** Its text without marks. */
  String bare() {
    StringBuilder bare = new StringBuilder();
    text.lines()
        .filter(line -> Mark.read(line).isEmpty())
        .forEach(l -> bare.append(l).append('\n'));
    return bare.toString();
  }

  /** The same wall with no mark in it. */
  Fixture withoutMarks() {
    return new Fixture(path, bare());
  }

  /** The marks it has, each with the line it points at, counted from 0. */
  List<Mark.Placed> marks() {
    List<Mark.Placed> marks = new ArrayList<>();
    int pointedAt = -1;
    int line = 0;
    for (String words : text.lines().toList()) {
      int target = pointedAt;
      Mark.read(words).ifPresent(mark -> marks.add(new Mark.Placed(mark, target)));
      if (Mark.read(words).isEmpty()) {
        pointedAt = line;
      }
      line++;
    }
    return marks;
  }
}
