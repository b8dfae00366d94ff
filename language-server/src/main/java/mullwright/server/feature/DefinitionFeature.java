package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.Origin;
import mullwright.model.Reference;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;
import mullwright.workspace.Leaf;
import mullwright.workspace.UsedFile;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * Goes from a name to where it is given, also into the files that are used, and from a path to its
 * file.
 *
 * <p>Answers {@code textDocument/definition} (LSP 3.17). Heeds {@code
 * textDocument.definition.linkSupport}. A name that a pattern made ({@code L7} of {@code L1..L24})
 * leads to the pattern.
 */
@AutoService(Feature.class)
public final class DefinitionFeature implements Feature {
  private static final Range TOP = new Range(new Position(0, 0), new Position(0, 0));

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/definition",
            DefinitionParams.class,
            (parameters, document, offset, desk) -> {
              List<LocationLink> links = links(document, offset);
              return Links.told(links, desk.client().can("textDocument.definition.linkSupport"));
            }));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("definitionProvider", true);
  }

  static List<LocationLink> links(Document document, int offset) {
    Cursor cursor = document.cursor(offset);
    List<LocationLink> links = new ArrayList<>();
    Set<Origin> led = new LinkedHashSet<>();
    for (Reference reference : cursor.references()) {
      Origin target = reference.symbol().definition();
      if (led.add(target)) {
        Links.to(document, document.range(reference.origin()).orElseThrow(), target)
            .ifPresent(links::add);
      }
    }
    if (links.isEmpty()) {
      toFile(document, cursor).ifPresent(links::add);
    }
    return links;
  }

  private static Optional<LocationLink> toFile(Document document, Cursor cursor) {
    boolean path = cursor.statement().filter(s -> s.kind() == StatementKind.USE).isPresent();
    if (!path || !(cursor.leaf().orElse(null) instanceof Leaf.Text text)) {
      return Optional.empty();
    }
    TextRange written = text.string().range();
    return UsedFile.resolve(document.path(), text.string().text())
        .flatMap(document.view()::document)
        .map(
            file ->
                new LocationLink(
                    file.address(), TOP, TOP, document.range(cursor.segment(), written)));
  }
}
