package mullwright.drawing;

/**
 * A stretch of a file.
 *
 * @param file its path below the workspace's root
 * @param start offset of its first UTF-16 code unit, {@code end} after its last
 */
public record TextPlace(String file, int start, int end) {}
