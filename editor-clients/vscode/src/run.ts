/** Asks the server to run one of its own commands. */
import * as vscode from "vscode";
import { ExecuteCommandRequest } from "vscode-languageclient/node";
import { SERVER_MOVE_LINE, title, words } from "./commands";
import { moveLine } from "./moveLine";
import { Server } from "./server";

/** The commands the running server offers; none if it does not run. */
export function offered(server: Server): readonly string[] {
  return server.talk?.initializeResult?.capabilities.executeCommandProvider?.commands ?? [];
}

export async function ask(server: Server, command: string): Promise<unknown> {
  const document = vscode.window.activeTextEditor?.document;
  const wall = document?.languageId === "wall" ? [document.uri.toString()] : [];
  return server.talk?.sendRequest(ExecuteCommandRequest.type, { command, arguments: wall });
}

/** Lets the user pick one of them. */
export async function pick(server: Server): Promise<void> {
  if (!server.talk) {
    void vscode.window.showWarningMessage("The Mullwright server does not run.");
    return;
  }
  const entries = offered(server).map((command) => ({
    label: title(command),
    description: command,
    command,
  }));
  if (entries.length === 0) {
    void vscode.window.showInformationMessage("This Mullwright server offers no commands.");
    return;
  }
  const chosen = await vscode.window.showQuickPick(entries, { title: "Mullwright" });
  if (!chosen) {
    return;
  }
  if (chosen.command === SERVER_MOVE_LINE) {
    await moveLine(server);
    return;
  }
  try {
    await show(await ask(server, chosen.command));
  } catch (refused) {
    void vscode.window.showErrorMessage(refused instanceof Error ? refused.message : `${refused}`);
  }
}

/** An answer in words is shown; what the server did by itself needs no word. */
async function show(answer: unknown): Promise<void> {
  const content = words(answer);
  if (content !== undefined) {
    await vscode.window.showTextDocument(
      await vscode.workspace.openTextDocument({ content, language: "plaintext" }),
      { preview: true, viewColumn: vscode.ViewColumn.Beside },
    );
  }
}
