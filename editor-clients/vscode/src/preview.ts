/** The live drawing in a panel at the side. */
import * as vscode from "vscode";
import { SERVER_PREVIEW } from "./commands";
import { addressIn, page } from "./page";
import { ask, offered } from "./run";
import { Server } from "./server";

export class Preview {
  private panel: vscode.WebviewPanel | undefined;

  constructor(private readonly server: Server) {}

  async show(): Promise<void> {
    if (!this.server.talk) {
      void vscode.window.showWarningMessage(
        "The drawing comes from the Mullwright server, which does not run.",
      );
    } else if (!offered(this.server).includes(SERVER_PREVIEW)) {
      void vscode.window.showInformationMessage(
        "This Mullwright server makes no drawing. A newer one does: empty the setting " +
          "mullwright.server.jar to use the one in the extension.",
      );
    } else {
      await this.open();
    }
  }

  private async open(): Promise<void> {
    try {
      const address = addressIn(await ask(this.server, SERVER_PREVIEW));
      if (address) {
        // where the server runs on another machine, VS Code opens a way to its port
        const reachable = await vscode.env.asExternalUri(vscode.Uri.parse(address, true));
        this.frame(reachable.toString(true));
      }
    } catch (refused) {
      const why = refused instanceof Error ? refused.message : String(refused);
      void vscode.window.showErrorMessage(`The drawing cannot be shown: ${why}`);
    }
  }

  private frame(address: string): void {
    if (!this.panel) {
      this.panel = vscode.window.createWebviewPanel(
        "mullwright.preview",
        "Drawing",
        { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
        { enableScripts: true, retainContextWhenHidden: true },
      );
      this.panel.onDidDispose(() => (this.panel = undefined));
    }
    this.panel.webview.html = page(address);
    this.panel.reveal(undefined, true);
  }
}
