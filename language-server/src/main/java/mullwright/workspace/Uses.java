package mullwright.workspace;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.syntax.ParsedFile;

/** Finds every place that names a thing, in all wall files of a workspace. */
public final class Uses {
  private Uses() {}

  /**
   * The places that name one of the symbols, definitions among them, in the order of paths and
   * text, each once.
   */
  public static List<Reference> of(Set<Symbol> symbols, Snapshot snapshot, Cancel cancel) {
    Set<Reference> found = new LinkedHashSet<>();
    for (String path : snapshot.walls()) {
      cancel.check();
      if (mayName(symbols, path, snapshot)) {
        for (Reference reference : references(path, snapshot)) {
          if (symbols.contains(reference.symbol())) {
            found.add(reference);
          }
        }
      }
    }
    List<Reference> ordered = new ArrayList<>(found);
    ordered.sort((one, other) -> TextOrder.OF_ORIGINS.compare(one.origin(), other.origin()));
    return List.copyOf(ordered);
  }

  private static List<Reference> references(String path, Snapshot snapshot) {
    return snapshot.reading(path).map(reading -> reading.model().references()).orElse(List.of());
  }

  /** Reading a file is work, looking for a word is not. */
  private static boolean mayName(Set<Symbol> symbols, String path, Snapshot snapshot) {
    ParsedFile file = snapshot.file(path).orElse(null);
    if (file == null) {
      return false;
    }
    for (Symbol symbol : symbols) {
      boolean inside = symbol.scope().isEmpty() || symbol.definition().file().equals(path);
      String last = symbol.name().substring(symbol.name().lastIndexOf('.') + 1);
      if (symbol.definition().file().equals(path) || (inside && file.text().contains(last))) {
        return true;
      }
    }
    return false;
  }
}
