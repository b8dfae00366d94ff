package mullwright.web;

import java.util.List;
import java.util.Optional;
import mullwright.loopback.Secret;

/**
 * Who may ask: three locks, since each alone leaves a way in. The token in every address keeps out
 * other users and programs of the machine, {@code Host} keeps out foreign names that were made to
 * point at this machine, {@code Origin} keeps out foreign pages in the same browser.
 *
 * @param port the page is served at; its origin is the only one that may ask
 */
record Gate(int port, Secret secret) {
  private static final String LOOPBACK = "127.0.0.1:";

  /** The address of the page. */
  String address() {
    return origin() + "/" + secret.token() + "/";
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
    return secret.below(caller.path).isPresent()
        ? Optional.empty()
        : Optional.of("The address lacks its token: open the one that was printed.");
  }

  /** What is asked for below the token; only of a caller that may pass. */
  String below(String path) {
    return secret.below(path).orElseThrow();
  }
}
