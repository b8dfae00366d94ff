package mullwright.server;

import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A text that the server owns: a schedule of a file's walls, to be read and not to be edited.
 *
 * <p>Its address is {@code mullwright:/lengths/east.wall.txt?…}: what it tells, a name for the
 * reader, and the address of the file in the query.
 *
 * @param schedule what it tells, {@code lengths}
 * @param of the address of the wall file
 */
public record VirtualDocument(String schedule, String of) {
  /** The scheme of such addresses. */
  public static final String SCHEME = "mullwright";

  /** The one of that address; empty if it is none. */
  public static Optional<VirtualDocument> at(String address) {
    try {
      URI uri = new URI(address);
      String[] names = uri.getPath() == null ? new String[0] : uri.getPath().split("/");
      if (!SCHEME.equals(uri.getScheme()) || names.length < 2 || uri.getRawQuery() == null) {
        return Optional.empty();
      }
      String of = URLDecoder.decode(uri.getRawQuery(), StandardCharsets.UTF_8);
      return Optional.of(new VirtualDocument(names[1], of));
    } catch (URISyntaxException | IllegalArgumentException nonsense) {
      return Optional.empty();
    }
  }

  /** The name a reader sees. */
  String fileName() {
    String path = of.replaceAll("[?#].*", "");
    String last = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf(':')) + 1);
    return last.replace(".wall", "") + "." + schedule + ".txt";
  }

  /** Its address. */
  public String address() {
    return SCHEME
        + ":/"
        + schedule
        + "/"
        + fileName()
        + "?"
        + URLEncoder.encode(of, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
