// Edits a wall in the browser as a drafter would, and holds what is seen against what must be.
// Takes the address of the page, the wall on disk (ferry-terminal/east.wall in a copy of the
// examples) and a folder for pictures of each step.
import assert from "node:assert/strict";
import { appendFileSync, existsSync, readFileSync, unlinkSync } from "node:fs";
import { dirname, join } from "node:path";
import { driven, gate, launch, steps, until, watched } from "./page.mjs";

const [address, wall, pictures] = process.argv.slice(2);
const browser = await launch();
const { page, wrong, foreign } = await watched(browser);
const done = steps(page, pictures);

const line = (text) => page.locator(".view-line", { hasText: text }).first();
const word = (text, of) => line(of).locator("span span", { hasText: text }).first();
const rows = () => page.locator("#rows li");
const mullions = async () => (await line("as mullion").innerText()).replace(/\u00a0/g, " ");

await driven({ browser, page, wrong, pictures }, async () => {
  await page.goto(address);
  await page.getByRole("button", { name: "east.wall" }).click();
  await line("as mullion").waitFor();
  await until("cut lengths stand at the end of the line", async () => /\d'-\d/.test(await mullions()));
  await until("nothing is found", async () => (await page.locator("#summary").innerText()) === "Nothing found");
  const before = await mullions();
  await page.waitForSelector(".view-line .mtk1, .view-line [class*=mtk]");
  await done("a wall and its cut lengths");

  // a gap too small: the splice's length is typed anew
  await page.keyboard.press("Control+f");
  await page.keyboard.type(`gap 5/8"`);
  await page.keyboard.press("Escape");
  await page.keyboard.type(`gap 1/4"`);
  await page.waitForSelector(".squiggly-error");
  await page.keyboard.press("Escape");
  // while it is typed the half of it is found unreadable
  const finding = /splice of vertical B above L2: The gap is 1\/4", it needs/;
  await until("the finding is listed", async () => finding.test((await rows().allInnerTexts()).join("\n")));
  assert.equal(await rows().count(), 1);
  assert.match(await rows().innerText(), finding);
  assert.match(await page.locator("#files [aria-current=true]").innerText(), /1/);
  await until("the cut lengths follow", async () => (await mullions()) !== before);
  await done("a mistake is underlined and listed");

  await word("splice", "gap 1/4").hover();
  const hover = page.locator(".monaco-hover-content", { hasText: "gap needed" });
  await hover.waitFor({ state: "visible" });
  assert.match(await hover.innerText(), /The gap is 1\/4"/);
  await done("hover tells the number and its limit");

  await page.mouse.move(2, 2);
  await word("splice", "gap 1/4").click();
  await page.keyboard.press("Control+.");
  const offer = page.locator(".action-widget .monaco-list-row", { hasText: `Write gap 5/8"` });
  await offer.waitFor();
  await done("a mend is offered");
  await page.keyboard.press("Enter");
  await until("the finding goes", async () => (await rows().count()) === 0);
  await until("the cut lengths are back", async () => (await mullions()) === before);
  await done("the mend is taken and the length is back");

  // completion: a part's name
  await word("jamb", "as jamb").dblclick();
  await page.keyboard.type("mul");
  const suggested = page.locator(".suggest-widget .monaco-list-row");
  await suggested.filter({ hasText: "mullion" }).first().waitFor();
  await done("names are offered while one is typed");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await until("undone", async () => (await line("A, G").innerText()).includes("jamb"));

  // the layout: blanks in excess go
  await word("vertical", "as jamb").click();
  await page.keyboard.press("Home");
  await page.keyboard.type("        ");
  await until("changed", async () => page.locator("#save").isEnabled());
  await page.getByRole("button", { name: "Lay out" }).click();
  await until("laid out", async () => !(await line("as jamb").innerText()).startsWith("            "));
  await done("the text is laid out");

  // saving: what is on the disk is what is seen
  await page.locator("#editor").click({ position: { x: 300, y: 60 } });
  await page.keyboard.press("Control+End");
  await page.keyboard.type("\n// looked over");
  await page.keyboard.press("Control+s");
  await until("saved", () => readFileSync(wall, "utf8").endsWith("// looked over"));
  await until("the page knows", async () => page.locator("#save").isDisabled());

  // the disk changes, and while the page reads it something is typed here: that stays
  const { opened: typed, open: go } = gate();
  const read = new Promise((asked) =>
    page.route("**/file?*", async (route) => {
      asked();
      await typed;
      await route.continue();
    }),
  );
  appendFileSync(wall, " by another");
  await read;
  await page.keyboard.type(" by me");
  const answered = page.waitForResponse((answer) => answer.url().includes("/file?"));
  go();
  await (await answered).finished();
  await page.unroute("**/file?*");
  // time for the page to do with it what it must not
  await new Promise((later) => setTimeout(later, 500));
  assert.match(await line("looked over").innerText(), /looked.over.by.me$/);

  // and nothing is written over what another wrote
  await page.keyboard.press("Control+s");
  await page.waitForSelector("#word:not([hidden])");
  assert.match(await page.locator("#word").innerText(), /changed since it was opened, so nothing was written/);
  assert.ok(readFileSync(wall, "utf8").endsWith("// looked over by another"));
  await done("a conflict with the disk is said");
  await page.getByRole("button", { name: "Compare" }).click();
  const compared = page.locator("dialog .editor.modified .view-line", { hasText: "by me" });
  await until("both texts are seen", async () => {
    const seen = await compared.boundingBox();
    const frame = await page.locator("dialog").boundingBox();
    return seen && frame && seen.y > frame.y && seen.y + seen.height < frame.y + frame.height;
  });
  await done("the disk and mine side by side");
  await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
  await page.getByRole("button", { name: "Take the one on the disk" }).click();
  await until("taken", async () => (await line("looked over").innerText()).includes("by"));
  await until("clean", async () => page.locator("#save").isDisabled());
  // names are offered as before
  await page.keyboard.press("Control+Home");
  await page.keyboard.press("Control+Space");
  await suggested.filter({ hasText: "use" }).first().waitFor();
  await page.keyboard.press("Escape");

  // an outside edit of a clean text shows by itself, and the cursor stays where it is
  await page.locator("#editor textarea, #editor .native-edit-context").first().focus();
  await page.keyboard.press("Control+Home");
  await page.keyboard.press("ArrowDown");
  appendFileSync(wall, ", twice");
  const seen = () =>
    page.evaluate(() => {
      const [editor] = window.monaco.editor.getEditors();
      return { text: editor.getValue(), at: editor.getPosition().lineNumber };
    });
  await until("what another wrote", async () => (await seen()).text.endsWith(", twice"));
  assert.equal((await seen()).at, 2);
  await page.keyboard.press("Control+End");

  // the file is deleted while it is open: its text is not lost
  const whole = readFileSync(wall, "utf8");
  unlinkSync(wall);
  await page.waitForSelector("#word:not([hidden]):has-text('no longer in the folder')");
  await done("a file that is gone");
  await page.getByRole("button", { name: "Write it anew" }).click();
  await until("written anew", () => existsSync(wall) && readFileSync(wall, "utf8") === whole);

  // what a lens says in short, its click says piece by piece
  const lens = page.locator(".codelens-decoration a", { hasText: "10 lengths, carry 36 lites" });
  await lens.click();
  await page.locator("dialog li", { hasText: "vertical B" }).first().waitFor();
  await done("what the mullions carry, piece by piece");
  await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();

  // the definition of a part: the catalog opens
  await word("captured-6", "system captured-6").click();
  await page.keyboard.press("F12");
  await until("the catalog opens", async () => (await page.locator("#place").innerText()).includes("catalog/captured.wall"));
  await done("the part's own lines in the catalog");

  // a new wall, by the keyboard alone
  await page.getByRole("button", { name: "New wall" }).focus();
  await page.keyboard.press("Enter");
  const asked = page.getByRole("textbox", { name: "Its file" });
  await asked.waitFor();
  assert.equal(await asked.inputValue(), "catalog/new.wall");
  await done("a new wall is asked for");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("ferry-terminal/west");
  await page.keyboard.press("Enter");
  const fresh = join(dirname(wall), "west.wall");
  await until("the new wall is on the disk", async () => existsSync(fresh));
  await until("and open", async () => (await page.locator("#place").innerText()).endsWith("west.wall"));
  await page.keyboard.type("door D1");
  await page.getByRole("button", { name: "west.wall, not saved, 1 error" }).waitFor();
  // F6 goes round: findings, tools, files, text
  const focused = () => page.evaluate(() => document.activeElement.closest("#rows, #tools, #files, #editor")?.id);
  for (const part of ["rows", "tools", "files", "editor"]) {
    await page.keyboard.press("F6");
    assert.equal(await focused(), part);
  }
  await page.keyboard.press("Shift+F6");
  assert.match(await page.evaluate(() => document.activeElement.textContent), /west\.wall/);
  await page.keyboard.press("F6");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+s");
  await done("written and left by the keyboard alone");

  // an edit made for a text that has moved on is not done
  const outcomes = await page.evaluate(async () => {
    const { apply } = await import("./edits.js");
    const { monaco } = window;
    const model = monaco.editor.getEditors()[0].getModel();
    const start = { line: 0, character: 0 };
    const edits = [{ range: { start, end: start }, newText: "// put in\n" }];
    const edit = (version) => ({
      documentChanges: [{ textDocument: { uri: model.uri.toString(), version }, edits }],
    });
    const page = { monaco, documents: { models: async () => undefined } };
    const before = model.getValue();
    const outdated = await apply(page, edit(model.getVersionId() - 1));
    const untouched = model.getValue() === before;
    const done = await apply(page, edit(model.getVersionId()));
    const made = model.getValue() === `// put in\n${before}`;
    await model.undo();
    return { outdated, untouched, done, made };
  });
  assert.match(outcomes.outdated, /moved on/);
  assert.deepEqual([outcomes.untouched, outcomes.done, outcomes.made], [true, undefined, true]);

  // one text is made of another by one edit, however they differ
  const failed = await page.evaluate(async () => {
    const { difference } = await import("./difference.js");
    let state = 1;
    const upTo = (most) => (state = (state * 48271) % 2147483647) % most;
    const parts = ["a", "b", "\r", "\n", "\r\n", "\u{1d11e}", "\u{1d11f}", "\ud834", "\u00e9"];
    const some = () => Array.from({ length: upTo(7) }, () => parts[upTo(parts.length)]).join("");
    const torn = (text, at) => /^(\r\n|[\ud800-\udbff][\udc00-\udfff])$/.test(text.slice(at - 1, at + 1));
    for (let round = 0; round < 50_000; round++) {
      const [old, now] = [some(), some()];
      const edit = difference(old, now) ?? { start: 0, end: 0, text: "" };
      const made = old.slice(0, edit.start) + edit.text + old.slice(edit.end);
      if (made !== now || torn(old, edit.start) || torn(old, edit.end)) {
        return JSON.stringify([old, now, edit]);
      }
    }
    return "";
  });
  assert.equal(failed, "");

  await page.emulateMedia({ colorScheme: "dark" });
  await page.getByRole("button", { name: "east.wall" }).click();
  await line("as mullion").waitFor();
  await done("in the dark");

  // a page of half the width and height, as at 200 %: the open file is in sight
  await page.setViewportSize({ width: 680, height: 450 });
  await page.getByRole("button", { name: "captured.wall" }).click();
  await page.getByRole("button", { name: "east.wall" }).click();
  const inSight = () =>
    page.evaluate(() => {
      const list = document.getElementById("files").getBoundingClientRect();
      const row = document.querySelector('#files [aria-current="true"]').getBoundingClientRect();
      return row.top >= list.top && row.bottom <= list.bottom;
    });
  await until("the open file is in sight", inSight);
  // a word of many lines takes room from the list
  await page.evaluate(async () => (await import("./word.js")).say("Something is to be said. ".repeat(12)));
  await until("it still is", inSight);
  await done("enlarged");

  assert.deepEqual(foreign, [], "nothing is asked of another machine");
  // the browser itself tells of the refused save
  const unseen = wrong.filter((said) => !said.includes("412 (Precondition Failed)"));
  assert.deepEqual(unseen, [], "nothing goes wrong unseen");
  assert.equal(wrong.length, 1, "the save over another's text was refused once");
  console.log("edited, mended, saved");
});
