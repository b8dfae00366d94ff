package mullwright.server;

import com.google.gson.JsonObject;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * Whether an edit that came after a question makes its answer worthless.
 *
 * <p>What an editor asks for by itself after every edit it asks for again after the next (LSP 3.17,
 * "Implementation Considerations"); what a person asked for is answered whatever he types then.
 */
enum Lapse {
  /** It is answered in any case. */
  NEVER {
    @Override
    ResponseErrorException refusal() {
      return new ResponseErrorException(
          new ResponseError(ResponseErrorCode.RequestCancelled, "Taken back.", null));
    }
  },

  /** It is refused as modified. */
  MODIFIED {
    @Override
    ResponseErrorException refusal() {
      return new ResponseErrorException(
          new ResponseError(ResponseErrorCode.ContentModified, "The text has moved on.", null));
    }
  },

  /** It is refused with the wish to be asked again, as the protocol has it for diagnostics. */
  ASK_AGAIN {
    @Override
    ResponseErrorException refusal() {
      JsonObject again = new JsonObject();
      again.addProperty("retriggerRequest", true);
      return new ResponseErrorException(
          new ResponseError(ResponseErrorCode.ServerCancelled, "The text has moved on.", again));
    }
  };

  /** What an edit does to a question by that method. */
  static Lapse of(String method) {
    return switch (method) {
      case "textDocument/diagnostic" -> ASK_AGAIN;
      case "textDocument/inlayHint",
          "textDocument/codeLens",
          "textDocument/documentLink",
          "textDocument/documentColor",
          "textDocument/documentSymbol",
          "textDocument/foldingRange",
          "textDocument/semanticTokens/full",
          "textDocument/semanticTokens/full/delta",
          "textDocument/semanticTokens/range" ->
          MODIFIED;
      default -> NEVER;
    };
  }

  abstract ResponseErrorException refusal();
}
