package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.completion.Signatures;
import mullwright.server.hover.Forms;
import mullwright.server.hover.Words;
import org.eclipse.lsp4j.ParameterInformation;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.eclipse.lsp4j.SignatureInformation;
import org.eclipse.lsp4j.jsonrpc.messages.Tuple;

/**
 * Tells while a statement is written what it takes, and which clause is being written or comes
 * next; of a property, each way to write it.
 *
 * <p>Answers {@code textDocument/signatureHelp} (LSP 3.17). Heeds {@code
 * textDocument.signatureHelp.signatureInformation.parameterInformation.labelOffsetSupport}: without
 * it a part is told by its text. Where all clauses are there none is active.
 */
@AutoService(Feature.class)
public final class SignatureHelpFeature implements Feature {
  private static final String OFFSETS =
      "textDocument.signatureHelp.signatureInformation.parameterInformation.labelOffsetSupport";

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/signatureHelp",
            SignatureHelpParams.class,
            (parameters, document, offset, desk) -> help(document, offset, desk.client())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject options = new JsonObject();
    options.add("triggerCharacters", characters(" "));
    options.add("retriggerCharacters", characters(" ", ","));
    server.add("signatureHelpProvider", options);
  }

  private static JsonArray characters(String... all) {
    JsonArray array = new JsonArray();
    for (String each : all) {
      array.add(each);
    }
    return array;
  }

  static SignatureHelp help(Document document, int offset, Client client) {
    Optional<Signatures> found = Signatures.at(document.cursor(offset));
    if (found.isEmpty()) {
      return null;
    }
    List<SignatureInformation> all = new ArrayList<>();
    for (Signatures.Signature signature : found.get().all()) {
      all.add(information(signature, client.can(OFFSETS)));
    }
    int active = found.get().active();
    SignatureHelp help = new SignatureHelp();
    help.setSignatures(all);
    help.setActiveSignature(active);
    // one beyond the last is none: null would have to be agreed on, and means the first without
    Signatures.Signature now = found.get().all().get(active);
    help.setActiveParameter(now.due().orElse(now.parts().size()));
    return help;
  }

  private static SignatureInformation information(Signatures.Signature signature, boolean offsets) {
    SignatureInformation information = new SignatureInformation(signature.label());
    information.setDocumentation(Words.sentence(signature.meaning()));
    List<ParameterInformation> parameters = new ArrayList<>();
    for (int i = 0; i < signature.parts().size(); i++) {
      Forms.Slot part = signature.parts().get(i);
      ParameterInformation parameter = new ParameterInformation();
      if (offsets) {
        int start = signature.start(i);
        parameter.setLabel(Tuple.two(start, start + part.text().length()));
      } else {
        parameter.setLabel(part.text());
      }
      // editors show both, one below the other: the same sentence is not said twice
      if (!part.meaning().equals(signature.meaning())) {
        parameter.setDocumentation(Words.sentence(part.meaning()));
      }
      parameters.add(parameter);
    }
    information.setParameters(parameters);
    return information;
  }
}
