/** The live drawing in a panel at the side. */
import * as vscode from "vscode";
import { SERVER_PREVIEW } from "./commands";
import { addressIn, page, reachable } from "./page";
import { ask, offered } from "./run";
import { Server } from "./server";

export class Preview {
  private panel: vscode.WebviewPanel | undefined;
  private shown: string | undefined;

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

  /** A drawing that is open is asked for anew: its page was that of a server that has ended. */
  async again(): Promise<void> {
    if (this.panel) {
      // until it is started wholly, it knows of no open wall
      await this.server.talk?.start();
      await this.open();
    }
  }

  private async open(): Promise<void> {
    try {
      const address = addressIn(await ask(this.server, SERVER_PREVIEW));
      if (address) {
        await this.frame(address);
      }
    } catch (refused) {
      const why = refused instanceof Error ? refused.message : String(refused);
      void vscode.window.showErrorMessage(`The drawing cannot be shown: ${why}`);
    }
  }

  /** Shows a page of the server at the side; one that is there already is only brought forward. */
  async frame(address: string): Promise<void> {
    // where the server runs on another machine, VS Code opens a way to its port
    const way = await vscode.env.asExternalUri(vscode.Uri.parse(address, true));
    const framed = reachable(address, way.toString(true));
    if (!this.panel) {
      this.panel = vscode.window.createWebviewPanel(
        "mullwright.preview",
        "Drawing",
        { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
        { enableScripts: true, retainContextWhenHidden: true },
      );
      this.panel.onDidDispose(() => (this.panel = undefined));
      this.shown = undefined;
    }
    if (this.shown !== framed) {
      this.shown = framed;
      this.panel.webview.html = page(framed);
    }
    this.panel.reveal(undefined, true);
  }
}
