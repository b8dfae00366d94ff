// The talk of test/real-editor.sh: what a drafter does with a wall that has a mistake, step by step.
import assert from "node:assert/strict";
import { spawn, spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const HOME = process.env.REAL_EDITOR_HOME;
const VSIX = resolve(process.argv[2]);
const PICTURES = resolve("target/real-editor");
const EDITOR = join(HOME, "editor/node_modules/code-server/out/node/entry.js");
const PATIENCE = 180_000;

const MISTAKE = [`gap 5/8"`, `gap 1/4"`];
const RULE = "splice-gap-too-small";

const { chromium } = createRequire(join(HOME, "x.js"))("playwright-core");

const place = mkdtempSync(join(tmpdir(), "mullwright-editor-"));
const project = join(place, "project");
cpSync(resolve("../../examples"), project, { recursive: true });
const wall = join(project, "ferry-terminal", "east.wall");
writeFileSync(wall, readFileSync(wall, "utf8").replace(...MISTAKE));
rmSync(PICTURES, { recursive: true, force: true });
mkdirSync(PICTURES, { recursive: true });

const folders = ["--user-data-dir", join(place, "user"), "--extensions-dir", join(place, "extensions")];
mkdirSync(join(place, "user", "User"), { recursive: true });
writeFileSync(
  join(place, "user", "User", "settings.json"),
  JSON.stringify({
    "workbench.startupEditor": "none",
    "security.workspace.trust.enabled": false,
    "telemetry.telemetryLevel": "off",
    "files.autoSave": "off",
    "workbench.secondarySideBar.defaultVisibility": "hidden",
    "chat.disableAIFeatures": true,
  }),
);

function freePort() {
  return new Promise((found) => {
    const probe = createServer().listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => found(port));
    });
  });
}

async function until(what, holds) {
  const end = Date.now() + PATIENCE;
  while (Date.now() < end) {
    if (await holds()) {
      return;
    }
    await new Promise((later) => setTimeout(later, 250));
  }
  throw new Error(`waited in vain: ${what}`);
}

const installed = spawnSync(process.execPath, [EDITOR, ...folders, "--install-extension", VSIX], {
  encoding: "utf8",
});
assert.equal(installed.status, 0, installed.stderr);

const port = await freePort();
const editor = spawn(
  process.execPath,
  [EDITOR, ...folders, "--auth", "none", "--bind-addr", `127.0.0.1:${port}`, "--disable-telemetry",
    "--disable-update-check", "--disable-workspace-trust", project],
  { stdio: ["ignore", "pipe", "inherit"] },
);
const browser = await chromium.launch({
  executablePath: "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
let page;
let step = 0;
async function done(what) {
  step += 1;
  const picture = join(PICTURES, `${step}-${what.replace(/[^a-z]+/g, "-")}.png`);
  await page.screenshot({ path: picture });
  console.log(`${step} ${what}: ${picture}`);
}

try {
  await until("the editor listens", async () => {
    try {
      return (await fetch(`http://127.0.0.1:${port}/healthz`)).ok;
    } catch {
      return false; // not yet
    }
  });
  page = await browser.newPage({ viewport: { width: 1440, height: 1100 } });
  page.setDefaultTimeout(PATIENCE);
  await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(project)}`);
  await page.waitForSelector(".monaco-workbench .explorer-folders-view, .part.sidebar");
  await page.keyboard.press("Control+P");
  await page.waitForSelector(".quick-input-widget input");
  await page.keyboard.type("east.wall");
  await page.waitForSelector(".quick-input-list .monaco-list-row:has-text('east.wall')");
  await page.keyboard.press("Enter");
  await page.waitForSelector(".monaco-editor .view-line");
  await page.waitForSelector(".monaco-editor .squiggly-error");
  await page.waitForSelector(".statusbar-item:has-text('Mullwright')");
  await done("the mistake is underlined");

  await page.keyboard.press("Control+Shift+M");
  const row = page.locator(".markers-panel .monaco-list-row", { hasText: RULE });
  await row.first().waitFor();
  assert.match(await row.first().innerText(), /The gap is 1\/4", it needs/);
  await done("problems names the finding");

  await page.keyboard.press("F1");
  await page.keyboard.type("Mullwright: Check All Walls");
  await page.keyboard.press("Enter");
  await page.waitForSelector(".terminal-tabs-entry, .part.panel .terminal");
  await new Promise((later) => setTimeout(later, 8000));
  await done("the check in the terminal");
  await page.keyboard.press("Control+Shift+M");
  await row.first().waitFor();
  assert.equal(await row.count(), 1, "a check neither takes findings away nor doubles them");

  await row.first().dblclick();
  const line = page.locator(".view-line", { hasText: `gap` }).filter({ hasText: "splice" }).first();
  await line.locator("span span", { hasText: "splice" }).first().hover();
  const hover = page.locator(".monaco-hover", { hasText: "The gap is" });
  await hover.waitFor({ state: "visible" });
  await done("hover tells the number and its limit");

  await page.mouse.move(5, 5);
  await line.locator("span span", { hasText: "splice" }).first().click();
  // on a busy machine the list may be gone before it is seen: asked for again
  await until("a mend is offered", async () => {
    await page.keyboard.press("Control+.");
    const offered = page.locator(".action-widget .monaco-list-row").first();
    return offered.waitFor({ timeout: 10_000 }).then(() => true, () => false);
  });
  await done("a mend is offered");
  await page.keyboard.press("Enter");
  await until("the finding goes", async () => (await row.count()) === 0);
  await done("the mend is taken");

  await page.keyboard.press("Control+S");
  await until("the file is saved", () => !readFileSync(wall, "utf8").includes(MISTAKE[1]));
  await done("the wall is saved");
  const checked = spawnSync(
    "java",
    ["-jar", resolve("target/extension/server/mullwright.jar"), "check", wall],
    { cwd: project, encoding: "utf8" },
  );
  assert.ok(!checked.stdout.includes(RULE), checked.stdout);

  const anchor = page.locator(".view-line", { hasText: "dead-load" }).first();
  await anchor.locator("span span", { hasText: "dead-load" }).first().click();
  await page.keyboard.press("Shift+Alt+H");
  await page.waitForSelector(".sidebar .monaco-list-row[aria-level='2']:has-text('vertical')");
  await done("what the anchor carries");
  await page.keyboard.press("Control+Shift+E");
  await anchor.locator("span span", { hasText: "dead-load" }).first().click();

  mkdirSync(join(project, ".vscode"));
  writeFileSync(
    join(project, ".vscode", "settings.json"),
    JSON.stringify({ "mullwright.java.arguments": ["-Xmx1g"] }),
  );
  await page.waitForSelector(".statusbar-item:has-text('Mullwright') .codicon-loading");
  await page.waitForSelector(".statusbar-item:has-text('Mullwright') .codicon-check");
  assert.deepEqual(await page.locator(".notification-toast").allInnerTexts(), []);
  await done("a setting starts the server anew");

  await page.keyboard.press("Control+K");
  await page.keyboard.press("v");
  await page.waitForSelector("iframe.webview, .notifications-toasts .notification-toast");
  await new Promise((later) => setTimeout(later, 5000));
  await done("the drawing at the side");
  console.log("The extension works in a real editor. Look at the pictures.");
} catch (failed) {
  if (page) {
    await page.screenshot({ path: join(PICTURES, "failed.png") });
  }
  throw failed;
} finally {
  await browser.close();
  editor.kill();
  rmSync(place, { recursive: true, force: true });
}
