package mullwright.drawing.detail;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import mullwright.drawing.Align;
import mullwright.drawing.Leader;
import mullwright.drawing.Lettering;
import mullwright.drawing.Paragraph;
import mullwright.drawing.Surface;

/**
 * Notes in a column beside a detail, each with a leader to its point, as near its height as the
 * others leave room.
 */
final class Notes {
  /** Widest line of a note [mm]. */
  static final double WIDTH = 46;

  private static final double PITCH = Lettering.NOTE.height() * Lettering.LINE_PITCH;
  private static final double GAP = 2;

  private final List<Note> notes = new ArrayList<>();

  private record Note(double x, double y, List<String> lines) {
    double height() {
      return lines.size() * PITCH + GAP;
    }
  }

  /** Notes that touch: they stand as one, about the middle of where they want to be. */
  private record Block(int first, int count, double sum) {
    double mean() {
      return sum / count;
    }

    Block with(Block next) {
      return new Block(first, count + next.count, sum + next.sum);
    }
  }

  /** Notes something at a point of the paper. */
  void at(double[] point, String words) {
    notes.add(new Note(point[0], point[1], Paragraph.lines(words, Lettering.NOTE, WIDTH)));
  }

  /**
   * Paints them; to be called within a layer.
   *
   * @param x where their lines begin, or end if they stand on the left of their points
   * @param floor none of them goes below
   */
  void paint(Surface surface, double x, double floor) {
    List<Note> sorted = new ArrayList<>(notes);
    sorted.sort(Comparator.comparingDouble(Note::y).reversed().thenComparingDouble(Note::x));
    double[] tops = tops(sorted);
    double lowest =
        sorted.isEmpty() ? floor : tops[tops.length - 1] - sorted.get(tops.length - 1).height();
    double up = Math.max(0, floor - lowest);
    for (int at = 0; at < tops.length; at++) {
      Note note = sorted.get(at);
      double base = tops[at] + up - Lettering.NOTE.height();
      Leader.of(note.x(), note.y(), x, base, note.lines().get(0)).paint(surface);
      Align align = x >= note.x() ? Align.LEFT : Align.RIGHT;
      for (int line = 1; line < note.lines().size(); line++) {
        surface.text(note.lines().get(line), x, base - line * PITCH, Lettering.NOTE, align);
      }
    }
  }

  // heights added up turn "none on another" into "in order", which averages of neighbours keep
  private static double[] tops(List<Note> sorted) {
    Deque<Block> blocks = new ArrayDeque<>();
    double above = 0;
    for (int at = 0; at < sorted.size(); at++) {
      double wanted = sorted.get(at).y() + Lettering.NOTE.height() / 2 + above;
      Block block = new Block(at, 1, wanted);
      while (!blocks.isEmpty() && blocks.peekLast().mean() < block.mean()) {
        block = blocks.pollLast().with(block);
      }
      blocks.addLast(block);
      above += sorted.get(at).height();
    }
    double[] tops = new double[sorted.size()];
    double before = 0;
    for (Block block : blocks) {
      for (int at = block.first(); at < block.first() + block.count(); at++) {
        tops[at] = block.mean() - before;
        before += sorted.get(at).height();
      }
    }
    return tops;
  }
}
