package mullwright.bench;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The thinnest client there can be, so that what is measured is the server: no library, no queue.
 */
final class WireClient implements AutoCloseable {
  private final Process process;
  private final OutputStream out;
  private final InputStream in;
  private int id;

  /** Starts a server by its command; its errors go to this program's. */
  WireClient(List<String> command) {
    try {
      process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    out = process.getOutputStream();
    in = new BufferedInputStream(process.getInputStream(), 1 << 16);
  }

  /** Greets the server; done when it has answered. */
  void initialize(Path folder) {
    JsonObject root = new JsonObject();
    root.addProperty("uri", folder.toUri().toString());
    root.addProperty("name", "walls");
    JsonArray folders = new JsonArray();
    folders.add(root);
    JsonObject parameters = new JsonObject();
    parameters.addProperty("processId", ProcessHandle.current().pid());
    parameters.add("capabilities", JsonParser.parseString(CAPABILITIES));
    parameters.add("workspaceFolders", folders);
    request("initialize", parameters);
    notify("initialized", new JsonObject());
  }

  private static final String CAPABILITIES =
      """
      {"textDocument": {
        "publishDiagnostics": {"relatedInformation": true},
        "diagnostic": {},
        "hover": {"contentFormat": ["markdown", "plaintext"]},
        "completion": {"completionItem": {"snippetSupport": true}}
      }}
      """;

  void open(String address, String language, String text) {
    JsonObject document = new JsonObject();
    document.addProperty("uri", address);
    document.addProperty("languageId", language);
    document.addProperty("version", 1);
    document.addProperty("text", text);
    JsonObject parameters = new JsonObject();
    parameters.add("textDocument", document);
    notify("textDocument/didOpen", parameters);
  }

  /** Asks for the diagnostics of a document, and returns how many there are. */
  int pulled(String address) {
    JsonObject document = new JsonObject();
    document.addProperty("uri", address);
    JsonObject parameters = new JsonObject();
    parameters.add("textDocument", document);
    JsonObject answer = request("textDocument/diagnostic", parameters);
    return answer.getAsJsonObject("result").getAsJsonArray("items").size();
  }

  /** Puts a text in the place of columns of a line. */
  void change(String address, int version, int line, int from, int to, String text) {
    JsonObject range = new JsonObject();
    range.add("start", position(line, from));
    range.add("end", position(line, to));
    JsonObject change = new JsonObject();
    change.add("range", range);
    change.addProperty("text", text);
    JsonArray changes = new JsonArray();
    changes.add(change);
    JsonObject parameters = new JsonObject();
    parameters.add("textDocument", document(address, version));
    parameters.add("contentChanges", changes);
    notify("textDocument/didChange", parameters);
  }

  /** Asks about a place and waits for the answer. */
  JsonObject ask(String method, String address, int line, int column) {
    JsonObject parameters = new JsonObject();
    parameters.add("textDocument", document(address, null));
    parameters.add("position", position(line, column));
    return request(method, parameters);
  }

  private static JsonObject document(String address, Integer version) {
    JsonObject document = new JsonObject();
    document.addProperty("uri", address);
    document.addProperty("version", version);
    return document;
  }

  private static JsonObject position(int line, int column) {
    JsonObject position = new JsonObject();
    position.addProperty("line", line);
    position.addProperty("character", column);
    return position;
  }

  JsonObject request(String method, JsonObject parameters) {
    JsonObject message = message(method, parameters);
    message.addProperty("id", ++id);
    send(message);
    JsonObject answer = next();
    while (!answer.has("id") || answer.has("method") || answer.get("id").getAsInt() != id) {
      answer = next();
    }
    return answer;
  }

  void notify(String method, JsonObject parameters) {
    send(message(method, parameters));
  }

  private static JsonObject message(String method, JsonObject parameters) {
    JsonObject message = new JsonObject();
    message.addProperty("jsonrpc", "2.0");
    message.addProperty("method", method);
    message.add("params", parameters);
    return message;
  }

  private void send(JsonObject message) {
    byte[] body = message.toString().getBytes(StandardCharsets.UTF_8);
    byte[] head =
        ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
    byte[] all = java.util.Arrays.copyOf(head, head.length + body.length);
    System.arraycopy(body, 0, all, head.length, body.length);
    try {
      out.write(all);
      out.flush();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Waits for diagnostics of that address and version, and returns how many there are. */
  int diagnostics(String address, int version) {
    while (true) {
      JsonObject message = next();
      if (message.has("method")
          && message.get("method").getAsString().equals("textDocument/publishDiagnostics")) {
        JsonObject parameters = message.getAsJsonObject("params");
        if (parameters.get("uri").getAsString().equals(address)
            && parameters.has("version")
            && parameters.get("version").getAsInt() >= version) {
          return parameters.getAsJsonArray("diagnostics").size();
        }
      }
    }
  }

  private JsonObject next() {
    try {
      int length = -1;
      String header = header();
      while (!header.isEmpty()) {
        if (header.startsWith("Content-Length: ")) {
          length = Integer.parseInt(header.substring("Content-Length: ".length()));
        }
        header = header();
      }
      byte[] body = in.readNBytes(length);
      return JsonParser.parseString(new String(body, StandardCharsets.UTF_8)).getAsJsonObject();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private String header() throws IOException {
    StringBuilder header = new StringBuilder();
    int c = in.read();
    while (c != '\n') {
      if (c < 0) {
        throw new EOFException("the server went away");
      }
      if (c != '\r') {
        header.append((char) c);
      }
      c = in.read();
    }
    return header.toString();
  }

  /** The most memory the server ever had, in megabytes, as Linux tells it; 0 elsewhere. */
  long peakMegabytes() {
    try {
      for (String line : Files.readAllLines(Path.of("/proc/" + process.pid() + "/status"))) {
        if (line.startsWith("VmHWM:")) {
          return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
        }
      }
    } catch (IOException elsewhere) {
      return 0;
    }
    return 0;
  }

  @Override
  public void close() {
    request("shutdown", new JsonObject());
    notify("exit", new JsonObject());
    try {
      process.waitFor();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
