package mullwright.loopback;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** How an answer that is known whole is sent. */
public final class Answers {
  private Answers() {}

  /**
   * Sends text.
   *
   * @param type media type, with its character set
   * @throws IOException when the page is gone
   */
  public static void send(HttpExchange exchange, int status, String type, String text)
      throws IOException {
    send(exchange, status, type, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Sends bytes.
   *
   * @throws IOException when the page is gone
   */
  public static void send(HttpExchange exchange, int status, String type, byte[] body)
      throws IOException {
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(body);
    }
  }
}
