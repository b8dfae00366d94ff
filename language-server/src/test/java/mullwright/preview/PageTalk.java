package mullwright.preview;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** A page as the server sees it: speaks HTTP over a bare socket, so that any header can be told. */
public final class PageTalk implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 30;

  private final URI address;
  private final Map<String, Map<String, String>> shown = new LinkedHashMap<>();
  private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
  private final Semaphore mayRead = new Semaphore(1);
  private Socket listening;
  private String page = "";

  /** An event of the server. */
  public record Event(String name, JsonElement data) {}

  /**
   * What the server answered.
   *
   * @param headers by lower-case name
   */
  public record Answer(int status, Map<String, String> headers, String body) {}

  public PageTalk(String address) {
    this.address = URI.create(address);
  }

  /** {@code 127.0.0.1:port}. */
  public String host() {
    return address.getHost() + ":" + address.getPort();
  }

  /** Asks for something below the page, as its own script does. */
  public Answer get(String path) {
    return ask("GET", address.getRawPath() + path, Map.of("Host", host()));
  }

  /** Tells the server something, as the page's own script does. */
  public Answer post(String path) {
    return ask(
        "POST",
        address.getRawPath() + path,
        Map.of("Host", host(), "Origin", "http://" + host(), "Content-Length", "0"));
  }

  /** Asks for anything in any words. */
  public Answer ask(String method, String target, Map<String, String> headers) {
    try (Socket socket = socket()) {
      send(socket, method, target, headers);
      BufferedReader in = reader(socket);
      int status = Integer.parseInt(in.readLine().split(" ")[1]);
      Map<String, String> told = headers(in);
      StringBuilder body = new StringBuilder();
      for (int c = in.read(); c >= 0; c = in.read()) {
        body.append((char) c);
      }
      return new Answer(status, told, body.toString());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private Socket socket() throws IOException {
    Socket socket = new Socket(InetAddress.getByName(address.getHost()), address.getPort());
    socket.setSoTimeout((int) TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    return socket;
  }

  private static void send(Socket socket, String method, String target, Map<String, String> headers)
      throws IOException {
    StringBuilder request = new StringBuilder(method + " " + target + " HTTP/1.1\r\n");
    headers.forEach((name, value) -> request.append(name + ": " + value + "\r\n"));
    request.append("Connection: close\r\n\r\n");
    socket.getOutputStream().write(request.toString().getBytes(StandardCharsets.UTF_8));
    socket.getOutputStream().flush();
  }

  private static BufferedReader reader(Socket socket) throws IOException {
    return new BufferedReader(
        new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
  }

  private static Map<String, String> headers(BufferedReader in) throws IOException {
    Map<String, String> headers = new LinkedHashMap<>();
    for (String line = in.readLine(); line != null && !line.isEmpty(); line = in.readLine()) {
      int colon = line.indexOf(':');
      headers.put(line.substring(0, colon).toLowerCase(), line.substring(colon + 1).strip());
    }
    return headers;
  }

  /** Begins to listen; the answer's status. */
  public int listen() {
    try {
      listening = socket();
      send(listening, "GET", address.getRawPath() + "events", Map.of("Host", host()));
      BufferedReader in = reader(listening);
      int status = Integer.parseInt(in.readLine().split(" ")[1]);
      headers(in);
      if (status == 200) {
        Thread reading = new Thread(() -> read(in), "page");
        reading.setDaemon(true);
        reading.start();
        page = next("hello").getAsJsonObject().get("page").getAsString();
      }
      return status;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private void read(BufferedReader in) {
    try {
      String name = "";
      // lengths of chunks stand between the lines; they are none that an event has
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        mayRead.acquireUninterruptibly();
        mayRead.release();
        if (line.startsWith("event: ")) {
          name = line.substring(7);
        } else if (line.startsWith("data: ")) {
          StringBuilder data = new StringBuilder(line.substring(6));
          // an event's data is one line; what follows its chunk's end belongs to it
          while (!whole(data)) {
            in.readLine();
            data.append(in.readLine());
          }
          events.add(new Event(name, JsonParser.parseString(data.toString())));
        }
      }
    } catch (IOException gone) {
      events.add(new Event("gone", new JsonObject()));
    }
  }

  private static boolean whole(CharSequence data) {
    try {
      JsonParser.parseString(data.toString());
      return true;
    } catch (com.google.gson.JsonSyntaxException cut) {
      return false;
    }
  }

  /** Reads nothing from now on. */
  public void pause() {
    mayRead.acquireUninterruptibly();
  }

  /** Reads on. */
  public void resume() {
    mayRead.release();
  }

  /** The data of the next event of that name. */
  public JsonElement next(String name) {
    try {
      while (true) {
        Event event = events.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (event == null) {
          throw new AssertionError("no “" + name + "” came; shown are " + shown.keySet());
        }
        if (event.name.equals("parts")) {
          event.data.getAsJsonArray().forEach(change -> apply(change.getAsJsonObject()));
        }
        if (event.name.equals(name)) {
          return event.data;
        }
      }
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  private void apply(JsonObject change) {
    Map<String, String> parts =
        shown.computeIfAbsent(change.get("slot").getAsString(), any -> new LinkedHashMap<>());
    change
        .getAsJsonObject("set")
        .entrySet()
        .forEach(part -> parts.put(part.getKey(), part.getValue().getAsString()));
    if (change.has("order")) {
      Map<String, String> ordered = new LinkedHashMap<>();
      change
          .getAsJsonArray("order")
          .forEach(key -> ordered.put(key.getAsString(), parts.get(key.getAsString())));
      parts.clear();
      parts.putAll(ordered);
    }
  }

  /** Waits until a place of the page says something of what is wanted, and answers it all. */
  public String wait(String slot, String words) {
    while (!text(slot).contains(words)) {
      next("parts");
    }
    return text(slot);
  }

  /** The keys of the parts of a place that the next message about it puts anew. */
  public List<String> nextChanged(String slot) {
    while (true) {
      JsonArray changes = next("parts").getAsJsonArray();
      for (JsonElement change : changes) {
        if (change.getAsJsonObject().get("slot").getAsString().equals(slot)) {
          return new ArrayList<>(change.getAsJsonObject().getAsJsonObject("set").keySet());
        }
      }
    }
  }

  /** What stands in a place of the page. */
  public String text(String slot) {
    return String.join("\n", shown.getOrDefault(slot, Map.of()).values());
  }

  /** Every part of a place. */
  public Map<String, String> parts(String slot) {
    return Map.copyOf(shown.getOrDefault(slot, Map.of()));
  }

  /** Tells the server what the page wants to see. */
  public Answer look(String wishes) {
    return post("look?page=" + page + (wishes.isEmpty() ? "" : "&" + wishes));
  }

  /** A value for an address. */
  public static String coded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    try {
      if (listening != null) {
        listening.close();
      }
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }
}
