package mullwright.preview;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Optional;
import mullwright.loopback.Secret;

/**
 * Who may ask for what.
 *
 * <p>Three locks, since each alone leaves a way in: the token in every address keeps out other
 * users and programs of the machine, {@code Host} keeps out foreign names that are made to point at
 * this machine, {@code Origin} keeps out foreign pages in the same browser.
 *
 * @param port listened on
 */
record Gate(int port, Secret secret) {
  /**
   * Nothing from outside, nothing inline. A frame round it may be made by an editor's side panel
   * and by pages of this machine only; these too must know the token.
   */
  static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
          + " img-src 'self'; base-uri 'none'; form-action 'none';"
          + " frame-ancestors vscode-file: vscode-webview: http://127.0.0.1:* http://localhost:*";

  /** The address of the page. */
  String address() {
    return "http://127.0.0.1:" + port + "/" + secret.token() + "/";
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
    Optional<String> path = secret.below(exchange.getRequestURI().getPath());
    return path.isEmpty() ? Passed.refused(404, "There is nothing here.") : new Passed(path, 0, "");
  }

  private boolean isHere(String host) {
    return host.equals("127.0.0.1:" + port) || host.equalsIgnoreCase("localhost:" + port);
  }
}
