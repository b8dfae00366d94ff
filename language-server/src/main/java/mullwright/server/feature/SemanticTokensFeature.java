package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;

/**
 * Colours of the text by what each word is in its place.
 *
 * <p>Answers {@code textDocument/semanticTokens/full}, {@code …/full/delta} and {@code …/range}
 * (LSP 3.17). Read from the tokens alone: an edit elsewhere never changes them, so no refresh is
 * ever asked for. Remembers, as the protocol demands for deltas, what it answered last for each
 * document.
 */
@AutoService(Feature.class)
public final class SemanticTokensFeature implements Feature {
  private static final int REMEMBERED = 64;

  private final Map<String, SemanticTokens> last = new HashMap<>();
  private int answers;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/semanticTokens/full",
            SemanticTokensParams.class,
            SemanticTokensParams::getTextDocument,
            (parameters, document, desk) -> remembered(document, all(document, desk))),
        Route.ofDocument(
            "textDocument/semanticTokens/full/delta",
            SemanticTokensDeltaParams.class,
            SemanticTokensDeltaParams::getTextDocument,
            (parameters, document, desk) ->
                since(parameters.getPreviousResultId(), document, desk)),
        Route.ofDocument(
            "textDocument/semanticTokens/range",
            SemanticTokensRangeParams.class,
            SemanticTokensRangeParams::getTextDocument,
            (parameters, document, desk) ->
                new SemanticTokens(
                    TokenEncoder.encode(
                        document,
                        document.offset(Route.needed(parameters.getRange(), "range").getStart()),
                        document.offset(parameters.getRange().getEnd()),
                        desk.cancel()))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject full = new JsonObject();
    full.addProperty("delta", true);
    JsonObject options = new JsonObject();
    options.add("legend", TokenLegend.json());
    options.add("full", full);
    options.addProperty("range", true);
    server.add("semanticTokensProvider", options);
  }

  private static List<Integer> all(Document document, Desk desk) {
    return TokenEncoder.encode(document, 0, document.file().text().length(), desk.cancel());
  }

  private SemanticTokens remembered(Document document, List<Integer> data) {
    if (last.size() >= REMEMBERED && !last.containsKey(document.address())) {
      last.clear();
    }
    SemanticTokens tokens = new SemanticTokens(Integer.toString(++answers), data);
    last.put(document.address(), tokens);
    return tokens;
  }

  private Object since(String previous, Document document, Desk desk) {
    SemanticTokens before = last.get(document.address());
    SemanticTokens now = remembered(document, all(document, desk));
    if (before == null || !before.getResultId().equals(previous)) {
      return now;
    }
    return new SemanticTokensDelta(
        TokenDifference.of(before.getData(), now.getData()), now.getResultId());
  }
}
