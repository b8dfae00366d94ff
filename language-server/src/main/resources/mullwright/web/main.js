// Puts the page together: files at the side, the text, what is found in it.
import * as completion from "./completion.js";
import { Documents } from "./documents.js";
import { compare, load, make } from "./editor.js";
import * as files from "./files.js";
import * as fresh from "./fresh.js";
import { draw as drawFindings, Findings } from "./findings.js";
import { Conflict, list, read } from "./folder.js";
import * as hints from "./hints.js";
import * as hover from "./hover.js";
import * as keys from "./keys.js";
import * as layout from "./layout.js";
import { listen, Refreshes } from "./listen.js";
import * as mends from "./mends.js";
import * as names from "./names.js";
import * as outline from "./outline.js";
import { Session } from "./session.js";
import * as tokens from "./tokens.js";
import { followScheme, register as registerWall } from "./wall.js";
import { say, state, tell } from "./word.js";

const LOOK_EVERY = 3000;
const PREVIEW = "mullwright.preview";
const FEATURES = [completion, hints, hover, layout, mends, names, outline, tokens];

const element = (id) => document.getElementById(id);
const settings = await (await fetch("settings.json")).json();
const monaco = await load();
registerWall(monaco);
followScheme(monaco);
const editor = make(monaco, element("editor"));
const session = new Session(settings);
const documents = new Documents(monaco, session, settings.root);
const findings = new Findings(monaco, documents);
const page = { monaco, session, documents, findings, refreshes: new Refreshes(monaco), open, run };

let there = [];
let current;
const views = new Map();

// --- the server

async function begin() {
  await session.begin((wire) => listen(page, wire));
  session.wire.whenOver = gone;
  state("Connected");
  const { commands = [] } = session.capabilities.executeCommandProvider ?? {};
  element("drawing").hidden = !commands.includes(PREVIEW);
}

function gone(reason) {
  state("Not connected", true);
  say(reason || "The server is gone. Nothing you see here is checked or saved any more.", [
    ["Try again", () => begin().catch(() => gone("The server does not answer. Start it again, and open the address it prints; what is not saved here can be copied over."))],
  ]);
}

/** Asks the server to run one of its commands; what it answers in words is shown. */
async function run({ command, arguments: given = [] }) {
  try {
    const answer = await session.wire.ask("workspace/executeCommand", { command, arguments: given });
    if (answer?.lines?.length > 0) {
      tell(answer);
    }
  } catch (refused) {
    say(refused.message);
  }
}

// --- files

async function open(path, range) {
  let model;
  try {
    model = await documents.model(path);
  } catch (failed) {
    say(`“${path}” cannot be opened: ${failed.message}`);
    return null;
  }
  if (current !== path) {
    if (current !== undefined) {
      views.set(current, editor.saveViewState());
    }
    current = path;
    model.updateOptions({
      tabSize: 2,
      insertSpaces: true,
      bracketColorizationOptions: { enabled: false, independentColorPoolPerBracketType: false },
    });
    editor.setModel(model);
    editor.restoreViewState(views.get(path) ?? null);
    editor.updateOptions({ readOnly: documents.isDamaged(path) });
    history.replaceState(null, "", `#${encodeURIComponent(path)}`);
    if (documents.isDamaged(path)) {
      say(`“${path}” holds bytes that are no text, and can be read only: save it as UTF-8 first.`);
    }
  }
  if (range) {
    editor.setSelection(range);
    editor.revealRangeInCenterIfOutsideViewport(range);
  }
  editor.focus();
  draw();
  return editor;
}

async function save() {
  const path = current;
  if (path === undefined || !documents.isChanged(path)) {
    return;
  }
  try {
    await documents.save(path);
  } catch (failed) {
    if (failed instanceof Conflict) {
      await conflict(path, failed.message);
    } else {
      say(`“${path}” was not saved: ${failed.message}`);
    }
  }
}

async function conflict(path, sentence) {
  there = await list();
  draw();
  if (!isThere(path)) {
    lost(path, sentence);
    return;
  }
  say(sentence, [
    ["Compare", async () => {
      const { text } = await read(path);
      const model = await documents.model(path);
      compare(monaco, `${path}: on the disk, and here`, text, model.getValue());
      await conflict(path, sentence);
    }],
    ["Take the one on the disk", () => documents.takeFromDisk(path).catch((failed) => say(failed.message))],
    ["Write mine over it", () => documents.keepMine(path).catch((failed) => say(failed.message))],
    ["Close", () => {}],
  ]);
}

const isThere = (path) => there.some((file) => file.path === path);

/** The disk has nothing to compare with or to take: it was deleted, or has another name now. */
function lost(path, sentence) {
  say(`${sentence} Its text is still here.`, [
    ["Write it anew", () => documents.writeAnew(path).catch((failed) => say(failed.message))],
    ["Close", () => {}],
  ]);
}

async function look() {
  const stamps = new Map(there.map(({ path, stamp }) => [path, stamp]));
  there = await list();
  const changed = there.filter(({ path, stamp }) => stamps.get(path) !== stamp).map(({ path }) => path);
  there.forEach(({ path }) => stamps.delete(path));
  const gone = [...stamps.keys()];
  if (changed.length > 0 || gone.length > 0) {
    await documents.refresh(changed, gone);
    draw();
    if (gone.includes(current)) {
      lost(current, `“${current}” is no longer in the folder.`);
    }
  }
}

// --- what is shown

let due = false;
function draw() {
  // many changes in a row are drawn once
  if (!due) {
    due = true;
    requestAnimationFrame(() => {
      due = false;
      drawNow();
    });
  }
}

function drawNow() {
  const rows = findings.all(current);
  const count = (path, severity) =>
    rows.filter((row) => row.path === path && row.severity === severity).length;
  // first, as it takes room from the files where the page is narrow
  drawFindings(rows, open, current !== undefined);
  files.draw(
    there,
    (path) => ({
      current: path === current,
      changed: documents.isChanged(path),
      errors: count(path, "error"),
      warnings: count(path, "warning"),
    }),
    open,
  );
  const changed = current !== undefined && documents.isChanged(current);
  element("save").disabled = !changed;
  element("lay-out").disabled = current === undefined;
  element("mend").disabled = current === undefined;
  element("empty").hidden = current !== undefined;
  element("place").textContent = current === undefined ? settings.folder : `${settings.folder} / ${current}`;
  document.title = `${changed ? "• " : ""}${current ?? "Mullwright"}`;
}

// --- what can be done

const act = (action) => () => {
  editor.focus();
  editor.getAction(action)?.run();
};
element("new").onclick = () =>
  fresh.ask(current, (path, listed) => {
    there = listed;
    open(path);
  });
element("save").onclick = save;
element("lay-out").onclick = act("editor.action.formatDocument");
element("mend").onclick = act("editor.action.quickFix");
// the server asks to show its page, as it does in any editor
element("drawing").onclick = () => run({ command: PREVIEW });
editor.addAction({
  id: "mullwright.save",
  label: "Save",
  keybindings: [monaco.KeyMod.CtrlCmd | monaco.KeyCode.KeyS],
  run: save,
});
window.addEventListener("keydown", (event) => {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s") {
    event.preventDefault();
    save();
  }
});
window.addEventListener("beforeunload", (event) => {
  if (documents.anyChanged) {
    event.preventDefault();
  }
});
monaco.editor.registerEditorOpener({
  async openCodeEditor(_from, resource, where) {
    const path = documents.path(resource);
    if (path === undefined) {
      return false;
    }
    const range =
      where && (monaco.Range.isIRange(where) ? where : monaco.Range.fromPositions(where));
    return (await open(path, range)) !== null;
  },
});
const part = (id, ...first) => ({
  within: () => element(id),
  focus: () => first.map((selector) => element(id).querySelector(selector)).find(Boolean)?.focus(),
});
keys.go([
  part("tools", "button:enabled"),
  part("files", '[aria-current="true"]', "button"),
  { within: () => element("editor"), focus: () => current !== undefined && editor.focus() },
  part("rows", "button"),
]);
documents.whenChanged = draw;
findings.whenChanged = draw;

await begin();
FEATURES.forEach((feature) => feature.register(page));
there = await list();
const asked = decodeURIComponent(location.hash.slice(1));
const first = there.find(({ path }) => path === asked) ?? there.find(({ path }) => !path.startsWith("catalog/"));
if (first) {
  await open(first.path);
}
draw();
setInterval(() => {
  if (document.visibilityState === "visible") {
    // where the server is gone that is said already
    look().catch(() => undefined);
  }
}, LOOK_EVERY);
