// The talk with the server about texts: begins it, keeps the server's texts in step with the editor's.
import { Wire } from "./wire.js";

const CAPABILITIES = {
  general: { positionEncodings: ["utf-16"] },
  window: { showDocument: { support: true }, workDoneProgress: true },
  workspace: {
    applyEdit: true,
    workspaceEdit: { documentChanges: true },
    inlayHint: { refreshSupport: true },
    semanticTokens: { refreshSupport: true },
    codeLens: { refreshSupport: true },
  },
  textDocument: {
    synchronization: { didSave: true },
    publishDiagnostics: {
      relatedInformation: true,
      versionSupport: true,
      codeDescriptionSupport: true,
      dataSupport: true,
      tagSupport: { valueSet: [1, 2] },
    },
    hover: { contentFormat: ["markdown", "plaintext"] },
    completion: {
      completionItem: {
        snippetSupport: true,
        documentationFormat: ["markdown", "plaintext"],
        resolveSupport: { properties: ["documentation", "detail", "additionalTextEdits"] },
      },
    },
    codeAction: {
      codeActionLiteralSupport: { codeActionKind: { valueSet: ["", "quickfix", "refactor", "source"] } },
      isPreferredSupport: true,
      dataSupport: true,
      resolveSupport: { properties: ["edit"] },
    },
    codeLens: {},
    inlayHint: { resolveSupport: { properties: ["tooltip", "label.tooltip", "label.location"] } },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    rename: { prepareSupport: true },
    semanticTokens: {
      requests: { full: { delta: true } },
      tokenTypes: [],
      tokenModifiers: [],
      formats: ["relative"],
    },
    formatting: {},
    rangeFormatting: {},
    onTypeFormatting: {},
    definition: {},
    typeDefinition: {},
    implementation: {},
    references: {},
    documentHighlight: {},
    documentLink: {},
    foldingRange: {},
    selectionRange: {},
  },
};

export class Session {
  #settings;
  #open = new Map();
  wire;
  capabilities = {};

  constructor(settings) {
    this.#settings = settings;
  }

  /**
   * Begins, or begins anew with all texts that are open. Until the server has answered, nothing is
   * told or asked of it: what is typed meanwhile is in the texts it is given then.
   */
  async begin(listen) {
    const wire = new Wire(this.#settings.talk);
    listen(wire);
    await wire.open();
    const { root, folder } = this.#settings;
    const begun = await wire.ask("initialize", {
      processId: null,
      clientInfo: { name: "mullwright web" },
      rootUri: root,
      workspaceFolders: [{ uri: root, name: folder }],
      capabilities: CAPABILITIES,
    });
    if (wire.over !== undefined) {
      throw new Error(wire.over || "The server ended before it answered.");
    }
    this.wire = wire;
    this.capabilities = begun.capabilities;
    wire.tell("initialized", {});
    for (const { model } of this.#open.values()) {
      this.#tellOpen(model);
    }
  }

  /** Keeps the server's text in step with that model until it is closed. */
  open(model) {
    const changes = model.onDidChangeContent((event) =>
      this.wire.tell("textDocument/didChange", {
        textDocument: { uri: model.uri.toString(), version: model.getVersionId() },
        contentChanges: event.isFlush
          ? [{ text: model.getValue() }]
          : event.changes.map(({ range, text }) => ({
              range: {
                start: { line: range.startLineNumber - 1, character: range.startColumn - 1 },
                end: { line: range.endLineNumber - 1, character: range.endColumn - 1 },
              },
              text,
            })),
      }),
    );
    this.#open.set(model.uri.toString(), { model, changes });
    this.#tellOpen(model);
  }

  close(model) {
    const uri = model.uri.toString();
    const open = this.#open.get(uri);
    if (open) {
      open.changes.dispose();
      this.#open.delete(uri);
      this.wire.tell("textDocument/didClose", { textDocument: { uri } });
    }
  }

  #tellOpen(model) {
    this.wire.tell("textDocument/didOpen", {
      textDocument: {
        uri: model.uri.toString(),
        languageId: "wall",
        version: model.getVersionId(),
        text: model.getValue(),
      },
    });
  }

  /** Asks about a text; null where the server has no answer. */
  about(model, method, params, token) {
    const textDocument = { uri: model.uri.toString() };
    return this.wire.ask(`textDocument/${method}`, { textDocument, ...params }, token);
  }
}
