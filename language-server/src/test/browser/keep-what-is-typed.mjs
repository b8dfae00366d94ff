// Types in the browser while the disk changes, answers are late and the talk breaks off, and holds
// that nothing typed is lost, nothing of another is written over, and the server knows what is seen.
// Takes the address of the page, the folder that is edited and a folder for pictures of each step.
import assert from "node:assert/strict";
import { existsSync, mkdirSync, readFileSync, rmSync, unlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { driven, gate, launch, steps, until, watched } from "./page.mjs";
import { overhear } from "./talk.mjs";

const [address, folder, pictures] = process.argv.slice(2);
const disk = (path) => readFileSync(join(folder, path), "utf8");
const put = (path, text) => writeFileSync(join(folder, path), text);
for (const path of ["a.wall", "b.wall", "hall/a.wall", "hall/b.wall"]) {
  mkdirSync(join(folder, "hall"), { recursive: true });
  put(path, `// ${path}\n`);
}

const browser = await launch();
const { page, wrong, foreign } = await watched(browser);
const done = steps(page, pictures);

const talk = await overhear(page, folder);
talk.refusing = "9 pages are open already.";

const shown = () => page.evaluate(() => window.monaco.editor.getEditors()[0].getValue());
const readOnly = () =>
  page.evaluate(() => {
    const { monaco } = window;
    return monaco.editor.getEditors()[0].getOption(monaco.editor.EditorOption.readOnly);
  });
const { known } = talk;
const row = (path) => page.locator(`#files [data-path="${path}"]`);
const word = page.locator("#word:not([hidden])");
const choose = (name) => page.getByRole("button", { name }).click();
const enabled = () => page.locator("#save").isEnabled();
/** As the disk is looked at from time to time: done once that has been asked for and answered anew. */
async function look() {
  await page.waitForResponse((answer) => answer.url().endsWith("/files"));
  await page.waitForResponse((answer) => answer.url().endsWith("/files"));
}
async function open(path) {
  await row(path).click();
  await until(`${path} is open`, async () => (await page.locator("#place").innerText()).endsWith(` / ${path}`));
}
async function typeAtEnd(text) {
  await page.evaluate(() => window.monaco.editor.getEditors()[0].focus());
  await page.keyboard.press("Control+End");
  await page.keyboard.type(text);
}
/** What is typed together is taken back together, or in parts. */
async function undoTo(text) {
  await until("undone", async () => {
    await page.keyboard.press("Control+z");
    return (await shown()) === text;
  });
}
/** Holds the answer of the page's server to a request back, once it is made. */
async function hold(pattern, wanted = () => true) {
  const { opened, open } = gate();
  const made = gate();
  const fulfilled = gate();
  const held = async (route) => {
    if (!wanted(route.request())) {
      await route.continue();
      return;
    }
    const response = await route.fetch();
    made.open();
    await opened;
    await route.fulfill({ response });
    fulfilled.open();
  };
  await page.route(pattern, held);
  const go = async () => {
    open();
    await fulfilled.opened;
    await page.unroute(pattern, held);
  };
  return { made: made.opened, go };
}

const all = {
  async "a page too many is told so, and comes up once there is room"() {
    await page.goto(`${address}#%`);
    await word.filter({ hasText: talk.refusing }).waitFor();
    talk.refusing = undefined;
    await choose("Try again");
    await row("a.wall").waitFor();
    const listed = await page.locator("#files > *").allInnerTexts();
    assert.deepEqual(listed.slice(0, 3), ["This folder", "a.wall", "b.wall"]);
    assert.equal(new Set(listed.filter((each) => !each.endsWith(".wall"))).size, await page.locator("#files h2").count());
  },

  async "what is typed goes where it is seen, though another text comes late"() {
    await open("b.wall");
    const late = await hold("**/file?*", (request) => request.url().includes("hall%2Fa"));
    await row("hall/a.wall").click();
    await late.made;
    await open("a.wall");
    await typeAtEnd("// one ");
    await late.go();
    await until("the late one is here", () => known("hall/a.wall"));
    await page.keyboard.type("two");
    assert.equal(await shown(), "// a.wall\n// one two");
    await page.keyboard.press("Control+s");
    await until("saved", () => disk("a.wall") === "// a.wall\n// one two");
    assert.equal(disk("hall/a.wall"), "// hall/a.wall\n");
  },

  async "the talk is cut while somebody types, and the server has all of it afterwards"() {
    const answers = gate();
    talk.held = { initialize: answers.opened };
    await typeAtEnd("\ndoor ");
    const before = talk.told;
    talk.cut();
    await page.keyboard.type("D");
    await page.waitForSelector("#state.gone");
    await page.keyboard.type("1");
    await until("it begins anew", () => talk.told !== before && talk.told.includes("initialize"));
    await page.keyboard.type("2");
    assert.deepEqual(talk.told, ["initialize"], "nothing is told or asked before it has begun");
    answers.open();
    talk.held = {};
    await until("the server has it", () => known("a.wall") === "// a.wall\n// one two\ndoor D12");
    await page.locator("#rows", { hasText: "a.wall:3" }).waitFor();
    await word.waitFor({ state: "detached" });
    await undoTo("// a.wall\n// one two");
    await until("here and there", () => known("a.wall") === "// a.wall\n// one two");

    // what the server before this one gave for colours means nothing to it
    const isColours = (method) => method && method.includes("/semanticTokens/");
    const colours = () => talk.told.find(isColours);
    const unanswered = () => talk.told.filter(isColours).length - talk.answered.filter(isColours).length;
    await look();
    await until("colours are known", () => colours() && unanswered() === 0);
    const second = talk.told;
    talk.cut();
    await until("it begins anew and asks for colours", () => talk.told !== second && colours());
    assert.equal(colours(), "textDocument/semanticTokens/full");
  },

  async "a save whose answer is late is not taken for another's"() {
    await typeAtEnd(" three");
    const late = await hold("**/file?*", (request) => request.method() === "PUT");
    await page.keyboard.press("Control+s");
    await late.made;
    assert.equal(disk("a.wall"), "// a.wall\n// one two three");
    const undone = "// a.wall\n// one two";
    await undoTo(undone);
    await look();
    assert.equal(await shown(), undone);
    await late.go();
    await until("what was undone can be saved", enabled);
    await page.keyboard.press("Control+s");
    await until("saved", () => disk("a.wall") === undone);
  },

  async "what another saved meanwhile is shown once nothing is typed"() {
    await typeAtEnd(" mine");
    put("a.wall", "// another's\n");
    await look();
    assert.match(await shown(), / mine$/);
    await undoTo("// a.wall\n// one two");
    await until("what the disk has", async () => (await shown()) === "// another's\n");
  },

  async "a click is not lost on a list that changes under it"() {
    const { x, y, height } = await row("b.wall").boundingBox();
    await page.mouse.move(x + 30, y + height / 2);
    await page.mouse.down();
    put("z.wall", "");
    await row("z.wall").waitFor();
    await page.evaluate(() => {
      const { monaco } = window;
      const [model] = monaco.editor.getModels().filter(({ uri }) => uri.path.endsWith("/b.wall"));
      model.pushEditOperations([], [{ range: new monaco.Range(1, 1, 1, 1), text: "door " }], () => null);
    });
    await page.getByRole("button", { name: "b.wall, not saved, 1 error" }).waitFor();
    await page.mouse.up();
    await until("open", async () => (await page.locator("#place").innerText()).endsWith(" / b.wall"));
    await undoTo("// b.wall\n");
    unlinkSync(join(folder, "z.wall"));
    await row("z.wall").waitFor({ state: "detached" });
  },

  async "a conflict with one text does not hide what became of another"() {
    await open("a.wall");
    await typeAtEnd("mine");
    let refused = false;
    await page.route("**/files", (route) => (refused ? route.continue() : route.abort()));
    page.on("response", (answer) => (refused ||= answer.status() === 412));
    put("a.wall", "// second\n");
    put("b.wall", "// b anew\n");
    await page.keyboard.press("Control+s");
    await word.filter({ hasText: "changed since it was opened" }).waitFor();
    await until("the other follows", () => known("b.wall") === "// b anew\n");
    await page.unroute("**/files");
  },

  async "only what could be seen is written over"() {
    put("a.wall", "// third\n");
    await choose("Write mine over it");
    await page.getByRole("button", { name: "Compare" }).waitFor();
    await until("it is said", async () => (await word.innerText()).includes("changed since it was opened"));
    assert.equal(disk("a.wall"), "// third\n");
    await choose("Write mine over it");
    await until("written", () => disk("a.wall") === "// another's\nmine");
    // whoever was writing writes on
    await page.keyboard.type("!");
    assert.equal(await shown(), "// another's\nmine!");
    await page.keyboard.press("Control+s");
    await until("saved", () => disk("a.wall") === "// another's\nmine!");
  },

  async "bytes that are no text are never written over"() {
    const bytes = Buffer.from([0x2f, 0x2f, 0xff, 0x0a]);
    put("a.wall", bytes);
    await until("read only", readOnly);
    await typeAtEnd("lost");
    await page.keyboard.press("Control+s");
    assert.deepEqual(readFileSync(join(folder, "a.wall")), bytes);
    put("a.wall", "// text again\n");
    await until("edited again", async () => !(await readOnly()));
    assert.equal(await shown(), "// text again\n");
  },

  async "line ends are the disk's"() {
    put("a.wall", "// one\r\n// two\r\n");
    await until("both lines", async () => (await shown()) === "// one\r\n// two\r\n");
    await typeAtEnd("// three\n");
    await until("told", () => known("a.wall") === "// one\r\n// two\r\n// three\r\n");
    await page.keyboard.press("Control+s");
    await until("saved", () => disk("a.wall") === "// one\r\n// two\r\n// three\r\n");
    put("b.wall", "// one\r\n// two\n// three\u2028\n");
    await until("followed", () => known("b.wall")?.includes("three"));
    await open("b.wall");
    await word.filter({ hasText: "end in more than one way" }).waitFor();
    await choose("Close");
    await open("a.wall");
  },

  async "the server has what is seen, after any edits"() {
    await page.evaluate(async () => {
      const { monaco } = window;
      const [editor] = monaco.editor.getEditors();
      const model = editor.getModel();
      let state = 7;
      const upTo = (most) => (state = (state * 48271) % 2147483647) % most;
      const parts = ["x", "\n", "\r\n", "\u{1d11e}", "{ ", "a\nb"];
      for (let round = 0; round < 300; round++) {
        const cursors = Array.from({ length: 1 + upTo(3) }, () => {
          const at = model.getPositionAt(upTo(model.getValueLength() + 1));
          const to = model.getPositionAt(model.getOffsetAt(at) + upTo(4));
          return new monaco.Selection(at.lineNumber, at.column, to.lineNumber, to.column);
        });
        editor.setSelections(cursors);
        const way = upTo(6);
        if (way === 0) {
          await model.undo();
        } else if (way === 1) {
          await model.redo();
        } else {
          editor.trigger("keyboard", "type", { text: parts[upTo(parts.length)] });
        }
      }
    });
    const text = await shown();
    await until("the same", () => known("a.wall") === text);
    await page.keyboard.press("Control+s");
    await until("saved", () => disk("a.wall") === text);
  },

  async "a text whose file is gone is kept as long as it is wanted"() {
    await typeAtEnd("kept");
    const kept = await shown();
    await open("hall/a.wall");
    await open("hall/b.wall");
    unlinkSync(join(folder, "a.wall"));
    rmSync(join(folder, "hall"), { recursive: true });
    // the one in which nothing was typed, and that is not shown, goes
    await row("hall/a.wall").waitFor({ state: "detached" });
    await until("closed", () => known("hall/a.wall") === undefined);
    await word.filter({ hasText: "“hall/b.wall” is no longer in the folder" }).waitFor();
    assert.match(await row("hall/b.wall").getAttribute("aria-label"), /no longer in the folder, not saved/);
    await done("a folder that is gone");
    await choose("Write it anew");
    await word.filter({ hasText: "Make the folder first" }).waitFor();
    mkdirSync(join(folder, "hall"));
    await choose("Try again");
    await until("written", () => existsSync(join(folder, "hall/b.wall")) && disk("hall/b.wall") === "// hall/b.wall\n");
    await until("and known so", async () => !(await enabled()));
    // what was typed can still be reached
    await open("a.wall");
    assert.equal(await shown(), kept);
    await word.filter({ hasText: "“a.wall” is no longer in the folder" }).waitFor();
    // and where it comes back, that is no longer said
    put("a.wall", "// back\n");
    await word.waitFor({ state: "detached" });
    unlinkSync(join(folder, "a.wall"));
    await word.filter({ hasText: "“a.wall” is no longer in the folder" }).waitFor();
    assert.equal(await shown(), kept);
    await page.keyboard.press("Control+s");
    await word.filter({ hasText: "was deleted since it was opened" }).waitFor();
    // the word can be reached by the keyboard
    await page.keyboard.press("F6");
    await page.keyboard.press("F6");
    await page.keyboard.press("F6");
    assert.equal(await page.evaluate(() => document.activeElement.textContent), "Write it anew");
    await page.keyboard.press("Enter");
    await until("written anew", () => existsSync(join(folder, "a.wall")) && disk("a.wall") === kept);
    await look();
    unlinkSync(join(folder, "a.wall"));
    await word.filter({ hasText: "no longer in the folder" }).waitFor();
    await choose("Throw it away");
    await row("a.wall").waitFor({ state: "detached" });
    await page.locator("#empty").waitFor();
    assert.equal(known("a.wall"), undefined);
  },

  async "a name is changed everywhere or nowhere"() {
    await open("ferry-terminal/east.wall");
    await page.evaluate(() => window.monaco.editor.getEditors()[0].focus());
    await page.keyboard.press("Control+Home");
    await page.keyboard.type("// not saved\n");
    await open("catalog/captured.wall");
    const answer = gate();
    const rename = async (name) => {
      await page.evaluate(() => {
        const [editor] = window.monaco.editor.getEditors();
        const [{ range }] = editor.getModel().findMatches("system captured-6", false, false, true, null, false);
        editor.setPosition({ lineNumber: range.startLineNumber, column: range.endColumn });
        editor.focus();
      });
      await page.keyboard.press("F2");
      const box = page.locator(".rename-box input");
      await box.waitFor();
      await box.fill(name);
      await page.keyboard.press("Enter");
    };
    talk.held = { "textDocument/rename": answer.opened };
    await rename("late-1");
    await until("asked", () => talk.told.includes("textDocument/rename"));
    await page.evaluate(() => {
      const { monaco } = window;
      const other = monaco.editor.getModels().find(({ uri }) => uri.path.endsWith("east.wall"));
      const range = new monaco.Range(1, 1, 1, 1);
      other.pushEditOperations([], [{ range, text: "// moved on, " }], () => null);
    });
    answer.open();
    talk.held = {};
    await word.filter({ hasText: "moved on" }).waitFor();
    assert.ok(!known("catalog/captured.wall").includes("late-1"));
    await rename("early-1");
    const users = ["catalog/captured.wall", "ferry-terminal/east.wall", "tower/north.wall"];
    await until("changed everywhere", () => users.every((path) => known(path)?.includes("system early-1")));
    assert.match(known("ferry-terminal/east.wall"), /^\/\/ moved on, \/\/ not saved\n/);
    await page.evaluate(() => window.monaco.editor.getModels().forEach((model) => model.undo()));
    await until("taken back everywhere", () => !users.some((path) => known(path).includes("early-1")));
  },

  async "why a new wall cannot be made is said"() {
    await choose("New wall");
    const asked = page.getByRole("textbox", { name: "Its file" });
    for (const [name, why] of [["a:b", /holds no “:”/], ["none/x", /no such folder/], ["x".repeat(300), /too long/i]]) {
      await asked.fill(name);
      await page.keyboard.press("Enter");
      await page.locator("dialog [role=alert]").filter({ hasText: why }).waitFor();
    }
    await done("a name that is too long");
    await asked.fill("hall/\u00fc 1#2%3");
    await page.keyboard.press("Enter");
    await until("made", () => existsSync(join(folder, "hall/\u00fc 1#2%3.wall")));
    await until("open", () => known("hall/\u00fc 1#2%3.wall") === "");
  },
};

await driven({ browser, page, wrong, pictures }, async () => {
  for (const [what, step] of Object.entries(all)) {
    await step();
    await done(what);
  }
  assert.deepEqual(foreign, [], "nothing is asked of another machine");
  // the browser itself tells of requests that were refused or cut off
  const unseen = wrong.filter((said) => !/status of (403|404|412)|ERR_FAILED|WebSocket/.test(said));
  assert.deepEqual(unseen, [], "nothing goes wrong unseen");
  console.log("kept, followed, told");
});
