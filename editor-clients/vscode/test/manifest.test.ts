import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import * as names from "../src/commands";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const offered: string[] = manifest.contributes.commands.map(
  (entry: { command: string }) => entry.command,
);
const code = readdirSync("src")
  .map((file) => readFileSync(join("src", file), "utf8"))
  .join("\n");

test("every command of the manifest is one of the code, and the reverse", () => {
  const { SERVER_PREVIEW, SERVER_MOVE_LINE, ...own } = names;
  const named = Object.values(own).filter((value) => typeof value === "string");
  assert.deepEqual([...offered].sort(), named.sort());
  // the client registers the server's commands itself: a name may not be taken twice
  for (const command of [SERVER_PREVIEW, SERVER_MOVE_LINE]) {
    assert.ok(!offered.includes(command), command);
  }
});

test("menus and keys name commands there are", () => {
  const { menus, keybindings } = manifest.contributes;
  for (const entry of [...Object.values(menus).flat(), ...keybindings] as { command: string }[]) {
    assert.ok(offered.includes(entry.command), entry.command);
  }
});

test("every setting is read, and every setting read is in the manifest", () => {
  const settings = Object.keys(manifest.contributes.configuration.properties).map((name) =>
    name.replace(/^mullwright\./, ""),
  );
  const read = [...code.matchAll(/settings\.get<[^>]+>\("([^"]+)"\)/g)].map((match) => match[1]);
  // the client library reads the trace by itself
  assert.deepEqual([...new Set([...read, "trace.server"])].sort(), settings.sort());
});

test("no word that is right has the scope that light themes paint red", () => {
  for (const file of ["package.json", "syntaxes/wall.tmLanguage.json"]) {
    assert.doesNotMatch(readFileSync(file, "utf8"), /"(support\.type\.property-name|invalid)\b/, file);
  }
});

test("the extension wakes for walls", () => {
  assert.deepEqual(manifest.activationEvents, ["onLanguage:wall"]);
});

test("a task names the manifest's problem matchers", () => {
  const matchers: string[] = manifest.contributes.problemMatchers.map(
    (matcher: { name: string }) => `$${matcher.name}`,
  );
  const named = /MATCHERS = \[([^\]]+)\]/.exec(code)?.[1].match(/"[^"]+"/g) ?? [];
  assert.deepEqual(
    named.map((name) => JSON.parse(name)),
    matchers,
  );
});

test("what a task finds never takes the place of what the server finds", () => {
  // the server's findings are kept under the name it gives them, and a task clears its own at its start
  const feature = "../../language-server/src/main/java/mullwright/server/feature/DiagnosticFeature.java";
  const server = /"identifier", "([^"]+)"/.exec(readFileSync(feature, "utf8"))?.[1];
  assert.ok(server);
  for (const matcher of manifest.contributes.problemMatchers) {
    assert.notEqual(matcher.owner, server);
  }
});

test("snippets are whole: each placeholder that is used again has been given", () => {
  const snippets: Record<string, { body: string[] }> = JSON.parse(
    readFileSync("snippets/wall.json", "utf8"),
  );
  for (const [name, { body }] of Object.entries(snippets)) {
    const text = body.join("\n");
    const given = new Set([...text.matchAll(/\$\{(\d+)/g)].map((match) => match[1]));
    for (const [, used] of text.matchAll(/\$(\d+)/g)) {
      assert.ok(used === "0" || given.has(used), `${name}: $${used}`);
    }
  }
});

test("the icon is a picture of 128 by 128 and is packed", () => {
  const picture = readFileSync(manifest.icon);
  // PNG, section 11.2.1: eight bytes of signature, then IHDR with width and height
  assert.equal(picture.toString("latin1", 1, 4), "PNG");
  assert.deepEqual([picture.readUInt32BE(16), picture.readUInt32BE(20)], [128, 128]);
  const packs = readFileSync("scripts/package.mjs", "utf8");
  assert.equal(packs.split(`"${manifest.icon}"`).length - 1, 2, "copied and listed");
});
