package mullwright.workspace;

import java.util.List;

/**
 * Where texts come from: a disk, or memory in tests.
 *
 * <p>Paths are relative to the root, with {@code /} between folders and without {@code .} and
 * {@code ..}. Nothing above the root can be read.
 */
public interface Files {
  /** The largest file that is read, in bytes. */
  long SIZE_LIMIT = 8L << 20;

  /** The most files that are listed. */
  int COUNT_LIMIT = 4096;

  /** What the path holds at this moment. Never throws. */
  Read read(String path);

  /** Something that is equal as long as the file is the same; cheap beside reading it. */
  Object stamp(String path);

  /** The wall files below the root in the order of their paths, at most {@link #COUNT_LIMIT}. */
  List<String> walls();

  /** False for a text that has no place among files yet. */
  default boolean placed() {
    return true;
  }

  /** What came of reading a file. */
  sealed interface Read {
    /**
     * Its text.
     *
     * @param damaged true if bytes that are no UTF-8 were read as U+FFFD
     */
    record Text(String text, boolean damaged) implements Read {}

    /** There is no such file, or it lies above the root. */
    record Missing() implements Read {}

    /** It is larger than {@link #SIZE_LIMIT}. */
    record TooLarge(long bytes) implements Read {}

    /** It is there and cannot be read. */
    record Failed(String why) implements Read {}
  }
}
