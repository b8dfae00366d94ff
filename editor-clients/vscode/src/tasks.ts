/** The task that checks all walls of a folder; without a server it fills the Problems view too. */
import * as vscode from "vscode";
import { check } from "./launch";
import { Server } from "./server";

export const TYPE = "mullwright";
const MATCHERS = ["$mullwright", "$mullwright-lines"];

export class Checks implements vscode.TaskProvider {
  constructor(private readonly server: Server) {}

  async provideTasks(): Promise<vscode.Task[]> {
    const folders = vscode.workspace.workspaceFolders ?? [];
    return Promise.all(
      folders.map((folder) => this.task({ type: TYPE, files: ["."] }, folder, "check all walls")),
    );
  }

  /** For a task of tasks.json, which names the files. */
  async resolveTask(task: vscode.Task): Promise<vscode.Task | undefined> {
    const scope = task.scope;
    const folder =
      typeof scope === "object" ? scope : (vscode.workspace.workspaceFolders ?? [])[0];
    return folder && this.task(task.definition, folder, task.name || "check");
  }

  private async task(
    definition: vscode.TaskDefinition,
    folder: vscode.WorkspaceFolder,
    name: string,
  ): Promise<vscode.Task> {
    const { launch } = await this.server.launch();
    const { command, args } = check(launch, (definition.files as string[] | undefined) ?? ["."]);
    const task = new vscode.Task(
      definition,
      folder,
      name,
      "mullwright",
      new vscode.ProcessExecution(command, args, { cwd: folder.uri.fsPath }),
      // a server that runs shows the findings of all walls by itself, and keeps them up to date
      this.server.talk ? [] : MATCHERS,
    );
    task.group = vscode.TaskGroup.Build;
    task.presentationOptions = { clear: true };
    return task;
  }
}

/** Checks every folder of the workspace. */
export async function checkAll(checks: Checks, server: Server): Promise<void> {
  let tasks: vscode.Task[];
  try {
    tasks = await checks.provideTasks();
  } catch (failed) {
    return server.tell(failed);
  }
  if (tasks.length === 0) {
    void vscode.window.showInformationMessage("Open the folder that holds the walls to check them.");
  }
  for (const task of tasks) {
    await vscode.tasks.executeTask(task);
  }
}
