package mullwright.server.hint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import mullwright.derivation.Derivation;
import mullwright.layout.LengthTrace;
import mullwright.quantity.Length;
import mullwright.workspace.WallDetails;

/**
 * The sizes that follow from one statement, how many there are of each, and how they came about.
 */
public final class Figure {
  private static final int TOLD = 3;

  private final WallDetails wall;
  private final Kind kind;
  private final int first;
  private final Function<Size, String> words;
  private final Map<Size, Integer> counts = new TreeMap<>();
  private final List<String> spaces = new ArrayList<>();

  /** Of what the sizes are. */
  public enum Kind {
    VERTICAL,
    HORIZONTAL,
    GLASS,
    GRID
  }

  /** A length, or a width and a height. */
  record Size(Length width, Length height) implements Comparable<Size> {
    @Override
    public int compareTo(Size other) {
      int byWidth = width.compareTo(other.width);
      return byWidth != 0 ? byWidth : height.compareTo(other.height);
    }
  }

  /**
   * @param first the first of the pieces, by index
   * @param words how a size reads; asked once for all pieces that have it
   */
  Figure(WallDetails wall, Kind kind, int first, Function<Size, String> words) {
    this.wall = wall;
    this.kind = kind;
    this.first = first;
    this.words = words;
  }

  void add(Size size) {
    counts.merge(size, 1, Integer::sum);
  }

  /** Adds a space between neighbours, of what spacings come to. */
  void space(String words) {
    spaces.add(words);
  }

  /** All sizes if they are few, else the least and the most. */
  public String label() {
    List<String> all = counts.keySet().stream().map(words).distinct().toList();
    return all.size() <= TOLD
        ? String.join(" · ", all)
        : all.get(0) + " … " + all.get(all.size() - 1) + " (" + all.size() + " sizes)";
  }

  /** Each size with its count, one a line; of spacings each space, equal neighbours together. */
  public String counts() {
    if (kind == Kind.GRID) {
      List<String> lines = new ArrayList<>();
      for (int i = 0, to; i < spaces.size(); i = to) {
        for (to = i; to < spaces.size() && spaces.get(to).equals(spaces.get(i)); ) {
          to++;
        }
        lines.add((to - i) + " × " + spaces.get(i));
      }
      return String.join("\n", lines);
    }
    StringBuilder text = new StringBuilder();
    counts.forEach(
        (size, count) ->
            text.append(text.length() == 0 ? "" : "\n")
                .append(count)
                .append(" × ")
                .append(words.apply(size)));
    return text.toString();
  }

  /** Marks of the ways to what the first of its pieces hangs on, one for each input. */
  public List<String> ways() {
    return switch (kind) {
      case VERTICAL -> List.of("↑", "↓");
      case HORIZONTAL -> List.of("↔");
      case GLASS -> List.of("↔", "↕");
      case GRID -> List.of();
    };
  }

  /** How the first of its pieces came to its size; for glass its width, then its height. */
  public List<Derivation> workings() {
    LengthTrace trace = wall.trace();
    return switch (kind) {
      case VERTICAL -> List.of(trace.vertical(wall.layout().verticals().get(first)));
      case HORIZONTAL -> List.of(trace.horizontal(wall.layout().horizontals().get(first)));
      case GLASS ->
          List.of(
              trace.glassWidth(wall.layout().cells().get(first)),
              trace.glassHeight(wall.layout().cells().get(first)));
      case GRID -> List.of();
    };
  }

  /** What the way of that number leads to. */
  public Derivation input(int way) {
    List<Derivation> workings = workings();
    return kind == Kind.VERTICAL ? workings.get(0).inputs().get(way) : workings.get(way);
  }
}
