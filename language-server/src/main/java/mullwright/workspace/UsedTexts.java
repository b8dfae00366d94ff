package mullwright.workspace;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts a file stands on, found without reading them as walls: itself, what it uses, what those
 * use.
 *
 * <p>A file named where the language would not follow it, as in a comment, is among them too: that
 * can only make two states look different that are not, never the reverse.
 */
public final class UsedTexts {
  private static final Pattern USE = Pattern.compile("\\buse\\b[^\"“”″\n]*[\"“”″]([^\"“”″\n]*)");

  private UsedTexts() {}

  /**
   * What each of the files holds, by path.
   *
   * @param read what a path holds
   */
  public static Map<String, Files.Read> of(String path, Function<String, Files.Read> read) {
    Map<String, Files.Read> found = new TreeMap<>();
    Deque<String> open = new ArrayDeque<>();
    open.add(path);
    while (!open.isEmpty()) {
      String next = open.poll();
      if (found.containsKey(next)) {
        continue;
      }
      Files.Read what = read.apply(next);
      found.put(next, what);
      if (what instanceof Files.Read.Text text) {
        open.addAll(named(next, text.text()));
      }
    }
    return found;
  }

  /** The paths of the files that the text of a file names, each once, in the order of the text. */
  public static List<String> named(String path, String text) {
    Set<String> named = new LinkedHashSet<>();
    Matcher uses = USE.matcher(text);
    while (uses.find()) {
      UsedFile.resolve(path, uses.group(1)).ifPresent(named::add);
    }
    return List.copyOf(named);
  }
}
