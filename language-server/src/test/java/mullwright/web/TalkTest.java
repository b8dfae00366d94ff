package mullwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The talk over WebSocket, with another client than the page's own: the one of the JDK. Statuses by
 * RFC 9110, section 15.
 */
class TalkTest {
  private static final String UNKNOWN = "wall East {\n  system gone\n}\n";
  private static final long PATIENCE_SECONDS = 30;

  @TempDir Path folder;
  private WebDoor door;

  @BeforeEach
  void open() throws IOException {
    door = WebDoor.open(folder, 0);
  }

  @AfterEach
  void close() {
    door.close();
  }

  /** One page: what it hears, and how its talk ended. */
  private final class Page implements WebSocket.Listener {
    final BlockingQueue<String> heard = new LinkedBlockingQueue<>();
    final CompletableFuture<String> ended = new CompletableFuture<>();
    private final StringBuilder part = new StringBuilder();
    final WebSocket socket;

    Page() {
      socket =
          HttpClient.newHttpClient()
              .newWebSocketBuilder()
              .header("Origin", door.address().replaceAll("/[^/]+/$", ""))
              .buildAsync(URI.create(door.talkAddress()), this)
              .join();
    }

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence text, boolean last) {
      part.append(text);
      if (last) {
        heard.add(part.toString());
        part.setLength(0);
      }
      from.request(1);
      return null;
    }

    @Override
    public CompletionStage<?> onClose(WebSocket from, int code, String reason) {
      ended.complete(reason);
      return null;
    }

    void send(String message) {
      socket.sendText(message, true).join();
    }

    JsonObject hear() throws InterruptedException {
      String message = heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
      assertThat(message).as("a message in time").isNotNull();
      return JsonParser.parseString(message).getAsJsonObject();
    }

    void initialize() {
      send(
          "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"rootUri\":\""
              + folder.toUri()
              + "\",\"capabilities\":{}}}");
    }

    JsonObject answer(int id) throws InterruptedException {
      JsonObject message = hear();
      while (!message.has("id")
          || message.get("id").isJsonNull()
          || message.get("id").getAsInt() != id) {
        message = hear();
      }
      return message;
    }
  }

  @Test
  void aPageTalksWithAServerOfItsOwn() throws Exception {
    Page page = new Page();
    page.initialize();
    assertThat(page.answer(1).getAsJsonObject("result").has("capabilities")).isTrue();
    page.send("{\"jsonrpc\":\"2.0\",\"method\":\"initialized\",\"params\":{}}");
    String uri = folder.resolve("östlich.wall").toUri().toString();
    JsonObject document = new JsonObject();
    document.addProperty("uri", uri);
    document.addProperty("languageId", "wall");
    document.addProperty("version", 1);
    document.addProperty("text", UNKNOWN);
    page.send(
        "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\",\"params\":{\"textDocument\":"
            + document
            + "}}");
    JsonObject told = page.hear();
    while (!told.has("method")
        || !told.get("method").getAsString().equals("textDocument/publishDiagnostics")) {
      told = page.hear();
    }
    assertThat(told.toString()).contains("unknown-name", "gone");
  }

  @Test
  void aServerEndsWithItsPage() throws Exception {
    Set<Thread> others = talking();
    Page page = new Page();
    page.initialize();
    page.answer(1);
    Set<Thread> own = talking();
    own.removeAll(others);
    assertThat(own).isNotEmpty();
    page.socket.sendClose(WebSocket.NORMAL_CLOSURE, "").join();
    for (Thread server : own) {
      server.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
      assertThat(server.isAlive()).as(server.getName()).isFalse();
    }
  }

  /** The threads that serve talks; those of tests before may still be ending. */
  private static Set<Thread> talking() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals("mullwright-talk"))
        .collect(Collectors.toSet());
  }

  @Test
  void onePageTooManyIsToldSo() throws Exception {
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < Talks.TALK_LIMIT; i++) {
      pages.add(new Page());
    }
    Page further = new Page();
    assertThat(further.ended.get(PATIENCE_SECONDS, TimeUnit.SECONDS))
        .isEqualTo("8 pages are open already; close one and load this again.");
    assertThat(pages).noneMatch(page -> page.ended.isDone());
    pages.forEach(page -> page.socket.abort());
  }

  @Test
  void nonsenseCostsNothingButItself() throws Exception {
    Page page = new Page();
    page.send("no JSON at all");
    // answered under null, since nobody can tell what was asked (JSON-RPC 2.0, "Response object")
    JsonObject refused = page.hear();
    assertThat(refused.get("id").isJsonNull()).isTrue();
    assertThat(refused.getAsJsonObject("error").get("code").getAsInt()).isEqualTo(-32700);
    page.send("");
    page.send("{\"jsonrpc\":\"2.0\"}");
    page.initialize();
    assertThat(page.answer(1).has("result")).isTrue();
  }

  @Test
  void theServersStreamIsCutIntoItsMessages() throws Exception {
    List<String> messages = new ArrayList<>();
    ByteArrayOutputStream stream = new ByteArrayOutputStream();
    for (String message : List.of("{}", "{\"a\":\"⌀ ½″\"}", "")) {
      byte[] body = message.getBytes(StandardCharsets.UTF_8);
      stream.writeBytes(
          ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      stream.writeBytes(body);
    }
    byte[] bytes = stream.toByteArray();
    for (int piece = 1; piece <= bytes.length; piece++) {
      messages.clear();
      try (MessageOutput out = new MessageOutput(messages::add)) {
        for (int at = 0; at < bytes.length; at += piece) {
          out.write(bytes, at, Math.min(piece, bytes.length - at));
        }
      }
      assertThat(messages).startsWith("{}", "{\"a\":\"⌀ ½″\"}");
    }
  }

  @Test
  void whatWaitsForTheServerIsBounded() throws Exception {
    try (MessageInput in = new MessageInput()) {
      for (int i = 0; i < MessageInput.WAITING_LIMIT; i++) {
        assertThat(in.put("{}")).isTrue();
      }
      assertThat(in.put("{}")).isFalse();
      assertThat(in.readNBytes(23)).asString().isEqualTo("Content-Length: 2\r\n\r\n{}");
      assertThat(in.put("{}")).isTrue();
      in.end();
      assertThat(in.readAllBytes()).hasSize(23 * MessageInput.WAITING_LIMIT);
      assertThat(in.read()).isEqualTo(-1);
    }
  }

  @Test
  void aTextBeyondTheLimitIsNotSaved() throws Exception {
    Asked.Answer answer =
        Asked.of(door.address(), "PUT", "file?path=large.wall")
            .body(new byte[(int) Folder.SIZE_LIMIT + 1])
            .answer();
    assertThat(answer.status()).isEqualTo(413);
    assertThat(Files.exists(folder.resolve("large.wall"))).isFalse();
  }
}
