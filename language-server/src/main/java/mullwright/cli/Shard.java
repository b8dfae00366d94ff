package mullwright.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * One of several parts of a list of files: every {@code of}-th, so that neighbours, which are often
 * alike, fall to different machines.
 *
 * @param number from 1 to {@code of}
 */
record Shard(int number, int of) {
  private static final int MOST = 10_000;

  /** Reads {@code 2/5}; null is the whole. */
  static Shard of(String text) throws CannotException {
    if (text == null) {
      return new Shard(1, 1);
    }
    if (text.matches("[0-9]{1,5}/[0-9]{1,5}")) {
      String[] parts = text.split("/");
      int number = Integer.parseInt(parts[0]);
      int of = Integer.parseInt(parts[1]);
      if (number >= 1 && number <= of && of <= MOST) {
        return new Shard(number, of);
      }
    }
    throw new CannotException(
        "--shard " + text + " is no part of a whole: write 1/4 for the first of four.");
  }

  /** The files of this part, in order. */
  List<String> take(List<String> paths) {
    List<String> taken = new ArrayList<>();
    for (int at = number - 1; at < paths.size(); at += of) {
      taken.add(paths.get(at));
    }
    return taken;
  }
}
