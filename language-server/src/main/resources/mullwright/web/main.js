// Puts the page together: files at the side, the text, what is found in it.
import * as completion from "./completion.js";
import { Connection } from "./connection.js";
import { Documents } from "./documents.js";
import { load, make } from "./editor.js";
import * as files from "./files.js";
import * as fresh from "./fresh.js";
import { draw as drawFindings, Findings } from "./findings.js";
import { list } from "./folder.js";
import * as hints from "./hints.js";
import * as hover from "./hover.js";
import * as keys from "./keys.js";
import * as layout from "./layout.js";
import { Refreshes } from "./listen.js";
import * as mends from "./mends.js";
import * as names from "./names.js";
import * as outline from "./outline.js";
import { saver } from "./saving.js";
import { Session } from "./session.js";
import * as tokens from "./tokens.js";
import { followScheme, register as registerWall } from "./wall.js";
import { say, tell } from "./word.js";

const LOOK_EVERY = 3000;
const PREVIEW = "mullwright.preview";
const FEATURES = [completion, hints, hover, layout, mends, names, outline, tokens];

const element = (id) => document.getElementById(id);
const settings = await (await fetch("settings.json")).json();
const monaco = await load();
const editor = make(monaco, element("editor"));
registerWall(monaco);
followScheme(monaco);
const session = new Session(settings);
const documents = new Documents(monaco, session, settings.root);
const findings = new Findings(monaco, documents);
const page = { monaco, session, documents, findings, refreshes: new Refreshes(monaco), open, run };

let there = [];
let current;
const views = new Map();
// takes back that the open file is gone
let unsayGone = () => {};

// --- the server

const connection = new Connection(page);
const connected = new Promise((then) => {
  connection.whenBegun = () => {
    const { commands = [] } = session.capabilities.executeCommandProvider ?? {};
    element("drawing").hidden = !commands.includes(PREVIEW);
    then();
  };
});

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

let openings = 0;

async function open(path, range) {
  const opening = ++openings;
  let model;
  try {
    model = await documents.model(path);
  } catch (failed) {
    say(`“${path}” cannot be opened: ${failed.message}`);
    return null;
  }
  if (opening !== openings) {
    // another was asked for meanwhile, and may be written in
    return null;
  }
  if (current !== path) {
    show(path, model);
  }
  if (range) {
    editor.setSelection(range);
    editor.revealRangeInCenterIfOutsideViewport(range);
  }
  editor.focus();
  draw();
  return editor;
}

function show(path, model) {
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
  history.replaceState(null, "", `#${encodeURIComponent(path)}`);
  // what went while another was shown
  documents.clear(path);
  takeStock();
  if (documents.isDamaged(path)) {
    say(`“${path}” holds bytes that are no text, and can be read only: save it as UTF-8 first.`);
  } else if (documents.gone.includes(path)) {
    unsayGone = lost(path, `“${path}” is no longer in the folder.`);
  } else if (documents.isEvened(path)) {
    say(`The lines of “${path}” end in more than one way. Saved from here, all end as most of them do.`);
  }
}

/** Leaves a text for good. */
function leave(path) {
  if (path === current) {
    current = undefined;
    editor.setModel(null);
    history.replaceState(null, "", "#");
  }
  views.delete(path);
  documents.letGo(path);
}

const { save: saveFile, lost } = saver(page, { look: lookFor, leave });
const save = () => saveFile(current);

async function lookFor(path) {
  await look();
  return there.some((file) => file.path === path);
}

let looking = Promise.resolve();

/** Looks at the folder: one look waits for the other, as each tells what is new since the last. */
function look() {
  const looked = looking.then(lookNow);
  looking = looked.catch(() => undefined);
  return looked;
}

async function lookNow() {
  const stamps = new Map(there.map(({ path, stamp }) => [path, stamp]));
  there = await list();
  connection.resume();
  const changed = there.filter(({ path, stamp }) => stamps.get(path) !== stamp).map(({ path }) => path);
  there.forEach(({ path }) => stamps.delete(path));
  const gone = [...stamps.keys()];
  if (changed.length === 0 && gone.length === 0) {
    await documents.follow();
    return;
  }
  await documents.refresh(changed, gone);
  documents.clear(current);
  draw();
  if (changed.includes(current)) {
    unsayGone();
  }
  if (gone.includes(current)) {
    unsayGone = lost(current, `“${current}” is no longer in the folder.`);
  }
}

/** The path in an address; what is no escaped path names no file. */
function named(hash) {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return undefined;
  }
}

// --- what is shown

/** What holds from now on, and is drawn at the next occasion. */
function takeStock() {
  editor.updateOptions({ readOnly: current !== undefined && documents.isDamaged(current) });
  draw();
}

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
  const { gone } = documents;
  files.draw(
    new Set([...there.map(({ path }) => path), ...gone]),
    (path) => ({
      current: path === current,
      changed: documents.isChanged(path),
      gone: gone.includes(path),
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
  fresh.ask(current, async (path) => {
    // the list of files follows when the server answers again
    await look().catch(() => undefined);
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
  part("word", "button"),
  part("files", '[aria-current="true"]', "button"),
  { within: () => element("editor"), focus: () => current !== undefined && editor.focus() },
  part("rows", "button"),
]);
// what takes room from the files must not take the open one out of sight
new ResizeObserver(draw).observe(element("files"));
documents.whenChanged = takeStock;
findings.whenChanged = draw;

connection.begin();
await connected;
FEATURES.forEach((feature) => feature.register(page));
there = await list();
const asked = named(location.hash);
const first = there.find(({ path }) => path === asked) ?? there.find(({ path }) => !path.startsWith("catalog/"));
if (first) {
  await open(first.path);
}
draw();
const lookIfSeen = () => {
  if (document.visibilityState === "visible") {
    // where the server is gone that is said already
    look().catch(() => undefined);
  }
};
setInterval(lookIfSeen, LOOK_EVERY);
document.addEventListener("visibilitychange", lookIfSeen);
