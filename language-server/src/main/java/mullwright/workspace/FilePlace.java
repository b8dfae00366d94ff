package mullwright.workspace;

/**
 * A stretch of a file.
 *
 * @param path below the workspace's root
 * @param start offset of its first UTF-16 code unit in the file's text, {@code end} after its last
 */
public record FilePlace(String path, int start, int end) {}
