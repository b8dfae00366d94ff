import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { test } from "node:test";
import { findJava } from "../src/java";
import { thisMachine } from "../src/machine";

const JAR = resolve(process.env.MULLWRIGHT_JAR ?? "../../language-server/target/mullwright.jar");
const snippets: Record<string, { prefix: string; body: string[] }> = JSON.parse(
  readFileSync("snippets/wall.json", "utf8"),
);

/** The text of a snippet whose placeholders are all left as they are. */
function expanded(prefix: string): string {
  const snippet = Object.values(snippets).find((entry) => entry.prefix === prefix);
  assert.ok(snippet, prefix);
  const given = new Map<string, string>();
  return snippet.body
    .join("\n")
    .replace(/\$\{(\d+)(?::([^}]*)|\|([^,|]*)[^}]*)\}/g, (_all, number, words, first) => {
      given.set(number, words ?? first);
      return words ?? first;
    })
    .replace(/\$(\d+)/g, (_all, number) => given.get(number) ?? "");
}

async function check(wall: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "mullwright-"));
  cpSync("../../examples/catalog", join(folder, "catalog"), { recursive: true });
  mkdirSync(join(folder, "new"));
  writeFileSync(join(folder, "new", "new.wall"), wall);
  const java = (await findJava("", thisMachine)).program;
  const run = spawnSync(java, ["-jar", JAR, "check", "--width", "400", "new/new.wall"], {
    cwd: folder,
    encoding: "utf8",
  });
  assert.notEqual(run.status, 2, run.stderr);
  return run.stdout;
}

const UNREAD = /unreadable|unknown-|wrong-unit|count-mismatch/;

test("the snippet of a whole wall is read whole, with the example catalog", async () => {
  assert.doesNotMatch(await check(expanded("wall-file")), UNREAD);
});

test("each statement's snippet is read in its block", async () => {
  const wall = `use "../catalog/captured.wall"
wall East {
  system captured-6
  ${expanded("grid-block")
    .replace("row head", `row R1 at 3'-0" above L1\n  floor L2 at 6'-6"\n  row head`)
    .replace(/\n}$/, `\n  ${expanded("opening-door")}\n}`)}
  members {
    vertical all as mullion
    horizontal all
    ${expanded("splice")}
  }
  anchors {
    ${expanded("dead-load")}
    ${expanded("dead-load-end")}
    ${expanded("wind-load")}  ${expanded("verify")}
  }
}
`;
  assert.doesNotMatch(await check(wall), UNREAD);
  const tower = `wall Tower {\n  grid {\n    lines A..B at 0", 5'-0"\n    ${expanded("floors")}\n    ${expanded("row-repeated")}\n  }\n}\n`;
  assert.doesNotMatch(await check(tower), UNREAD);
});
