package mullwright.preview;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import mullwright.loopback.Answers;
import mullwright.loopback.SafeHeaders;

/** Answers what a page asks: its own files, the events it listens to, and what was clicked. */
final class Site implements HttpHandler {
  private static final String HTML = "text/html; charset=utf-8";
  private static final String TEXT = "text/plain; charset=utf-8";
  private static final String JSON = "application/json; charset=utf-8";

  /** The files of the page and their kinds. */
  private static final Map<String, String> FILES =
      Map.of(
          "page.html", HTML,
          "page.css", "text/css; charset=utf-8",
          "page.js", "text/javascript; charset=utf-8",
          "parts.js", "text/javascript; charset=utf-8",
          "view.js", "text/javascript; charset=utf-8",
          "icon.svg", "image/svg+xml");

  private final Gate gate;
  private final Stage stage;
  private final Opener opener;
  private final Supplier<Painter> painters;
  private final Map<String, Listener> listeners = new ConcurrentHashMap<>();
  private final AtomicInteger listening = new AtomicInteger();
  private final AtomicInteger names = new AtomicInteger();

  Site(Gate gate, Stage stage, Opener opener, Supplier<Painter> painters) {
    this.gate = gate;
    this.stage = stage;
    this.opener = opener;
    this.painters = painters;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      SafeHeaders.set(exchange.getResponseHeaders(), Gate.POLICY);
      Gate.Passed passed = gate.check(exchange);
      if (passed.path().isEmpty()) {
        Answers.send(exchange, passed.refusal(), TEXT, passed.why());
        return;
      }
      String path = passed.path().get().isEmpty() ? "page.html" : passed.path().get();
      Query query = Query.of(exchange.getRequestURI().getRawQuery());
      switch (exchange.getRequestMethod() + " " + path) {
        case "GET events" -> listen(exchange, query);
        case "POST look" -> look(exchange, query);
        case "POST open" -> open(exchange, query);
        default -> file(exchange, path);
      }
    }
  }

  private void file(HttpExchange exchange, String path) throws IOException {
    if (!FILES.containsKey(path)) {
      Answers.send(exchange, 404, TEXT, "There is nothing here.");
    } else if (!exchange.getRequestMethod().equals("GET")) {
      Answers.send(exchange, 405, TEXT, "This can only be read.");
    } else {
      try (InputStream in = Site.class.getResourceAsStream(path)) {
        Answers.send(exchange, 200, FILES.get(path), in.readAllBytes());
      }
    }
  }

  private void listen(HttpExchange exchange, Query query) throws IOException {
    try {
      if (listening.incrementAndGet() > Preview.LISTENER_LIMIT) {
        Answers.send(
            exchange,
            503,
            TEXT,
            Preview.LISTENER_LIMIT + " pages listen already; close one and load this again.");
        return;
      }
      exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
      exchange.sendResponseHeaders(200, 0);
      String name = Integer.toString(names.incrementAndGet());
      try (Painter painter = painters.get()) {
        Listener listener =
            new Listener(name, query.look(), stage, painter, exchange.getResponseBody());
        listeners.put(name, listener);
        listener.run();
      } finally {
        listeners.remove(name);
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    } finally {
      listening.decrementAndGet();
    }
  }

  private void look(HttpExchange exchange, Query query) throws IOException {
    Listener listener = listeners.get(query.get("page"));
    if (listener == null) {
      Answers.send(exchange, 404, TEXT, "No such page listens.");
      return;
    }
    listener.look(query.look());
    Answers.send(exchange, 200, JSON, "{}");
  }

  private void open(HttpExchange exchange, Query query) throws IOException {
    Optional<Source> source = Source.find(stage.now(), query);
    if (source.isEmpty()) {
      Answers.send(exchange, 404, TEXT, "Nothing in the text stands for this.");
    } else if (opener.able()) {
      opener.open(source.get().file(), source.get().place());
      Answers.send(exchange, 200, JSON, "{}");
    } else {
      Answers.send(exchange, 200, JSON, source.get().excerpt());
    }
  }
}
