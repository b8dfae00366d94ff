/** The talk with the server, as the client library holds it, and what it says when it is refused. */
import * as vscode from "vscode";
import { LanguageClient, LSPErrorCodes, ResponseError } from "vscode-languageclient/node";

export class Talk extends LanguageClient {
  /** A sentence the server refuses with is shown as it is, without the names of the protocol. */
  override handleFailedRequest<T>(
    ...failed: Parameters<typeof LanguageClient.prototype.handleFailedRequest<T>>
  ): T {
    const [type, , error, , shown = true] = failed;
    if (shown && error instanceof ResponseError && error.code === LSPErrorCodes.RequestFailed) {
      this.info(`${type.method} is refused: ${error.message}`);
      void vscode.window.showWarningMessage(error.message);
      throw new vscode.CancellationError();
    }
    return super.handleFailedRequest(...failed);
  }
}
