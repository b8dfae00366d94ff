package mullwright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * Who may ask: three locks, since each alone leaves a way in. The token in every address keeps out
 * other users and programs of the machine, {@code Host} keeps out foreign names that were made to
 * point at this machine, {@code Origin} keeps out foreign pages in the same browser.
 *
 * @param port the page is served at; its origin is the only one that may ask
 * @param token random, for this run only
 */
record Gate(int port, String token) {
  private static final String LOOPBACK = "127.0.0.1:";
  private static final int TOKEN_BYTES = 32;

  static String newToken() {
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
  }

  /** The address of the page. */
  String address() {
    return origin() + "/" + token + "/";
  }

  /** The page's origin, as browsers name it. */
  String origin() {
    return "http://" + LOOPBACK + port;
  }

  /**
   * What a request says of itself.
   *
   * @param hosts values of its {@code Host} lines, {@code origins} of its {@code Origin} lines
   * @param path as asked for, still escaped
   * @param to the port it came to
   * @param changes true if it changes or opens something: then it must name its origin
   */
  record Caller(List<String> hosts, List<String> origins, String path, int to, boolean changes) {}

  /** Why the caller may not pass; empty if it may. */
  Optional<String> refusal(Caller caller) {
    if (!caller.hosts.equals(List.of(LOOPBACK + caller.to))) {
      return Optional.of("The request names another host.");
    }
    boolean own = caller.origins.equals(List.of(origin()));
    if (!own && (caller.changes || !caller.origins.isEmpty())) {
      return Optional.of("The request comes from another page.");
    }
    return hasToken(caller.path)
        ? Optional.empty()
        : Optional.of("The address lacks its token: open the one that was printed.");
  }

  /** What is asked for below the token; only of a caller that may pass. */
  String below(String path) {
    return path.substring(token.length() + 2);
  }

  // takes as long for a near guess as for a far one
  private boolean hasToken(String path) {
    int end = path.indexOf('/', 1);
    return end > 0
        && MessageDigest.isEqual(
            path.substring(1, end).getBytes(StandardCharsets.UTF_8),
            token.getBytes(StandardCharsets.UTF_8));
  }
}
