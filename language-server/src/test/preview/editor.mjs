// A small editor: talks to the server over standard streams, keeps one text.
import { spawn } from "node:child_process";
import { pathToFileURL } from "node:url";

export class Editor {
  constructor(jar, folder, window = { showDocument: { support: true } }) {
    this.process = spawn("java", ["-jar", jar, "serve", "--stdio"], { stdio: ["pipe", "pipe", "inherit"] });
    this.answers = new Map();
    this.heard = [];
    this.ears = [];
    this.last = 0;
    this.bytes = Buffer.alloc(0);
    this.process.stdout.on("data", (more) => this.take(more));
    this.folder = folder;
    this.window = window;
  }

  take(more) {
    this.bytes = Buffer.concat([this.bytes, more]);
    for (;;) {
      const head = this.bytes.indexOf("\r\n\r\n");
      if (head < 0) return;
      const length = Number(/Content-Length: (\d+)/.exec(this.bytes.subarray(0, head))[1]);
      if (this.bytes.length < head + 4 + length) return;
      const message = JSON.parse(this.bytes.subarray(head + 4, head + 4 + length));
      this.bytes = this.bytes.subarray(head + 4 + length);
      if (message.method) {
        if (message.id !== undefined) {
          const result = message.method === "window/showDocument" ? { success: true } : null;
          this.send({ id: message.id, result });
        }
        this.heard.push(message);
        this.ears.splice(0).forEach((wake) => wake());
      } else {
        this.answers.get(message.id)?.(message);
        this.answers.delete(message.id);
      }
    }
  }

  send(message) {
    const text = JSON.stringify({ jsonrpc: "2.0", ...message });
    this.process.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
  }

  notify(method, params) {
    this.send({ method, params });
  }

  ask(method, params) {
    const id = ++this.last;
    return new Promise((resolve, reject) => {
      this.answers.set(id, (answer) => (answer.error ? reject(new Error(answer.error.message)) : resolve(answer.result)));
      this.send({ id, method, params });
    });
  }

  /** The next message that fits, heard from now on or before; taken out of what was heard. */
  async hear(fits, patience = 20000) {
    const end = Date.now() + patience;
    for (;;) {
      const at = this.heard.findIndex(fits);
      if (at >= 0) return this.heard.splice(at, 1)[0];
      if (Date.now() > end) throw new Error("the server did not say what was waited for");
      await Promise.race([
        new Promise((wake) => this.ears.push(wake)),
        new Promise((wake) => setTimeout(wake, 500)),
      ]);
    }
  }

  async begin() {
    await this.ask("initialize", {
      processId: process.pid,
      capabilities: { window: this.window },
      workspaceFolders: [{ uri: pathToFileURL(this.folder).href, name: "walls" }],
    });
    this.notify("initialized", {});
  }

  open(uri, text) {
    this.uri = uri;
    this.text = text;
    this.version = 1;
    this.notify("textDocument/didOpen", { textDocument: { uri, languageId: "wall", version: 1, text } });
  }

  /** Puts a word in the place of another, by one edit of that stretch. */
  replace(from, to) {
    const at = this.text.indexOf(from);
    if (at < 0) throw new Error(`“${from}” is not in the text`);
    const range = { start: this.position(at), end: this.position(at + from.length) };
    this.text = this.text.slice(0, at) + to + this.text.slice(at + from.length);
    this.notify("textDocument/didChange", {
      textDocument: { uri: this.uri, version: ++this.version },
      contentChanges: [{ range, text: to }],
    });
  }

  position(offset) {
    const before = this.text.slice(0, offset).split("\n");
    return { line: before.length - 1, character: before.at(-1).length };
  }

  async end() {
    await this.ask("shutdown", null);
    this.notify("exit");
    await new Promise((done) => this.process.on("exit", done));
  }
}
