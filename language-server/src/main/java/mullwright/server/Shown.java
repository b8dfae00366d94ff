package mullwright.server;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import mullwright.workspace.Reading;

/**
 * The documents of the server's own that the editor has asked for, with the reading each was made
 * from. One that is not asked for again after it was told to be stale is shown no more.
 */
final class Shown {
  private static final int LIMIT = 32;

  private final Map<String, Entry> entries = new LinkedHashMap<>();

  /**
   * @param of the address of the wall file
   * @param reading what it was made from
   */
  private record Entry(String of, WeakReference<Reading> reading) {}

  void put(String address, Document document) {
    entries.remove(address);
    document
        .snapshot()
        .reading(document.path())
        .ifPresent(
            reading ->
                entries.put(address, new Entry(document.address(), new WeakReference<>(reading))));
    if (entries.size() > LIMIT) {
      entries.remove(entries.keySet().iterator().next());
    }
  }

  void remove(String address) {
    entries.remove(address);
  }

  /** Those made from texts that are no more; each is told once. */
  List<String> stale(Function<String, Optional<Document>> now) {
    List<String> stale = new ArrayList<>();
    for (Iterator<Map.Entry<String, Entry>> left = entries.entrySet().iterator();
        left.hasNext(); ) {
      Map.Entry<String, Entry> each = left.next();
      Reading reading =
          now.apply(each.getValue().of())
              .flatMap(document -> document.snapshot().reading(document.path()))
              .orElse(null);
      if (reading == null || reading != each.getValue().reading().get()) {
        stale.add(each.getKey());
        left.remove();
      }
    }
    return stale;
  }
}
