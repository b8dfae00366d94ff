package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;

/** Makes lists of lists to be filled. */
final class Lists {
  private Lists() {}

  /** So many empty ones. */
  static <T> List<List<T>> of(int count) {
    List<List<T>> lists = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }
}
