package mullwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A request written by hand, since well-behaved clients let nobody lie about {@code Host}.
 *
 * @param lines header lines; a null value leaves one out
 */
record Asked(int port, String method, String path, Map<String, String> lines, byte[] body) {
  private static final Pattern LENGTH = Pattern.compile("(?i)\r\ncontent-length: *(\\d+)");

  /** What came back. */
  record Answer(int status, String head, String body) {}

  /** As the page itself would ask. */
  static Asked of(String address, String method, String below) {
    URI uri = URI.create(address);
    String here = uri.getHost() + ":" + uri.getPort();
    Map<String, String> lines = new LinkedHashMap<>();
    lines.put("Host", here);
    if (!method.equals("GET")) {
      lines.put("Origin", "http://" + here);
    }
    return new Asked(uri.getPort(), method, uri.getRawPath() + below, lines, new byte[0]);
  }

  Asked with(String name, String value) {
    Map<String, String> others = new LinkedHashMap<>(lines);
    others.put(name, value);
    return new Asked(port, method, path, others, body);
  }

  Asked without(String name) {
    Map<String, String> others = new LinkedHashMap<>(lines);
    others.remove(name);
    return new Asked(port, method, path, others, body);
  }

  Asked body(byte[] bytes) {
    return new Asked(port, method, path, lines, bytes);
  }

  Asked body(String text) {
    return body(text.getBytes(StandardCharsets.UTF_8));
  }

  Asked path(String other) {
    return new Asked(port, method, other, lines, body);
  }

  /** Asks for a WebSocket. */
  Asked upgrade() {
    return with("Upgrade", "websocket")
        .with("Sec-WebSocket-Version", "13")
        .with("Sec-WebSocket-Key", "dGhlIHNhbXBsZSBub25jZQ==") // the sample of RFC 6455, 1.3
        .with("Connection", "Upgrade");
  }

  Answer answer() throws IOException {
    StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
    lines.forEach((name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
    if (!lines.containsKey("Connection")) {
      head.append("Connection: close\r\n");
    }
    head.append("Content-Length: ").append(body.length).append("\r\n\r\n");
    try (Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(head.toString().getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().write(body);
      socket.getOutputStream().flush();
      return read(socket.getInputStream());
    }
  }

  /** The head and as much body as it announces; status 0 if the line is cut without a word. */
  private static Answer read(InputStream in) throws IOException {
    StringBuilder head = new StringBuilder();
    while (head.indexOf("\r\n\r\n") < 0) {
      int one = in.read();
      if (one < 0) {
        return new Answer(0, head.toString(), "");
      }
      head.append((char) one);
    }
    Matcher length = LENGTH.matcher(head);
    byte[] body = in.readNBytes(length.find() ? Integer.parseInt(length.group(1)) : 0);
    return new Answer(
        Integer.parseInt(head.substring(9, 12)),
        head.toString(),
        new String(body, StandardCharsets.UTF_8));
  }
}
