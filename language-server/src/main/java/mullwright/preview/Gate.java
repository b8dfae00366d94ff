package mullwright.preview;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * Who may ask for what.
 *
 * <p>Three locks, since each alone leaves a way in: the token in every address keeps out other
 * users and programs of the machine, {@code Host} keeps out foreign names that are made to point at
 * this machine, {@code Origin} keeps out foreign pages in the same browser.
 *
 * @param port listened on
 * @param token random, for this run only
 */
record Gate(int port, String token) {
  private static final int TOKEN_BYTES = 32;

  /**
   * Nothing from outside, nothing inline. A frame round it may be made by an editor's side panel
   * and by pages of this machine only; these too must know the token.
   */
  static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
          + " img-src 'self'; base-uri 'none'; form-action 'none';"
          + " frame-ancestors vscode-file: vscode-webview: http://127.0.0.1:* http://localhost:*";

  static String newToken() {
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
  }

  /** The address of the page. */
  String address() {
    return "http://127.0.0.1:" + port + "/" + token + "/";
  }

  /**
   * Whether a request may pass.
   *
   * @param allowed what it asks for below the token, or why not
   */
  record Passed(Optional<String> path, int refusal, String why) {
    private static Passed refused(int status, String why) {
      return new Passed(Optional.empty(), status, why);
    }
  }

  Passed check(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    if (!exchange.getRemoteAddress().getAddress().isLoopbackAddress()) {
      return Passed.refused(403, "Only this machine may ask.");
    }
    List<String> hosts = headers.getOrDefault("Host", List.of());
    if (hosts.size() != 1 || !isHere(hosts.get(0))) {
      return Passed.refused(403, "The request names another host.");
    }
    List<String> origins = headers.getOrDefault("Origin", List.of());
    boolean foreign = origins.stream().anyMatch(origin -> !origin.equals("http://" + hosts.get(0)));
    boolean changes = !exchange.getRequestMethod().equals("GET");
    if (foreign || origins.size() > 1 || changes && origins.isEmpty()) {
      return Passed.refused(403, "The request comes from another page.");
    }
    String path = exchange.getRequestURI().getPath();
    int end = path == null ? -1 : path.indexOf('/', 1);
    if (end < 0 || !isToken(path.substring(1, end))) {
      return Passed.refused(404, "There is nothing here.");
    }
    return new Passed(Optional.of(path.substring(end + 1)), 0, "");
  }

  private boolean isHere(String host) {
    return host.equals("127.0.0.1:" + port) || host.equalsIgnoreCase("localhost:" + port);
  }

  // takes as long for a near guess as for a far one
  private boolean isToken(String given) {
    return MessageDigest.isEqual(
        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  /** What every answer says of itself. */
  static void protect(Headers headers) {
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }
}
