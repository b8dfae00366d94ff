package mullwright.preview;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One page that listens: remembers what it shows and is sent what differs.
 *
 * <p>Its thread draws for it. A page that does not read keeps its own thread waiting and nobody
 * else; what it is sent next is the newest state.
 */
final class Listener {
  /** An idle line is spoken into so often, so that one nobody holds is noticed. */
  private static final long HEARTBEAT_MILLIS = 10_000;

  private final String name;
  private final Stage stage;
  private final Painter painter;
  private final OutputStream out;
  private final Map<String, Slot> shown = new HashMap<>();
  private final Map<String, String> faults = new TreeMap<>();
  private volatile Look look;

  /**
   * @param name by which the page tells what it wants to see
   */
  Listener(String name, Look look, Stage stage, Painter painter, OutputStream out) {
    this.name = name;
    this.look = look;
    this.stage = stage;
    this.painter = painter;
    this.out = out;
  }

  String name() {
    return name;
  }

  /** The page wants to see something else. */
  void look(Look other) {
    look = other;
    stage.nudge();
  }

  /**
   * Sends until the page goes away or all is over.
   *
   * @throws IOException when the page is gone
   */
  void run() throws IOException, InterruptedException {
    send("hello", "{\"page\":\"" + name + "\"}");
    long seen = -1;
    Look drawn = null;
    while (true) {
      Stage.Now now = stage.await(drawn == look ? seen : Long.MIN_VALUE, HEARTBEAT_MILLIS);
      Look wanted = look;
      if (now.serial() == seen && wanted == drawn) {
        write(": still here\n\n");
        continue;
      }
      seen = now.serial();
      drawn = wanted;
      // what the eye waits for goes first, and of a newer state before the rest of this one
      for (Painter.Step step : painter.steps()) {
        if (stage.now().over() || step != painter.steps().get(0) && isOld(now, wanted)) {
          break;
        }
        draw(step, now, wanted);
      }
      if (stage.now().over()) {
        send("over", "{}");
        return;
      }
    }
  }

  /** A fault costs what that step draws, and is told on the page; all else goes on. */
  private void draw(Painter.Step step, Stage.Now now, Look wanted) throws IOException {
    List<Slot> slots = List.of();
    try {
      slots = step.paint(now, wanted);
      faults.remove(step.what());
    } catch (RuntimeException | StackOverflowError fault) {
      faults.put(step.what(), fault.toString());
    }
    send(slots);
    send(List.of(told()));
  }

  private Slot told() {
    StringBuilder words = new StringBuilder();
    faults.forEach(
        (what, fault) ->
            words
                .append("A fault of this program keeps ")
                .append(what)
                .append(" from being drawn; what is shown of it is of an earlier text. Please")
                .append(" report it with this text: ")
                .append(fault)
                .append(". "));
    return Slot.of("fault", Markup.escaped(words.toString().strip()));
  }

  private boolean isOld(Stage.Now now, Look wanted) {
    return stage.now().serial() != now.serial() || look != wanted;
  }

  private void send(List<Slot> slots) throws IOException {
    StringWriter text = new StringWriter();
    boolean any = false;
    try (JsonWriter json = new JsonWriter(text)) {
      json.beginArray();
      for (Slot slot : slots) {
        Slot was = shown.get(slot.name());
        // the same object stands for something that was not drawn anew
        any |= was != slot && slot.writeChanges(was, json);
        shown.put(slot.name(), slot);
      }
      json.endArray();
    }
    if (any) {
      send("parts", text.toString());
    }
  }

  private void send(String event, String data) throws IOException {
    // JSON holds no line break, so that one line is enough
    write("event: " + event + "\ndata: " + data + "\n\n");
  }

  private void write(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.flush();
  }
}
