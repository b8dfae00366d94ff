/** Starts the Mullwright server for walls and offers what it can do. */
import * as vscode from "vscode";
import { CHECK, MENU, MOVE_LINE, RESTART, RUN, SHOW_LOG, SHOW_PREVIEW } from "./commands";
import { moveLine } from "./moveLine";
import { Preview } from "./preview";
import { pick } from "./run";
import { Server } from "./server";
import { menu, Status } from "./status";
import { checkAll, Checks, TYPE } from "./tasks";

let server: Server | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const log = vscode.window.createOutputChannel("Mullwright", { log: true });
  const running = new Server(context, log);
  server = running;
  const status = new Status();
  const preview = new Preview(running);
  running.showPage = (address) => preview.frame(address);
  const checks = new Checks(running);
  const command = (name: string, does: () => unknown): vscode.Disposable =>
    vscode.commands.registerCommand(name, does);
  context.subscriptions.push(
    log,
    running,
    status,
    running.onMood((mood) => {
      status.show(mood);
      if (mood.is === "running") {
        void preview.again();
      }
    }),
    command(SHOW_PREVIEW, () => preview.show()),
    command(MOVE_LINE, () => moveLine(running)),
    command(CHECK, () => checkAll(checks, running)),
    command(RUN, () => pick(running)),
    command(RESTART, () => running.restart()),
    command(SHOW_LOG, () => log.show()),
    command(MENU, menu),
    vscode.tasks.registerTaskProvider(TYPE, checks),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (["java", "server"].some((part) => change.affectsConfiguration(`mullwright.${part}`))) {
        void running.settingsChanged();
      }
    }),
  );
  await running.start();
}

export async function deactivate(): Promise<void> {
  await server?.stop();
}
