package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.VirtualDocument;
import mullwright.server.schedule.ScheduleTexts;
import org.eclipse.lsp4j.TextDocumentContentParams;
import org.eclipse.lsp4j.TextDocumentContentResult;

/**
 * Hands out schedules of a file's walls as documents the server owns: lengths, glass order and the
 * like.
 *
 * <p>Answers {@code workspace/textDocumentContent} (LSP 3.18) for the scheme {@code mullwright}.
 * Whoever has asked for one is told to ask again when an edit made it another. Advertised to
 * clients with {@code workspace.textDocumentContent}; the commands {@code mullwright.show…} lead
 * there.
 */
@AutoService(Feature.class)
public final class TextDocumentContentFeature implements Feature {
  private final ScheduleTexts schedules = new ScheduleTexts();

  @Override
  public List<Route<?>> routes() {
    return List.of(
        new Route<>(
            "workspace/textDocumentContent",
            TextDocumentContentParams.class,
            (parameters, desk) -> content(Route.needed(parameters.getUri(), "uri"), desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    if (client.has("workspace.textDocumentContent")) {
      JsonArray schemes = new JsonArray();
      schemes.add(VirtualDocument.SCHEME);
      JsonObject options = new JsonObject();
      options.add("schemes", schemes);
      Client.workspaceOf(server).add("textDocumentContent", options);
    }
  }

  private Object content(String address, Desk desk) {
    Optional<VirtualDocument> virtual = VirtualDocument.at(address);
    if (virtual.isEmpty()) {
      return new TextDocumentContentResult("There is nothing at this address.\n");
    }
    Optional<Document> document = desk.document(virtual.get().of());
    if (document.isEmpty()) {
      return new TextDocumentContentResult("The wall file is gone.\n");
    }
    desk.shown(address, document.get());
    return schedules.apart(
        virtual.get().schedule(), document.get(), TextDocumentContentResult::new);
  }
}
