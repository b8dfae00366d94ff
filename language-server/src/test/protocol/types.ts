// What each message carries, in the protocol's own types; the schema is made from these names.
import * as p from 'vscode-languageserver-protocol';

export interface RequestParams {
  'initialize': p.InitializeParams;
  'textDocument/hover': p.HoverParams;
  'textDocument/completion': p.CompletionParams;
  'completionItem/resolve': p.CompletionItem;
  'textDocument/signatureHelp': p.SignatureHelpParams;
  'textDocument/definition': p.DefinitionParams;
  'textDocument/typeDefinition': p.TypeDefinitionParams;
  'textDocument/references': p.ReferenceParams;
  'textDocument/documentHighlight': p.DocumentHighlightParams;
  'textDocument/documentSymbol': p.DocumentSymbolParams;
  'textDocument/codeAction': p.CodeActionParams;
  'codeAction/resolve': p.CodeAction;
  'textDocument/documentLink': p.DocumentLinkParams;
  'textDocument/formatting': p.DocumentFormattingParams;
  'textDocument/rangeFormatting': p.DocumentRangeFormattingParams;
  'textDocument/rename': p.RenameParams;
  'textDocument/prepareRename': p.PrepareRenameParams;
  'textDocument/foldingRange': p.FoldingRangeParams;
  'textDocument/selectionRange': p.SelectionRangeParams;
  'textDocument/declaration': p.DeclarationParams;
  'textDocument/implementation': p.ImplementationParams;
  'textDocument/prepareCallHierarchy': p.CallHierarchyPrepareParams;
  'callHierarchy/incomingCalls': p.CallHierarchyIncomingCallsParams;
  'callHierarchy/outgoingCalls': p.CallHierarchyOutgoingCallsParams;
  'textDocument/prepareTypeHierarchy': p.TypeHierarchyPrepareParams;
  'typeHierarchy/supertypes': p.TypeHierarchySupertypesParams;
  'typeHierarchy/subtypes': p.TypeHierarchySubtypesParams;
  'textDocument/codeLens': p.CodeLensParams;
  'codeLens/resolve': p.CodeLens;
  'textDocument/documentColor': p.DocumentColorParams;
  'textDocument/colorPresentation': p.ColorPresentationParams;
  'workspace/executeCommand': p.ExecuteCommandParams;
  'textDocument/semanticTokens/full': p.SemanticTokensParams;
  'textDocument/semanticTokens/full/delta': p.SemanticTokensDeltaParams;
  'textDocument/semanticTokens/range': p.SemanticTokensRangeParams;
  'textDocument/inlayHint': p.InlayHintParams;
  'inlayHint/resolve': p.InlayHint;
  'textDocument/diagnostic': p.DocumentDiagnosticParams;
  'workspace/diagnostic': p.WorkspaceDiagnosticParams;
  'workspace/symbol': p.WorkspaceSymbolParams;
  'client/registerCapability': p.RegistrationParams;
  'client/unregisterCapability': p.UnregistrationParams;
  'workspace/configuration': p.ConfigurationParams;
  'workspace/textDocumentContent/refresh': p.TextDocumentContentRefreshParams;
  'window/showDocument': p.ShowDocumentParams;
  'workspace/applyEdit': p.ApplyWorkspaceEditParams;
  'window/workDoneProgress/create': p.WorkDoneProgressCreateParams;
}

export interface Results {
  'initialize': p.InitializeResult;
  'shutdown': null;
  'textDocument/hover': p.Hover | null;
  'textDocument/completion': p.CompletionItem[] | p.CompletionList | null;
  'completionItem/resolve': p.CompletionItem;
  'textDocument/signatureHelp': p.SignatureHelp | null;
  'textDocument/definition': p.Definition | p.DefinitionLink[] | null;
  'textDocument/typeDefinition': p.Definition | p.DefinitionLink[] | null;
  'textDocument/references': p.Location[] | null;
  'textDocument/documentHighlight': p.DocumentHighlight[] | null;
  'textDocument/documentSymbol': p.DocumentSymbol[] | p.SymbolInformation[] | null;
  'textDocument/codeAction': (p.Command | p.CodeAction)[] | null;
  'codeAction/resolve': p.CodeAction;
  'textDocument/documentLink': p.DocumentLink[] | null;
  'textDocument/formatting': p.TextEdit[] | null;
  'textDocument/rangeFormatting': p.TextEdit[] | null;
  'textDocument/rename': p.WorkspaceEdit | null;
  'textDocument/prepareRename': p.PrepareRenameResult | null;
  'textDocument/foldingRange': p.FoldingRange[] | null;
  'textDocument/selectionRange': p.SelectionRange[] | null;
  'textDocument/declaration': p.Declaration | p.DeclarationLink[] | null;
  'textDocument/implementation': p.Definition | p.DefinitionLink[] | null;
  'textDocument/prepareCallHierarchy': p.CallHierarchyItem[] | null;
  'callHierarchy/incomingCalls': p.CallHierarchyIncomingCall[] | null;
  'callHierarchy/outgoingCalls': p.CallHierarchyOutgoingCall[] | null;
  'textDocument/prepareTypeHierarchy': p.TypeHierarchyItem[] | null;
  'typeHierarchy/supertypes': p.TypeHierarchyItem[] | null;
  'typeHierarchy/subtypes': p.TypeHierarchyItem[] | null;
  'textDocument/codeLens': p.CodeLens[] | null;
  'codeLens/resolve': p.CodeLens;
  'textDocument/documentColor': p.ColorInformation[];
  'textDocument/colorPresentation': p.ColorPresentation[];
  'workspace/executeCommand': p.LSPAny;
  'textDocument/semanticTokens/full': p.SemanticTokens | null;
  'textDocument/semanticTokens/full/delta': p.SemanticTokens | p.SemanticTokensDelta | null;
  'textDocument/semanticTokens/range': p.SemanticTokens | null;
  'textDocument/inlayHint': p.InlayHint[] | null;
  'inlayHint/resolve': p.InlayHint;
  'textDocument/diagnostic': p.DocumentDiagnosticReport;
  'workspace/diagnostic': p.WorkspaceDiagnosticReport;
  'workspace/textDocumentContent': p.TextDocumentContentResult;
  'workspace/willRenameFiles': p.WorkspaceEdit | null;
  'textDocument/rangesFormatting': p.TextEdit[] | null;
  'textDocument/onTypeFormatting': p.TextEdit[] | null;
  'workspace/symbol': p.SymbolInformation[] | p.WorkspaceSymbol[] | null;
}

export interface NotificationParams {
  'initialized': p.InitializedParams;
  'textDocument/didOpen': p.DidOpenTextDocumentParams;
  'textDocument/didChange': p.DidChangeTextDocumentParams;
  'textDocument/didClose': p.DidCloseTextDocumentParams;
  'textDocument/didSave': p.DidSaveTextDocumentParams;
  'workspace/didChangeWatchedFiles': p.DidChangeWatchedFilesParams;
  'workspace/didChangeConfiguration': p.DidChangeConfigurationParams;
  'workspace/didChangeWorkspaceFolders': p.DidChangeWorkspaceFoldersParams;
  'textDocument/publishDiagnostics': p.PublishDiagnosticsParams;
  'window/logMessage': p.LogMessageParams;
  'window/showMessage': p.ShowMessageParams;
  '$/cancelRequest': { id: number | string };
  '$/progress': { token: number | string; value: p.WorkDoneProgressBegin | p.WorkDoneProgressReport | p.WorkDoneProgressEnd };
}

export interface ErrorAnswer {
  code: number;
  message: string;
}
