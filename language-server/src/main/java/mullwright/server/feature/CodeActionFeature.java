package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Fields;
import mullwright.server.Route;
import mullwright.server.action.Action;
import mullwright.server.action.ActionSource;
import mullwright.server.action.Selected;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionDisabled;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeActionTriggerKind;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;

/**
 * Offers to mend what is found at a place, and to write it in another way.
 *
 * <p>Answers {@code textDocument/codeAction} and {@code codeAction/resolve} (LSP 3.17). Heeds
 * {@code textDocument.codeAction.codeActionLiteralSupport}, without which nothing is offered but
 * commands, and its {@code resolveSupport}, {@code dataSupport}, {@code isPreferredSupport} and
 * {@code disabledSupport}. What is offered comes from the {@link ActionSource}s, made at the first
 * question; what concerns a whole file is offered only to who asks by hand or for its kind,
 * refactorings only to clients that resolve {@code edit}.
 */
@AutoService(Feature.class)
public final class CodeActionFeature implements Feature {
  private static final String CAN = "textDocument.codeAction.";
  private static final String LITERALS = CAN + "codeActionLiteralSupport";
  private static final List<String> KINDS =
      List.of(
          CodeActionKind.QuickFix,
          CodeActionKind.RefactorExtract,
          CodeActionKind.RefactorRewrite,
          "refactor.move",
          CodeActionKind.SourceFixAll,
          "source.format",
          "show");

  private List<ActionSource> sources;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/codeAction",
            CodeActionParams.class,
            CodeActionParams::getTextDocument,
            (parameters, document, desk) -> {
              Range range = Route.needed(parameters.getRange(), "range");
              List<CodeAction> offers = offers(document, range, parameters.getContext(), desk);
              return desk.client().has(LITERALS) ? offers : commands(offers);
            }),
        new Route<>("codeAction/resolve", CodeAction.class, this::resolved));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    if (!client.has(LITERALS)) {
      server.addProperty("codeActionProvider", true);
      return;
    }
    JsonArray kinds = new JsonArray();
    KINDS.forEach(kinds::add);
    JsonObject options = new JsonObject();
    options.add("codeActionKinds", kinds);
    options.addProperty("resolveProvider", true);
    server.add("codeActionProvider", options);
  }

  private static List<Command> commands(List<CodeAction> offers) {
    return offers.stream().map(CodeAction::getCommand).toList();
  }

  private List<ActionSource> sources() {
    if (sources == null) {
      List<ActionSource> found = new ArrayList<>();
      ServiceLoader.load(ActionSource.class, ActionSource.class.getClassLoader())
          .forEach(found::add);
      // mends first, then as the kinds stand
      found.sort(
          Comparator.comparingInt((ActionSource source) -> KINDS.indexOf(source.kind()))
              .thenComparing(source -> source.getClass().getName()));
      sources = List.copyOf(found);
    }
    return sources;
  }

  private List<CodeAction> offers(
      Document document, Range range, CodeActionContext context, Desk desk) {
    List<CodeAction> actions = new ArrayList<>();
    Selected selected =
        new Selected(
            document, document.offset(range.getStart()), document.offset(range.getEnd()), desk);
    for (ActionSource source : sources()) {
      desk.cancel().check();
      if (wants(source.kind(), context)) {
        for (Action action : source.offers(selected)) {
          told(action, source, selected).ifPresent(actions::add);
        }
      }
    }
    return actions;
  }

  private static boolean wants(String kind, CodeActionContext context) {
    List<String> only = context == null ? null : context.getOnly();
    if (only != null && !only.isEmpty()) {
      return only.stream()
          .anyMatch(
              wanted ->
                  Route.needed(wanted, "context.only").isEmpty()
                      || kind.equals(wanted)
                      || kind.startsWith(wanted + "."));
    }
    boolean byHand = context != null && context.getTriggerKind() == CodeActionTriggerKind.Invoked;
    return byHand || !kind.startsWith(CodeActionKind.Source);
  }

  private static Optional<CodeAction> told(Action action, ActionSource source, Selected selected) {
    Client client = selected.desk().client();
    CodeAction told = new CodeAction(action.title());
    told.setKind(source.kind());
    if (action.command().isPresent()) {
      told.setCommand(action.command().get());
      return Optional.of(told);
    }
    if (!client.has(LITERALS)) {
      // such a client can be given nothing but commands
      return Optional.empty();
    }
    if (!action.refusal().isEmpty()) {
      if (!client.can(CAN + "disabledSupport")) {
        return Optional.empty();
      }
      told.setDisabled(new CodeActionDisabled(action.refusal()));
      return Optional.of(told);
    }
    if (!action.mended().isEmpty()) {
      told.setDiagnostics(action.mended());
    }
    if (action.preferred() && client.can(CAN + "isPreferredSupport")) {
      told.setIsPreferred(true);
    }
    boolean later =
        client.can(CAN + "dataSupport")
            && client.words(CAN + "resolveSupport.properties").contains("edit");
    if (later) {
      told.setData(data(source, selected));
    } else if (source.kind().startsWith(CodeActionKind.Refactor)) {
      // to work out all of them whenever the cursor rests is too much to ask
      return Optional.empty();
    } else {
      told.setEdit(action.change().get().toWorkspaceEdit(client));
    }
    return Optional.of(told);
  }

  private static JsonObject data(ActionSource source, Selected selected) {
    JsonObject data = new JsonObject();
    data.addProperty("source", source.getClass().getSimpleName());
    data.addProperty("uri", selected.document().address());
    data.addProperty("start", selected.start());
    data.addProperty("end", selected.end());
    if (selected.document().version() != null) {
      data.addProperty("version", selected.document().version());
    }
    return data;
  }

  /** The same offer made again, now with its edit; one that is no longer made stays as it is. */
  private CodeAction resolved(CodeAction action, Desk desk) {
    Fields data = Fields.of(action.getData()).orElse(null);
    Optional<String> by = data == null ? Optional.empty() : data.text("source");
    Optional<String> address = data == null ? Optional.empty() : data.text("uri");
    Optional<Integer> start = data == null ? Optional.empty() : data.number("start");
    Optional<Integer> end = data == null ? Optional.empty() : data.number("end");
    if (by.isEmpty() || address.isEmpty() || start.isEmpty() || end.isEmpty()) {
      return action;
    }
    Document document = desk.document(address.get()).orElseThrow(Route::modified);
    Optional<Integer> version = data.number("version");
    if (version.isPresent() && !version.get().equals(document.version())) {
      throw Route.modified();
    }
    Selected selected = new Selected(document, start.get(), end.get(), desk);
    for (ActionSource source : sources()) {
      if (source.getClass().getSimpleName().equals(by.get())) {
        for (Action offer : source.offers(selected)) {
          if (offer.title().equals(action.getTitle()) && offer.refusal().isEmpty()) {
            action.setEdit(offer.change().get().toWorkspaceEdit(desk.client()));
          }
        }
      }
    }
    return action;
  }
}
