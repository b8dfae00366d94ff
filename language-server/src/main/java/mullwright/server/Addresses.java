package mullwright.server;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Turns the addresses (URIs) of the protocol into paths of the disk and back. */
final class Addresses {
  private Addresses() {}

  /** The file an address names; empty if it names none ({@code untitled:…}, nonsense). */
  static Optional<Path> path(String address) {
    try {
      URI uri = new URI(address);
      if (!"file".equalsIgnoreCase(uri.getScheme()) || uri.getPath() == null) {
        return Optional.empty();
      }
      // an authority (a share) or a query is beyond what Path.of takes; the path alone is meant
      URI plain = new URI("file", null, uri.getPath(), null);
      return Optional.of(Path.of(plain).toAbsolutePath().normalize());
    } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException invalid) {
      return Optional.empty();
    }
  }

  /** The address of a file, as editors spell it: {@code file:///…}. */
  static String of(Path path) {
    String raw = path.toUri().getRawPath();
    // a folder that exists is spelled with a slash at its end, which no editor does
    return "file://"
        + (raw.length() > 1 && raw.endsWith("/") ? raw.substring(0, raw.length() - 1) : raw);
  }

  /** The address of a path as text; of nonsense, the nonsense. */
  static String ofPath(String path) {
    try {
      return of(Path.of(path));
    } catch (InvalidPathException invalid) {
      return path;
    }
  }
}
