package mullwright.workspace;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Files below one folder of a disk.
 *
 * <p>A link that leads out of the folder is as good as missing. A file may vanish between any two
 * questions.
 */
public final class DiskFiles implements Files {
  private static final int DEPTH_LIMIT = 16;

  /** The most files and folders that are passed on the way to walls, as in a whole home folder. */
  static final int PASS_LIMIT = 100_000;

  private static final Set<String> PASSED_OVER = Set.of("node_modules", "target", "build");

  private final Path root;
  private final int passLimit;

  /** Everything below that folder. */
  public DiskFiles(Path root) {
    this(root, PASS_LIMIT);
  }

  /**
   * Everything below that folder.
   *
   * @param passLimit how many files and folders are looked at on the way to walls
   */
  DiskFiles(Path root, int passLimit) {
    this.root = root.toAbsolutePath().normalize();
    this.passLimit = passLimit;
  }

  /** The folder itself. */
  public Path root() {
    return root;
  }

  /** The file on disk, whether or not it exists. */
  public Path absolute(String path) {
    return root.resolve(path);
  }

  /** The path of a file below the root; empty if it is not below it. */
  public Optional<String> relative(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    if (!whole.startsWith(root) || whole.equals(root)) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    root.relativize(whole).forEach(name -> names.add(name.toString()));
    return Optional.of(String.join("/", names));
  }

  @Override
  public Read read(String path) {
    try {
      Path file = root.resolve(path).toRealPath();
      if (!file.startsWith(root.toRealPath()) || !java.nio.file.Files.isRegularFile(file)) {
        return new Read.Missing();
      }
      long size = java.nio.file.Files.size(file);
      if (size > SIZE_LIMIT) {
        return new Read.TooLarge(size);
      }
      return decoded(java.nio.file.Files.readAllBytes(file));
    } catch (NoSuchFileException | InvalidPathException gone) {
      return new Read.Missing();
    } catch (IOException failed) {
      return new Read.Failed(failed.getClass().getSimpleName() + ": " + failed.getMessage());
    }
  }

  /** UTF-8, with or without a byte order mark; whatever is none becomes U+FFFD. */
  public static Read.Text decoded(byte[] bytes) {
    boolean marked =
        bytes.length >= 3
            && bytes[0] == (byte) 0xEF
            && bytes[1] == (byte) 0xBB
            && bytes[2] == (byte) 0xBF;
    int start = marked ? 3 : 0;
    CharsetDecoder strict =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    try {
      CharBuffer text = strict.decode(ByteBuffer.wrap(bytes, start, bytes.length - start));
      return new Read.Text(text.toString(), false);
    } catch (CharacterCodingException damaged) {
      return new Read.Text(
          new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8), true);
    }
  }

  @Override
  public Object stamp(String path) {
    try {
      BasicFileAttributes is =
          java.nio.file.Files.readAttributes(root.resolve(path), BasicFileAttributes.class);
      return List.of(is.lastModifiedTime(), is.size(), String.valueOf(is.fileKey()));
    } catch (IOException | InvalidPathException gone) {
      return "";
    }
  }

  @Override
  public List<String> walls() {
    List<String> found = new ArrayList<>();
    try {
      java.nio.file.Files.walkFileTree(
          root, EnumSet.noneOf(java.nio.file.FileVisitOption.class), DEPTH_LIMIT, visitor(found));
    } catch (IOException unreadable) {
      // what could be listed is listed; a folder that went away holds no walls
      return Collections.unmodifiableList(found);
    }
    Collections.sort(found);
    return Collections.unmodifiableList(found);
  }

  private SimpleFileVisitor<Path> visitor(List<String> found) {
    return new SimpleFileVisitor<>() {
      private int passed;

      @Override
      public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes is) {
        if (folder.equals(root)) {
          return FileVisitResult.CONTINUE;
        }
        String name = folder.getFileName().toString();
        passed++;
        return name.startsWith(".") || PASSED_OVER.contains(name)
            ? FileVisitResult.SKIP_SUBTREE
            : goesOn();
      }

      @Override
      public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
        if (file.toString().endsWith(".wall") && is.isRegularFile()) {
          relative(file).ifPresent(found::add);
        }
        passed++;
        return goesOn();
      }

      private FileVisitResult goesOn() {
        return found.size() < COUNT_LIMIT && passed < passLimit
            ? FileVisitResult.CONTINUE
            : FileVisitResult.TERMINATE;
      }

      @Override
      public FileVisitResult visitFileFailed(Path file, IOException why) {
        return FileVisitResult.CONTINUE;
      }
    };
  }
}
