// What the server asks and tells without being asked.
import { apply } from "./edits.js";
import { toRange } from "./shapes.js";
import { say, state } from "./word.js";

const ERROR = 1;
const WARNING = 2;
const REFRESHES = ["inlayHint", "semanticTokens", "codeLens"].map(
  (what) => `workspace/${what}/refresh`,
);

/** The server's calls to ask anew, as events of Monaco. */
export class Refreshes {
  #emitters = new Map();

  constructor(monaco) {
    for (const method of REFRESHES) {
      this.#emitters.set(method, new monaco.Emitter());
    }
  }

  event(method) {
    return this.#emitters.get(method).event;
  }

  /** As if the server had called for all of them. */
  fire() {
    this.#emitters.forEach((emitter) => emitter.fire());
  }

  listen(wire) {
    for (const [method, emitter] of this.#emitters) {
      wire.on(method, () => emitter.fire());
    }
  }
}

export function listen(page, wire) {
  page.refreshes.listen(wire);
  wire.on("textDocument/publishDiagnostics", (told) => page.findings.take(told));
  wire.on("workspace/applyEdit", async ({ edit }) => {
    const failureReason = await apply(page, edit);
    if (failureReason !== undefined) {
      say(failureReason);
    }
    return { applied: failureReason === undefined, failureReason };
  });
  wire.on("window/showMessage", ({ message }) => say(message));
  wire.on("window/showMessageRequest", ({ message }) => say(message));
  wire.on("window/logMessage", ({ type, message }) => {
    if (type === ERROR || type === WARNING) {
      console.warn(message);
    }
  });
  wire.on("window/showDocument", (asked) => showDocument(page, asked));
  wire.on("window/workDoneProgress/create", () => null);
  wire.on("$/progress", ({ value }) => progress(value));
  wire.on("client/registerCapability", () => null);
  wire.on("client/unregisterCapability", () => null);
}

function progress({ kind, title, message, percentage }) {
  if (kind === "end") {
    state("Connected");
  } else {
    const share = percentage === undefined ? "" : ` ${Math.round(percentage)} %`;
    state(`${message ?? title ?? "Working"}${share}`);
  }
}

async function showDocument(page, { uri, selection }) {
  const address = page.monaco.Uri.parse(uri);
  const path = page.documents.path(address);
  if (path !== undefined) {
    await page.open(path, selection && toRange(selection));
    return { success: true };
  }
  if (!isHere(uri)) {
    return { success: false };
  }
  // a browser opens a window by itself only shortly after a click
  if (window.open(uri, "_blank") === null) {
    say("The server has a page to show.", [
      ["Open it", () => window.open(uri, "_blank")],
      ["Close", () => {}],
    ]);
  }
  return { success: true };
}

/** Only pages of this machine are opened. */
function isHere(address) {
  const url = URL.canParse(address) && new URL(address);
  return url && url.protocol === "http:" && ["127.0.0.1", "localhost", "[::1]"].includes(url.hostname);
}
