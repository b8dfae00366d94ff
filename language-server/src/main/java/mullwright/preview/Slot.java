package mullwright.preview;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A place of the page and the parts that stand in it, in order.
 *
 * @param name of the element that holds them
 * @param parts markup by a key that stays the same while the part stays the same thing
 */
record Slot(String name, Map<String, String> parts) {
  Slot(String name) {
    this(name, new LinkedHashMap<>());
  }

  void put(String key, String markup) {
    parts.put(key, markup);
  }

  /** A slot with one part. */
  static Slot of(String name, String markup) {
    Slot slot = new Slot(name);
    if (!markup.isEmpty()) {
      slot.put(name, markup);
    }
    return slot;
  }

  /**
   * Writes what differs from what stands there: parts that are new or other, and the order, if that
   * is another. Nothing if nothing differs.
   *
   * @param shown what stands there; null if that is not known, then all is written
   * @return true if anything was written
   */
  boolean writeChanges(Slot shown, JsonWriter out) throws IOException {
    Slot was = shown == null ? new Slot(name) : shown;
    List<String> changed = new ArrayList<>();
    parts.forEach(
        (key, markup) -> {
          if (!markup.equals(was.parts.get(key))) {
            changed.add(key);
          }
        });
    boolean ordered =
        shown != null
            && parts.size() == was.parts.size()
            && new ArrayList<>(parts.keySet()).equals(new ArrayList<>(was.parts.keySet()));
    if (changed.isEmpty() && ordered) {
      return false;
    }
    out.beginObject().name("slot").value(name).name("set").beginObject();
    for (String key : changed) {
      out.name(key).value(parts.get(key));
    }
    out.endObject();
    if (!ordered) {
      out.name("order").beginArray();
      for (String key : parts.keySet()) {
        out.value(key);
      }
      out.endArray();
    }
    out.endObject();
    return true;
  }
}
