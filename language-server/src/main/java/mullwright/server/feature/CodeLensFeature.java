package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.check.WallFacts;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Fields;
import mullwright.server.Route;
import mullwright.server.Settings;
import mullwright.server.piece.LoadSummary;
import mullwright.syntax.LineTable;
import mullwright.workspace.Reading;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * Tells above each statement of members, anchors and lites what its pieces carry: how many lites,
 * their mass, the greatest reactions.
 *
 * <p>Answers {@code textDocument/codeLens} from the tree alone and {@code codeLens/resolve} with
 * the numbers (LSP 3.17). A lens that is clicked runs {@code mullwright.loads}, which any editor
 * can run by itself, without arguments too; it is offered as a code action as well.
 */
@AutoService(Feature.class)
public final class CodeLensFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/codeLens",
            CodeLensParams.class,
            CodeLensParams::getTextDocument,
            (parameters, document, desk) -> {
              List<CodeLens> lenses = lenses(document, desk);
              Optional<Reading> told = reading(document);
              desk.beside(
                  "codeLens",
                  document,
                  now ->
                      figures(reading(now)).equals(figures(told))
                          && lenses(now, desk).equals(lenses));
              return lenses;
            }),
        new Route<>("codeLens/resolve", CodeLens.class, CodeLensFeature::resolved));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject options = new JsonObject();
    options.addProperty("resolveProvider", true);
    server.add("codeLensProvider", options);
  }

  private static Optional<Reading> reading(Document document) {
    return document.snapshot().reading(document.path());
  }

  /** What the words of all lenses follow from: walls that stay what they are keep theirs. */
  private static Object figures(Optional<Reading> reading) {
    return reading
        .map(of -> of.walls().stream().map(WallFacts::analysis).toList())
        .orElse(List.of());
  }

  static List<CodeLens> lenses(Document document, Desk desk) {
    List<CodeLens> lenses = new ArrayList<>();
    if (!desk.settings(document).on(Settings.LENS)) {
      return lenses;
    }
    LineTable lines = document.file().lines();
    for (int place : LoadSummary.places(document, desk.cancel())) {
      JsonObject data = new JsonObject();
      data.addProperty("file", document.address());
      Range line = document.range(place, lines.end(lines.line(place)));
      lenses.add(new CodeLens(line, null, data));
    }
    return lenses;
  }

  /** The lens with its words; one whose statement is gone says so. */
  static CodeLens resolved(CodeLens lens, Desk desk) {
    Position at = Route.needed(lens.getRange(), "range").getStart();
    Optional<LoadSummary> summary =
        file(lens.getData())
            .flatMap(desk::document)
            .flatMap(document -> LoadSummary.at(document, document.offset(at)));
    Command command =
        new Command(
            summary.map(LoadSummary::line).orElse("stands for nothing"), LoadSummary.COMMAND);
    command.setTooltip(summary.map(LoadSummary::caution).orElse(null));
    file(lens.getData()).ifPresent(file -> command.setArguments(List.of(file, at)));
    lens.setCommand(command);
    return lens;
  }

  private static Optional<String> file(Object data) {
    return Fields.of(data).flatMap(fields -> fields.text("file"));
  }
}
