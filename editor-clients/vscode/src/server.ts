/** The server's life: found, started, watched, stopped, started anew. */
import { existsSync, statSync } from "node:fs";
import { execFile } from "node:child_process";
import * as vscode from "vscode";
import { LanguageClientOptions, State } from "vscode-languageclient/node";
import { findJava, Java, NoJava } from "./java";
import { archive, argumentFile, Launch, same, serve } from "./launch";
import { thisMachine } from "./machine";
import { isLoopback } from "./page";
import { Talk } from "./talk";

/** What the status item shows. */
export type Mood =
  | { is: "starting" }
  | { is: "running"; about: string }
  | { is: "stopped" }
  | { is: "failed"; why: string };

/** Why there is no server, in a sentence for people. */
export class CannotStart extends Error {}

const STAMP = "archive";

export class Server implements vscode.Disposable {
  private readonly moods = new vscode.EventEmitter<Mood>();
  readonly onMood = this.moods.event;
  private client: Talk | undefined;
  private launched: Launch | undefined;
  private turn: Promise<void> = Promise.resolve();

  /** Shows a page of the server; set by whoever can. */
  showPage: ((address: string) => Promise<void>) | undefined;

  constructor(
    private readonly context: vscode.ExtensionContext,
    private readonly log: vscode.LogOutputChannel,
  ) {}

  /** The talk with the server, if there is one. */
  get talk(): Talk | undefined {
    return this.client?.state === State.Running ? this.client : undefined;
  }

  /** Starts the server and tells the user if it cannot be. */
  start(): Promise<void> {
    return this.inTurn(() => this.begin());
  }

  stop(): Promise<void> {
    return this.inTurn(() => this.end());
  }

  async restart(): Promise<void> {
    await this.stop();
    await this.start();
  }

  /** Starts the server anew if the settings now name another one, another Java or other arguments. */
  async settingsChanged(): Promise<void> {
    // first the client tells the server of the change: one that is being stopped takes no word
    await new Promise((told) => setImmediate(told));
    const wanted = await this.launch().then(
      ({ launch }) => launch,
      () => undefined, // the start tells why
    );
    // what a folder says that is not trusted changes nothing
    if (!wanted || !this.launched || !same(wanted, this.launched)) {
      await this.restart();
    }
  }

  // one after the other: a client that is only starting can neither be stopped nor forgotten
  private inTurn(does: () => Promise<void>): Promise<void> {
    this.turn = this.turn.then(does).catch((failed) => this.log.error(failed));
    return this.turn;
  }

  private async begin(): Promise<void> {
    this.moods.fire({ is: "starting" });
    try {
      const { launch, java } = await this.launch();
      this.launched = launch;
      const archived = this.archived(launch, java);
      const started = serve(launch, archived);
      this.log.info(`${started.command} ${started.args.join(" ")}`);
      this.client = new Talk("mullwright", "Mullwright", started, this.options());
      this.client.onDidChangeState((change) => this.changed(change.newState, java));
      await this.client.start();
      if (!archived) {
        this.makeArchive(launch, java);
      }
    } catch (failed) {
      // nobody waits for what the user answers
      void this.failed(failed);
    }
  }

  private async end(): Promise<void> {
    const client = this.client;
    this.client = undefined;
    this.launched = undefined;
    if (client?.needsStop()) {
      await client.stop();
    }
    await client?.dispose();
  }

  dispose(): void {
    this.moods.dispose();
  }

  /**
   * The Java, the jar and the user's own arguments.
   *
   * @throws CannotStart or NoJava with the sentence for the user
   */
  async launch(): Promise<{ launch: Launch; java: Java }> {
    const settings = vscode.workspace.getConfiguration("mullwright");
    const jar =
      settings.get<string>("server.jar")?.trim() ||
      this.context.asAbsolutePath("server/mullwright.jar");
    if (!existsSync(jar)) {
      throw new CannotStart(
        `There is no server at ${jar}. Mend the setting mullwright.server.jar, or empty it to use ` +
          "the one in the extension.",
      );
    }
    const java = await findJava(settings.get<string>("java.home")?.trim() ?? "", thisMachine);
    const extra = settings.get<string[]>("java.arguments") ?? [];
    return { launch: { java: java.program, jar, extra }, java };
  }

  private options(): LanguageClientOptions {
    return {
      documentSelector: [
        { scheme: "file", language: "wall" },
        { scheme: "untitled", language: "wall" },
      ],
      outputChannel: this.log,
      middleware: {
        // the view at the side follows no piece if there are several: the one that carries most comes first
        prepareCallHierarchy: async (document, position, token, next) => {
          const pieces = await next(document, position, token);
          return Array.isArray(pieces) ? pieces[0] : pieces;
        },
        window: {
          // the server's own pages stand beside the text, not in a browser
          showDocument: async (asked, token, next) => {
            if (!this.showPage || !isLoopback(asked.uri)) {
              return next(asked, token);
            }
            await this.showPage(asked.uri);
            return { success: true };
          },
        },
      },
      synchronize: {
        fileEvents: vscode.workspace.createFileSystemWatcher("**/mullwright.properties"),
      },
    };
  }

  private changed(state: State, java: Java): void {
    if (state === State.Running) {
      const version = this.client?.initializeResult?.serverInfo?.version;
      const about = `${version ? `Server ${version}, ` : ""}Java ${java.version} (${java.from})`;
      this.moods.fire({ is: "running", about });
    } else {
      this.moods.fire({ is: state === State.Starting ? "starting" : "stopped" });
    }
  }

  private async failed(failed: unknown): Promise<void> {
    this.moods.fire({ is: "failed", why: failed instanceof Error ? failed.message : `${failed}` });
    await this.tell(failed);
  }

  /** Tells the user why there is no server, with the way to mend it. */
  async tell(failed: unknown): Promise<void> {
    const why = failed instanceof Error ? failed.message : String(failed);
    this.log.error(why);
    const mendable = failed instanceof NoJava || failed instanceof CannotStart;
    const settings = "Open Settings";
    const log = "Show Log";
    const chosen = await vscode.window.showErrorMessage(
      mendable ? why : `The Mullwright server did not start: ${why}`,
      ...(mendable ? [settings, log] : [log]),
    );
    if (chosen === settings) {
      // they are the machine's that runs the server: where that is another one, it has a page of its own
      await vscode.commands.executeCommand(
        `workbench.action.open${vscode.env.remoteName ? "Remote" : ""}Settings`,
        { query: `@ext:${this.context.extension.id}` },
      );
    } else if (chosen === log) {
      this.log.show();
    }
  }

  // an archive fits one Java and one jar only; which ones is kept with it
  private stamp(launch: Launch, java: Java): string {
    return [java.program, java.version, launch.jar, statSync(launch.jar).mtimeMs].join("\n");
  }

  private archived(launch: Launch, java: Java): boolean {
    return (
      existsSync(argumentFile(launch.jar)) &&
      this.context.globalState.get<string>(STAMP) === this.stamp(launch, java)
    );
  }

  /** Made while the user works; where the folder is not ours to write, the server does without. */
  private makeArchive(launch: Launch, java: Java): void {
    const { command, args } = archive(launch);
    execFile(command, args, (failed, _out, err) => {
      if (failed) {
        this.log.info(`No archive for a quicker start: ${err.trim() || failed.message}`);
      } else {
        void this.context.globalState.update(STAMP, this.stamp(launch, java));
      }
    });
  }
}
