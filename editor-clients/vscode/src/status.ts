/** The status item: whether walls are being checked, and the way to everything the extension does. */
import * as vscode from "vscode";
import { CHECK, MENU, RESTART, RUN, SHOW_LOG, SHOW_PREVIEW } from "./commands";
import { Mood } from "./server";

const LOOKS: Record<Mood["is"], { icon: string; says: string }> = {
  starting: { icon: "loading~spin", says: "Mullwright is starting" },
  running: { icon: "check", says: "Mullwright checks walls as you write" },
  stopped: { icon: "circle-slash", says: "Mullwright is stopped: walls are not checked" },
  failed: { icon: "error", says: "Mullwright cannot run" },
};

// without the server there are no findings: that must not look like a wall without mistakes
const GROUNDS: Partial<Record<Mood["is"], string>> = { stopped: "warning", failed: "error" };

export class Status implements vscode.Disposable {
  private readonly item = vscode.window.createStatusBarItem(
    "mullwright.status",
    vscode.StatusBarAlignment.Right,
    100,
  );
  private readonly watching: vscode.Disposable;

  constructor() {
    this.item.name = "Mullwright";
    this.item.command = MENU;
    this.show({ is: "starting" });
    this.watching = vscode.window.onDidChangeActiveTextEditor(() => this.place());
    this.place();
  }

  show(mood: Mood): void {
    const looks = LOOKS[mood.is];
    this.item.text = `$(${looks.icon}) Mullwright`;
    const more = mood.is === "running" ? mood.about : mood.is === "failed" ? mood.why : "";
    this.item.tooltip = more === "" ? looks.says : `${looks.says}\n\n${more}`;
    const ground = GROUNDS[mood.is];
    this.item.backgroundColor = ground && new vscode.ThemeColor(`statusBarItem.${ground}Background`);
  }

  // of use beside a wall only
  private place(): void {
    if (vscode.window.activeTextEditor?.document.languageId === "wall") {
      this.item.show();
    } else {
      this.item.hide();
    }
  }

  dispose(): void {
    this.watching.dispose();
    this.item.dispose();
  }
}

/** What a click on the item offers. */
export async function menu(): Promise<void> {
  const entries = [
    { label: "$(open-preview) Show the drawing at the side", command: SHOW_PREVIEW },
    { label: "$(checklist) Check all walls of the workspace", command: CHECK },
    { label: "$(play) Run one of the server's commands", command: RUN },
    { label: "$(refresh) Start the server anew", command: RESTART },
    { label: "$(output) Show the log", command: SHOW_LOG },
  ];
  const chosen = await vscode.window.showQuickPick(entries, { title: "Mullwright" });
  if (chosen) {
    await vscode.commands.executeCommand(chosen.command);
  }
}
