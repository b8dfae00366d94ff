package mullwright.web;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import mullwright.loopback.Answers;
import mullwright.loopback.SafeHeaders;

/** Gives out the page with all it needs, lists and reads the files of the folder, saves them. */
final class Site implements HttpHandler {
  /** Where the editor's own files stand in the jar. */
  static final String MONACO = "/META-INF/resources/webjars/monaco-editor/0.52.2/min/";

  private static final String TEXT = "text/plain; charset=utf-8";
  private static final String JSON = "application/json; charset=utf-8";
  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml",
          "ttf", "font/ttf");

  private static final Pattern OWN = Pattern.compile("[a-z-]{1,40}\\.(html|css|js|svg)");
  private static final Pattern EDITOR =
      Pattern.compile("vs(/[A-Za-z.-]{1,40}){1,8}\\.(css|js|ttf)");

  private final Gate gate;
  private final Folder folder;
  private final String talk;
  private final Gson gson = new Gson();

  /**
   * @param talk address of the socket the page talks over
   */
  Site(Gate gate, Folder folder, String talk) {
    this.gate = gate;
    this.folder = folder;
    this.talk = talk;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      protect(exchange.getResponseHeaders());
      String method = exchange.getRequestMethod();
      String path = exchange.getRequestURI().getRawPath();
      Headers headers = exchange.getRequestHeaders();
      Optional<String> refusal =
          gate.refusal(
              new Gate.Caller(
                  headers.getOrDefault("Host", List.of()),
                  headers.getOrDefault("Origin", List.of()),
                  path,
                  gate.port(),
                  !method.equals("GET")));
      if (refusal.isPresent()) {
        Answers.send(exchange, 403, TEXT, refusal.get());
        return;
      }
      String below = gate.below(path);
      switch (method + " " + below) {
        case "GET settings.json" -> Answers.send(exchange, 200, JSON, settings());
        case "GET files" -> Answers.send(exchange, 200, JSON, gson.toJson(folder.list()));
        case "GET file" -> read(exchange);
        case "PUT file" -> save(exchange);
        default -> part(exchange, method, below.isEmpty() ? "page.html" : below);
      }
    }
  }

  // nothing from outside, nothing inline but the styles the editor sets, no frame round it
  private void protect(Headers headers) {
    String socket = talk.substring(0, talk.indexOf('/', "ws://".length()));
    SafeHeaders.set(
        headers,
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self'"
            + " data:; font-src 'self' data:; worker-src 'self'; connect-src 'self' "
            + socket
            + "; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
    headers.set("X-Frame-Options", "DENY");
  }

  private String settings() {
    JsonObject settings = new JsonObject();
    settings.addProperty("talk", talk);
    settings.addProperty("folder", folder.root().toString());
    // without the slash at the end that a folder's address has
    settings.addProperty("root", folder.root().toUri().toString().replaceAll("/+$", ""));
    return settings.toString();
  }

  private void part(HttpExchange exchange, String method, String path) throws IOException {
    if (!method.equals("GET")) {
      Answers.send(exchange, 405, TEXT, "This can only be read.");
      return;
    }
    String resource =
        OWN.matcher(path).matches() ? path : EDITOR.matcher(path).matches() ? MONACO + path : null;
    try (InputStream in = resource == null ? null : Site.class.getResourceAsStream(resource)) {
      if (in == null) {
        Answers.send(exchange, 404, TEXT, "There is nothing here.");
      } else {
        String type = TYPES.get(path.substring(path.lastIndexOf('.') + 1));
        Answers.send(exchange, 200, type, in.readAllBytes());
      }
    }
  }

  private void read(HttpExchange exchange) throws IOException {
    Optional<Folder.Content> content;
    try {
      content = folder.read(asked(exchange));
    } catch (IOException failed) {
      Answers.send(exchange, 500, TEXT, "It cannot be read: " + failed.getMessage() + ".");
      return;
    }
    if (content.isEmpty()) {
      Answers.send(exchange, 404, TEXT, "There is no such wall in the folder.");
    } else {
      Answers.send(exchange, 200, JSON, gson.toJson(content.get()));
    }
  }

  private void save(HttpExchange exchange) throws IOException {
    byte[] body = exchange.getRequestBody().readNBytes((int) Folder.SIZE_LIMIT + 1);
    if (body.length > Folder.SIZE_LIMIT) {
      Answers.send(exchange, 413, TEXT, "A text of more than 8 MiB is not saved.");
      return;
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
    } catch (CharacterCodingException damaged) {
      Answers.send(exchange, 400, TEXT, "The text is not UTF-8.");
      return;
    }
    Optional<String> edited =
        Optional.ofNullable(exchange.getRequestHeaders().getFirst("If-Match"))
            .map(quoted -> quoted.replace("\"", ""));
    Folder.Outcome outcome;
    try {
      outcome = folder.save(asked(exchange), text, edited);
    } catch (IOException failed) {
      // as of a disk that is full
      Answers.send(exchange, 500, TEXT, "The disk does not take it: " + failed.getMessage() + ".");
      return;
    }
    if (outcome instanceof Folder.Saved saved) {
      Answers.send(exchange, 200, JSON, gson.toJson(saved));
    } else if (outcome instanceof Folder.Conflict conflict) {
      Answers.send(exchange, 412, TEXT, conflict.sentence());
    } else if (outcome instanceof Folder.Refused refused) {
      Answers.send(exchange, 403, TEXT, refused.sentence());
    }
  }

  /** The file a request is about: {@code ?path=…}. */
  private static String asked(HttpExchange exchange) {
    String query = exchange.getRequestURI().getRawQuery();
    if (query == null || !query.startsWith("path=")) {
      return "";
    }
    try {
      return URLDecoder.decode(query.substring("path=".length()), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException unreadable) {
      return "";
    }
  }
}
