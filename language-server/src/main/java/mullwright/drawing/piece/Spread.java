package mullwright.drawing.piece;

import java.util.ArrayDeque;
import java.util.Deque;

/** Moves letters apart that would fall on each other, each as little as can be. */
final class Spread {
  private Spread() {}

  /** Neighbours that touch: they lie as one block about the middle of where they want to be. */
  private record Block(int first, int count, double sum) {
    // where its first one lies, so that the mean of all is what they want
    double start(double pitch) {
      return sum / count - (count - 1) * pitch / 2;
    }

    Block with(Block next) {
      return new Block(first, count + next.count, sum + next.sum);
    }
  }

  /**
   * Places at least a pitch apart.
   *
   * @param wanted ascending
   */
  static double[] of(double[] wanted, double pitch) {
    Deque<Block> blocks = new ArrayDeque<>();
    for (int at = 0; at < wanted.length; at++) {
      Block block = new Block(at, 1, wanted[at]);
      while (!blocks.isEmpty()
          && blocks.peekLast().start(pitch) + blocks.peekLast().count() * pitch
              > block.start(pitch)) {
        block = blocks.pollLast().with(block);
      }
      blocks.addLast(block);
    }
    double[] placed = new double[wanted.length];
    for (Block block : blocks) {
      for (int at = 0; at < block.count(); at++) {
        placed[block.first() + at] = block.start(pitch) + at * pitch;
      }
    }
    return placed;
  }
}
