// Stands between the page and its server: hears what is said, holds answers back, cuts the talk.
import assert from "node:assert/strict";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * Listens to every talk of the page from here on; what is told is of the latest.
 *
 * @returns `told` and `answered`: methods in their order; `known(path)`: the text the server has of
 *   a file of the folder, made of what it was told, undefined if it is not open; `held`: for a method what its
 *   answers wait for; `refusing`: why no talk is begun, if none is; `cut()` ends the talk
 */
export async function overhear(page, folder) {
  let texts = new Map();
  const talk = {
    told: [],
    answered: [],
    held: {},
    refusing: undefined,
    cut() {},
    known: (path) => {
      const file = join(folder, path);
      return [...texts].find(([uri]) => fileURLToPath(uri) === file)?.[1];
    },
  };
  await page.routeWebSocket(/.*/, (socket) => {
    if (talk.refusing) {
      socket.close({ code: 1013, reason: talk.refusing });
      return;
    }
    const server = socket.connectToServer();
    const asked = new Map();
    texts = new Map();
    Object.assign(talk, { told: [], answered: [] });
    talk.cut = () => {
      server.close();
      socket.close({ code: 1001 });
    };
    socket.onMessage((message) => {
      const said = JSON.parse(message);
      asked.set(said.id, said.method);
      talk.told.push(said.method);
      keep(texts, said);
      server.send(message);
    });
    server.onMessage(async (message) => {
      const { id, method } = JSON.parse(message);
      const answers = method === undefined && asked.get(id);
      await talk.held[answers];
      socket.send(message);
      talk.answered.push(answers);
    });
  });
  return talk;
}

/** Keeps the texts as a server does. */
function keep(texts, { method, params }) {
  const uri = params?.textDocument?.uri;
  if (method === "textDocument/didOpen") {
    assert.ok(!texts.has(uri), `${uri} is opened once`);
    texts.set(uri, params.textDocument.text);
  } else if (method === "textDocument/didClose") {
    texts.delete(uri);
  } else if (method === "textDocument/didChange") {
    params.contentChanges.forEach((change) => texts.set(uri, changed(texts.get(uri), change)));
  }
}

function changed(text, { range, text: now }) {
  if (!range) {
    return now;
  }
  const starts = [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map((end) => end.index + end[0].length)];
  const offset = ({ line, character }) => starts[line] + character;
  return text.slice(0, offset(range.start)) + now + text.slice(offset(range.end));
}
