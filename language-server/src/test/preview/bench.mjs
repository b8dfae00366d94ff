// Measures from an edit leaving the editor to the drawing changed in the browser.
// node bench.mjs JAR FOLDER FILE FROM TO [ROUNDS]: puts TO in the place of FROM and back, so often.
import { chromium } from "playwright-core";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { Editor } from "./editor.mjs";

const [jar, folder, file, from, to, rounds = "200"] = process.argv.slice(2);
const editor = new Editor(jar, resolve(folder));
await editor.begin();
editor.open(pathToFileURL(resolve(file)).href, readFileSync(file, "utf8"));
const { uri } = await editor.ask("workspace/executeCommand", { command: "mullwright.preview", arguments: [] });
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
await page.goto(uri);
await page.waitForFunction(() => document.querySelector("[data-slot=summary]").textContent !== "");

// the page tells when something of its drawing is another and has been painted
await page.exposeFunction("painted", (at) => wake?.(at));
await page.evaluate(() => {
  new MutationObserver(() =>
    requestAnimationFrame(() => setTimeout(() => window.painted(Date.now()))),
  ).observe(document.querySelector("[data-slot=drawing]"), { childList: true });
});
let wake = null;
const taken = [];
for (let round = 0; round < Number(rounds) + 20; round++) {
  await new Promise((rest) => setTimeout(rest, 120));
  const there = round % 2 === 0;
  const painted = new Promise((done) => (wake = done));
  const sent = performance.timeOrigin + performance.now();
  editor.replace(there ? from : to, there ? to : from);
  const at = await painted;
  wake = null;
  // the first rounds are spent on warming up
  if (round >= 20) taken.push(at - sent);
}
taken.sort((a, b) => a - b);
const share = (part) => taken[Math.min(taken.length - 1, Math.floor(part * taken.length))].toFixed(0);
console.log(`${taken.length} edits, ms from the edit to the changed drawing: p50 ${share(0.5)}, p95 ${share(0.95)}, most ${share(1)}`);
await browser.close();
await editor.end();
