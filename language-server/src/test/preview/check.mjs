// Drives the page in a real browser beside a talk with the server, as a drafter would: edits, looks,
// clicks, goes about by keys. Keeps pictures. Ends with 1 and a sentence where something is wrong.
import { chromium } from "playwright-core";
import assert from "node:assert/strict";
import { mkdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { Editor } from "./editor.mjs";

const [jar, examples, pictures] = process.argv.slice(2).map((path) => resolve(path));
const wall = resolve(examples, "ferry-terminal/east.wall");
const text = readFileSync(wall, "utf8");
mkdirSync(pictures, { recursive: true });

const editor = new Editor(jar, examples);
await editor.begin();
editor.open(pathToFileURL(wall).href, text);
await editor.ask("workspace/executeCommand", { command: "mullwright.preview", arguments: [] });
const shown = await editor.hear((message) => message.method === "window/showDocument");
assert.equal(shown.params.external, true);
const address = shown.params.uri;

const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
const wrong = [];
const asked = [];

async function open(scheme, width) {
  const context = await browser.newContext({ colorScheme: scheme, viewport: { width, height: 900 } });
  const page = await context.newPage();
  page.on("console", (said) => wrong.push(said.text()));
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(address);
  await page.waitForFunction(() => document.querySelector("[data-slot=summary]").textContent !== "");
  return page;
}

const picture = (page, name) => page.screenshot({ path: `${pictures}/${name}.png` });
// a piece may be shown in several layers: itself, its hatch, its mark
const pieces = async (page, word) => [
  ...new Set(await page.$$eval(`#drawing .${word}`, (all) => all.map((piece) => piece.dataset.piece))),
];

try {
  const page = await open("light", 1280);
  await picture(page, "light-1280");

  // an edit redraws what it changes, and leaves every other element alone
  await page.evaluate(() => {
    const looks = (piece) => document.querySelector("#piece-" + piece).outerHTML;
    window.loaded = true;
    window.was = looks("cell-5");
    window.changed = () => looks("cell-5") !== window.was;
    window.touched = new Set();
    new MutationObserver((all) => all.forEach((one) => window.touched.add(one.target.closest("[data-piece]")?.dataset.piece))).observe(
      document.querySelector("[data-slot=drawing]"),
      { childList: true, subtree: true, attributes: true },
    );
  });
  editor.replace("row R5      at 9'-6\"", "row R5      at 9'-0\"");
  await page.waitForFunction(() => window.changed());
  assert.equal(await page.evaluate(() => window.loaded), true, "no reload");
  assert.equal(await page.evaluate(() => window.touched.has("cell-5")), true);
  assert.equal(await page.evaluate(() => window.touched.has("cell-0")), false, "a lite that stays is left alone");

  // a finding stands in the list and on the drawing
  editor.replace("gap 5/8\"", "gap 1/16\"");
  await page.waitForSelector(".finding.error");
  assert.equal(await page.locator("#drawing .pin").count(), 5);
  await picture(page, "finding");
  await page.click(".finding.error button");
  const found = await editor.hear((message) => message.method === "window/showDocument");
  assert.match(editor.text.split("\n")[found.params.selection.start.line], /splice B\.\.F/);
  assert.deepEqual(await pieces(page, "traced"), ["splice-0", "splice-1", "splice-2", "splice-3", "splice-4"]);
  await page.locator("#drawing .pin").first().click();
  assert.equal(await page.evaluate(() => document.activeElement.closest(".finding") !== null), true);

  // a click on a piece goes to its text
  await page.locator("#piece-cell-8").click({ position: { x: 30, y: 12 } });
  const cell = await editor.hear((message) => message.method === "window/showDocument");
  assert.equal(cell.params.uri, editor.uri);
  assert.match(editor.text.split("\n")[cell.params.selection.start.line], /vision V1|spandrel S1/);
  assert.deepEqual(await pieces(page, "chosen"), ["cell-8"]);

  // the cursor of the editor lights what its statement made
  const at = editor.position(editor.text.indexOf("splice B..F") + 2);
  await editor.ask("textDocument/documentHighlight", { textDocument: { uri: editor.uri }, position: at });
  await page.waitForSelector("#drawing .lit");
  assert.equal((await pieces(page, "lit")).length, 5);

  // a row of the schedule lights its pieces, a piece its rows
  await page.click("#tab-schedule");
  await page.locator("#panel-schedule tr[data-pieces]", { hasText: "V2" }).first().click();
  assert.equal((await pieces(page, "traced")).length, 5);
  await picture(page, "schedule");
  await page.locator("#piece-cell-8").click({ position: { x: 30, y: 12 } });
  assert.ok((await page.locator("#panel-schedule tr.chosen").count()) > 0);

  // keys alone: to a piece, to its text, to another tab
  await page.focus("#drawing");
  await page.keyboard.press("Escape");
  await page.keyboard.press("ArrowRight");
  const first = await pieces(page, "chosen");
  await page.keyboard.press("ArrowUp");
  assert.notDeepEqual(await pieces(page, "chosen"), first);
  assert.notEqual(await page.textContent("#chosen"), "");
  editor.heard = [];
  await page.keyboard.press("Enter");
  await editor.hear((message) => message.method === "window/showDocument");
  const active = await page.getAttribute("#drawing", "aria-activedescendant");
  assert.equal(await page.getAttribute("#" + active, "aria-selected"), "true");
  await page.focus("#tab-schedule");
  await page.keyboard.press("ArrowLeft");
  assert.equal(await page.getAttribute("#tab-section", "aria-selected"), "true");
  await picture(page, "section");

  // zoom and pan by keys and wheel, and back
  const box = () => page.getAttribute("#drawing", "viewBox");
  const all = await box();
  await page.focus("#drawing");
  await page.keyboard.press("+");
  await page.keyboard.press("Shift+ArrowLeft");
  assert.notEqual(await box(), all);
  await page.keyboard.press("0");
  assert.equal(await box(), all);
  await page.mouse.move(300, 400);
  await page.mouse.wheel(0, -240);
  await page.waitForFunction((was) => document.querySelector("#drawing").getAttribute("viewBox") !== was, all);
  await page.click("#fit");

  // layers off and on
  await page.click("#layers-menu summary");
  await page.uncheck("#layers [value=dimension]");
  assert.equal(await page.locator("#drawing [data-layer=dimension]").first().isVisible(), false);
  await page.check("#layers [value=dimension]");
  await page.click("#layers-menu summary");

  // diagrams over the chosen vertical
  await page.evaluate(() => document.querySelector("#piece-vertical-3").dispatchEvent(new MouseEvent("click", { bubbles: true })));
  for (const name of ["loads", "moment", "deflection"]) await page.check(`[data-overlay=${name}]`);
  await page.waitForSelector("#drawing .diagram.moment path");
  await page.click("#tab-numbers");
  await page.waitForSelector("#panel-numbers .caution");
  await picture(page, "diagrams");

  // since the last commit, in words at least
  await page.check("#base-on");
  await page.waitForSelector("[data-slot=changes] *");
  await picture(page, "changes");

  // light and dark by the switch
  await page.click("#theme");
  assert.equal(await page.getAttribute("html", "data-theme"), "dark");

  for (const [scheme, width] of [["dark", 1280], ["light", 800], ["dark", 800]]) {
    const other = await open(scheme, width);
    assert.equal(await other.getAttribute("html", "data-theme"), scheme);
    assert.equal(await other.evaluate(() => document.documentElement.scrollWidth > innerWidth), false, "no sideways scrolling");
    await picture(other, `${scheme}-${width}`);
    await other.context().close();
  }

  assert.deepEqual(wrong, [], "the browser has nothing to complain of");
  const outside = asked.filter((url) => !url.startsWith(address));
  assert.deepEqual(outside, [], "nothing is asked of anybody else");

  // when the editor goes, the page says so and keeps the drawing
  await editor.end();
  await page.waitForSelector("#status.trouble");
  assert.ok(await page.locator("#piece-cell-0").count());
  console.log("The page does what it should.");
} finally {
  await browser.close();
  editor.process.kill();
}
