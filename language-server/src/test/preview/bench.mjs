// Measures from an edit leaving the editor to the drawing changed and painted in the browser, on a small
// wall and on a tower; of that the share of the server, until its answer reaches the page; and the work of
// the page's main thread, which other programs of the machine do not change.
// node bench.mjs JAR EXAMPLES [ROUNDS [EDIT]]
import { chromium } from "playwright-core";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { Editor } from "./editor.mjs";

const [jar, examples, rounds = "100", only = ""] = process.argv.slice(2);
const WARM_UP = 16;

// what stands there, what is put in its place and taken back again
const TOWER = "tower/north.wall";
const EDITS = [
  ["ferry: a row", "ferry-terminal/east.wall", "row R5      at 9'-6\"", "row R5      at 9'-0\""],
  ["tower: one anchor", TOWER, "clip all  at sill\n", "clip all  at sill\n    dead-load 5 at L5 offset 1/4\" right\n"],
  ["tower: one lite", TOWER, "vision  V1  rows rail..top\n", "vision  V1  rows rail..top\n    vision  V2  rows L5.rail..L5.top bays 4..5\n"],
  ["tower: a floor's row", TOWER, "row curb    at 1'-0\"", "row curb    at 1'-2\""],
  ["tower: every bay", TOWER, "20 @ 5'-0\"", "20 @ 4'-11\""],
];

const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
console.log("edit                    p50   p95  most ms    of that the server p50   p95    page's work an edit, ms");
for (const [name, file, from, to] of EDITS.filter(([name]) => name.includes(only))) {
  await measure(name, resolve(examples, file), from, to);
}
await browser.close();

async function measure(name, file, from, to) {
  const editor = new Editor(jar, resolve(examples));
  await editor.begin();
  editor.open(pathToFileURL(file).href, readFileSync(file, "utf8"));
  const { uri } = await editor.ask("workspace/executeCommand", { command: "mullwright.preview", arguments: [] });
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  let wake = null;
  // the page tells when something of its drawing is another and has been painted
  await page.exposeFunction("painted", (came, at) => wake?.(came, at));
  await page.addInitScript(() => {
    const heard = EventSource.prototype.addEventListener;
    EventSource.prototype.addEventListener = function (kind, take) {
      heard.call(this, kind, (event) => {
        window.came = performance.timeOrigin + performance.now();
        take(event);
      });
    };
  });
  await page.goto(uri);
  await page.waitForFunction(() => document.querySelector("[data-slot=summary]").textContent !== "");
  await page.evaluate(() => {
    new MutationObserver(() => {
      const came = window.came;
      requestAnimationFrame(() => setTimeout(() => window.painted(came, performance.timeOrigin + performance.now())));
    }).observe(document.querySelector("[data-slot=drawing]"), { childList: true, subtree: true, attributes: true });
  });
  const devices = await page.context().newCDPSession(page);
  await devices.send("Performance.enable", { timeDomain: "threadTicks" });
  const spent = async () =>
    (await devices.send("Performance.getMetrics")).metrics.find(({ name }) => name === "TaskDuration").value * 1000;
  let before = 0;
  const whole = [];
  const served = [];
  for (let round = 0; round < Number(rounds) + WARM_UP; round++) {
    // as quick as a quick typist
    await new Promise((rest) => setTimeout(rest, 150));
    if (round === WARM_UP) before = await spent();
    const there = round % 2 === 0;
    const painted = new Promise((done) => (wake = (came, at) => done({ came, at })));
    const sent = performance.timeOrigin + performance.now();
    editor.replace(there ? from : to, there ? to : from);
    const { came, at } = await painted;
    wake = null;
    if (round >= WARM_UP) {
      whole.push(at - sent);
      served.push(came - sent);
    }
  }
  const work = ((await spent()) - before) / Number(rounds);
  const told = (all, part) => String(share(all, part).toFixed(0)).padStart(6);
  console.log(name.padEnd(22) + told(whole, 0.5) + told(whole, 0.95) + told(whole, 1) + " ".repeat(27) + told(served, 0.5) + told(served, 0.95) + " ".repeat(21) + work.toFixed(0).padStart(6));
  await page.close();
  await editor.end();
}

function share(all, part) {
  all.sort((a, b) => a - b);
  return all[Math.min(all.length - 1, Math.floor(part * all.length))];
}
