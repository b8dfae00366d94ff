package mullwright.server;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.Map;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;

/** A client that can take all there is. */
final class AbleClient {
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();

  private static final String ALL =
      """
      {
        "textDocument": {
          "publishDiagnostics": {"relatedInformation": true, "versionSupport": true},
          "completion": {
            "completionItem": {
              "snippetSupport": true,
              "documentationFormat": ["markdown", "plaintext"],
              "insertReplaceSupport": true,
              "labelDetailsSupport": true,
              "resolveSupport": {"properties": ["documentation", "detail"]}
            },
            "completionList": {
              "itemDefaults": ["commitCharacters", "editRange", "insertTextFormat", "data"]
            },
            "contextSupport": true
          },
          "hover": {"contentFormat": ["markdown", "plaintext"]},
          "signatureHelp": {
            "signatureInformation": {
              "documentationFormat": ["markdown", "plaintext"],
              "parameterInformation": {"labelOffsetSupport": true},
              "activeParameterSupport": true,
              "noActiveParameterSupport": true
            },
            "contextSupport": true
          },
          "definition": {"linkSupport": true},
          "typeDefinition": {"linkSupport": true},
          "implementation": {"linkSupport": true},
          "references": {},
          "documentHighlight": {},
          "documentSymbol": {"hierarchicalDocumentSymbolSupport": true},
          "codeAction": {
            "codeActionLiteralSupport": {"codeActionKind": {"valueSet": ["", "quickfix", "refactor"]}},
            "isPreferredSupport": true,
            "dataSupport": true,
            "resolveSupport": {"properties": ["edit"]}
          },
          "codeLens": {"resolveSupport": {"properties": ["command"]}},
          "documentLink": {"tooltipSupport": true},
          "colorProvider": {},
          "rename": {"prepareSupport": true},
          "rangeFormatting": {"rangesSupport": true},
          "onTypeFormatting": {},
          "foldingRange": {
            "rangeLimit": 5000,
            "foldingRangeKind": {"valueSet": ["comment", "imports", "region"]},
            "foldingRange": {"collapsedText": true}
          },
          "selectionRange": {},
          "callHierarchy": {},
          "typeHierarchy": {},
          "semanticTokens": {
            "requests": {"range": true, "full": {"delta": true}},
            "tokenTypes": [], "tokenModifiers": [], "formats": ["relative"]
          },
          "inlayHint": {"resolveSupport": {"properties": ["tooltip"]}},
          "diagnostic": {"relatedDocumentSupport": true}
        },
        "workspace": {
          "applyEdit": true,
          "workspaceEdit": {"documentChanges": true},
          "symbol": {"resolveSupport": {"properties": ["location.range"]}},
          "executeCommand": {},
          "workspaceFolders": true,
          "configuration": true,
          "textDocumentContent": {},
          "fileOperations": {"willRename": true, "didRename": true},
          "diagnostics": {"refreshSupport": true},
          "inlayHint": {"refreshSupport": true},
          "codeLens": {"refreshSupport": true}
        },
        "window": {"showDocument": {"support": true}, "workDoneProgress": true}
      }
      """;

  private AbleClient() {}

  /** Its capabilities as they go over the wire. */
  static JsonObject json() {
    return JsonParser.parseString(ALL).getAsJsonObject();
  }

  /** Its capabilities. */
  static ClientCapabilities capabilities() {
    return capabilities(json());
  }

  /** Capabilities from what goes over the wire. */
  static ClientCapabilities capabilities(JsonObject json) {
    return GSON.fromJson(json, ClientCapabilities.class);
  }

  /** The same that pulls no diagnostics, for tests that wait for those that are pushed. */
  static ClientCapabilities pushed() {
    JsonObject json = json();
    json.getAsJsonObject("textDocument").remove("diagnostic");
    return capabilities(json);
  }
}
