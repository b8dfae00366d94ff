package mullwright.server;

import java.lang.ref.WeakReference;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import mullwright.workspace.Reading;

/**
 * What the editor was told to show beside texts, such as hints and lenses. It asks again for those
 * of a text it edits; when an edit of another text makes them others, only the server knows.
 */
final class Beside {
  private final Map<Key, Told> told = new LinkedHashMap<>();

  private record Key(String what, String address) {}

  /**
   * @param reading what it was last held against
   * @param holds true if the same would be told of the document as it then stands
   */
  private record Told(WeakReference<Reading> reading, Predicate<Document> holds) {}

  /** The editor is told something of a document. */
  void told(String what, Document document, Predicate<Document> holds) {
    reading(document)
        .ifPresent(
            reading ->
                told.put(
                    new Key(what, document.address()),
                    new Told(new WeakReference<>(reading), holds)));
  }

  /** The editor no longer has that document open. */
  void close(String address) {
    told.keySet().removeIf(key -> key.address().equals(address));
  }

  /**
   * The kinds of what would now be told otherwise; each telling is named once.
   *
   * @param now the document of an address as it stands
   * @param which the documents that are looked at
   */
  Set<String> stale(Function<String, Optional<Document>> now, Predicate<String> which) {
    Set<String> stale = new TreeSet<>();
    for (Iterator<Map.Entry<Key, Told>> left = told.entrySet().iterator(); left.hasNext(); ) {
      Map.Entry<Key, Told> each = left.next();
      if (!which.test(each.getKey().address())) {
        continue;
      }
      Told was = each.getValue();
      Document document = now.apply(each.getKey().address()).orElse(null);
      Reading reading = document == null ? null : reading(document).orElse(null);
      if (reading == null || reading == was.reading().get()) {
        continue;
      }
      if (was.holds().test(document)) {
        each.setValue(new Told(new WeakReference<>(reading), was.holds()));
      } else {
        stale.add(each.getKey().what());
        left.remove();
      }
    }
    return stale;
  }

  private static Optional<Reading> reading(Document document) {
    return document.snapshot().reading(document.path());
  }
}
