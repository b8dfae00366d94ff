/** Asks how far the grid line at the cursor is to move and lets the server move it. */
import * as vscode from "vscode";
import { ExecuteCommandRequest } from "vscode-languageclient/node";
import { SERVER_MOVE_LINE, sentence } from "./commands";
import { Question, untilTaken } from "./question";
import { Server } from "./server";

export async function moveLine(server: Server): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  const talk = server.talk;
  if (!talk) {
    void vscode.window.showWarningMessage("The Mullwright server does not run.");
    return;
  }
  if (editor?.document.languageId !== "wall") {
    void vscode.window.showInformationMessage("Put the cursor on the name of a grid line.");
    return;
  }
  const address = talk.code2ProtocolConverter.asUri(editor.document.uri);
  const position = talk.code2ProtocolConverter.asPosition(editor.selection.active);
  const answer = await untilTaken(ask, (by) =>
    talk.sendRequest(ExecuteCommandRequest.type, {
      command: SERVER_MOVE_LINE,
      arguments: [address, position, by],
    }),
  );
  const told = sentence(answer);
  if (told !== undefined) {
    void vscode.window.showInformationMessage(told);
  }
}

// the plain input box shows no word on what stands in it at first, so a refusal would not be seen
function ask({ value, refusal }: Question): Promise<string | undefined> {
  const box = vscode.window.createInputBox();
  box.title = "Move Grid Line";
  box.prompt =
    "How far to the right, with its unit; -2 1/2\" or -50 mm for the left. Its neighbours stay. " +
    "For another line than the one at the cursor, its name first: C 2\".";
  box.value = value;
  box.validationMessage = refusal;
  box.ignoreFocusOut = true;
  return new Promise((answered) => {
    box.onDidChangeValue((text) => {
      box.validationMessage = text === value ? refusal : undefined;
    });
    box.onDidAccept(() => {
      answered(box.value);
      box.hide();
    });
    box.onDidHide(() => {
      answered(undefined);
      box.dispose();
    });
    box.show();
  });
}
