package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.View;
import mullwright.workspace.Reading;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Finds things by name in all wall files: projects, walls, lines, floors, rows, openings, parts.
 *
 * <p>Answers {@code workspace/symbol} (LSP 3.17). A name is found if it holds the letters of the
 * question in their order, capital or small; those that fit best come first. What a symbol is made
 * from is read to find it, so nothing is left to resolve. Heeds {@code
 * workspace.symbol.symbolKind}.
 */
@AutoService(Feature.class)
public final class WorkspaceSymbolFeature implements Feature {
  /** More than anybody reads; an empty question would name every part of every catalog. */
  static final int LIMIT = 500;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        new Route<>(
            "workspace/symbol",
            WorkspaceSymbolParams.class,
            (parameters, desk) -> found(Route.needed(parameters.getQuery(), "query"), desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject options = new JsonObject();
    options.addProperty("workDoneProgress", true);
    server.add("workspaceSymbolProvider", options);
  }

  static List<WorkspaceSymbol> found(String question, Desk desk) {
    List<WorkspaceSymbol> found = new ArrayList<>();
    KnownKinds kinds = KnownKinds.of(desk.client(), "workspace.symbol.symbolKind.valueSet");
    for (View view : desk.views()) {
      for (String path : view.snapshot().walls()) {
        desk.cancel().check();
        view.snapshot()
            .reading(path)
            .ifPresent(reading -> collect(question, reading, view, kinds, found));
      }
    }
    // stable: equally good ones stay in the order of paths and text
    found.sort(Comparator.comparingInt(symbol -> fit(symbol.getName(), question)));
    return found.size() > LIMIT ? List.copyOf(found.subList(0, LIMIT)) : found;
  }

  /** How well a name fits: 0 is the very name, then it begins so, holds it, holds its letters. */
  private static int fit(String name, String question) {
    String in = name.toLowerCase(Locale.ROOT);
    String what = question.toLowerCase(Locale.ROOT);
    return in.equals(what) ? 0 : in.startsWith(what) ? 1 : in.contains(what) ? 2 : 3;
  }

  private static void collect(
      String question, Reading reading, View view, KnownKinds kinds, List<WorkspaceSymbol> found) {
    for (Reference reference : reading.model().references()) {
      Symbol symbol = reference.symbol();
      if (reference.definition()
          && reference.origin().file().equals(reading.path())
          && holds(symbol.name(), question)) {
        view.location(reference.origin())
            .ifPresent(
                location ->
                    found.add(
                        new WorkspaceSymbol(
                            symbol.name(),
                            kinds.symbol(kind(symbol.kind())),
                            Either.forLeft(location),
                            symbol.scope().isEmpty() ? null : "wall " + symbol.scope())));
      }
    }
  }

  /** Whether the letters of the question stand in the name in their order. */
  static boolean holds(String name, String question) {
    String in = name.toLowerCase(Locale.ROOT);
    int at = 0;
    for (char c : question.toLowerCase(Locale.ROOT).toCharArray()) {
      at = in.indexOf(c, at) + 1;
      if (at == 0) {
        return false;
      }
    }
    return true;
  }

  private static SymbolKind kind(Symbol.Kind kind) {
    return switch (kind) {
      case PROJECT -> SymbolKind.Module;
      case WALL -> SymbolKind.Class;
      case PART -> SymbolKind.Struct;
      case LET -> SymbolKind.Constant;
      case OPENING -> SymbolKind.Object;
      case FACE, LINE, FLOOR, ROW -> SymbolKind.Field;
    };
  }
}
