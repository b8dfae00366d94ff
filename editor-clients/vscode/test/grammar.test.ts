import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { colours, grammar } from "./colours";

const EXAMPLES = join("..", "..", "examples");

function walls(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".wall"))
    .map((file) => join(folder, file));
}

/** The scopes of one statement in its block, `text scope` a piece, without the common endings. */
async function scopes(wall: string): Promise<string[]> {
  return colours(await grammar(), wall).map(
    (piece) => `${piece.text} ${piece.scope.replace(/\.wall$/, "")}`,
  );
}

async function inside(block: string, statement: string): Promise<string[]> {
  const all = await scopes(`wall East {\n  ${block} {\n    ${statement}\n  }\n}\n`);
  return all.slice(5, -2);
}

test("every piece of the example walls has a scope of its own", async () => {
  const reads = await grammar();
  const found = walls(EXAMPLES);
  assert.ok(found.length >= 6, `walls in ${EXAMPLES}: ${found.length}`);
  for (const wall of found) {
    const plain = colours(reads, readFileSync(wall, "utf8")).filter(
      (piece) => piece.scope === "source.wall",
    );
    assert.deepEqual(plain, [], wall);
  }
});

test("the examples close every block they open", async () => {
  const reads = await grammar();
  for (const wall of walls(EXAMPLES)) {
    const after = colours(reads, `${readFileSync(wall, "utf8")}\nwall After {\n}\n`);
    const last = after.filter((piece) => piece.text === "wall").pop();
    assert.equal(last?.scope, "keyword.control.statement.wall", wall);
    assert.equal(after.pop()?.scope, "punctuation.section.block.end.wall", wall);
  }
});

test("lengths are one piece, marks straight or pasted", async () => {
  const lengths = [`5'-6 1/2"`, `5'`, `3/8"`, `6.5"`, `6-1/2"`, `5′-6 1/2″`, `-1'-6"`];
  for (const length of lengths) {
    const pieces = await inside("grid", `floor L1 at ${length}`);
    assert.equal(pieces.pop(), `${length} constant.numeric.length`);
  }
});

test("a word is a unit right after a number only", async () => {
  assert.deepEqual(await inside("grid", "lines A..F spaced 5 @ 1500 mm"), [
    "lines keyword.control.statement",
    "A variable.other",
    ".. keyword.operator.range",
    "F variable.other",
    "spaced keyword.control.clause",
    "5 constant.numeric",
    "@ keyword.operator",
    "1500 constant.numeric",
    "mm keyword.other.unit",
  ]);
  assert.deepEqual(await inside("members", "vertical F, C as mm"), [
    "vertical keyword.control.statement",
    "F variable.other",
    ", punctuation.separator",
    "C variable.other",
    "as keyword.control.clause",
    "mm variable.other",
  ]);
});

test("an anchor reads as keyword, names, clauses", async () => {
  assert.deepEqual(
    await inside("anchors", `dead-load B..F at L2 part angle-6 bolted 2 x hex-half isolated by pad`),
    [
      "dead-load keyword.control.statement",
      "B variable.other",
      ".. keyword.operator.range",
      "F variable.other",
      "at keyword.control.clause",
      "L2 variable.other",
      "part keyword.control.clause",
      "angle-6 variable.other",
      "bolted keyword.control.clause",
      "2 constant.numeric",
      "x storage.modifier.joiner",
      "hex-half variable.other",
      "isolated by keyword.control.clause",
      "pad variable.other",
    ],
  );
});

test("a name that only begins like a keyword is a name", async () => {
  assert.deepEqual((await inside("members", "vertical at-grade as all-6")).slice(1), [
    "at-grade variable.other",
    "as keyword.control.clause",
    "all-6 variable.other",
  ]);
});

test("the same word is what its block makes of it", async () => {
  assert.equal((await inside("grid", "face South lines 1..5"))[0], "face keyword.control.statement");
  const part = await scopes(`catalog "C" {\n  profile m {\n    face 2 1/2"\n  }\n}\n`);
  assert.ok(part.includes("face support.type.property"), part.join("\n"));
  const criteria = await inside("criteria", "metal temperature -10 F to 150 F");
  assert.equal(criteria[0], "metal support.type.property");
  assert.ok(criteria.includes("F keyword.other.unit"));
});

test("comments, documentation, allowed findings, remarks", async () => {
  assert.deepEqual(await scopes("/// Seen from the quay."), [
    "/// punctuation.definition.comment",
    "Seen from the quay. comment.line.documentation",
  ]);
  const allowed = await scopes("// allow glass-drift: by others");
  assert.deepEqual(allowed.slice(0, 3), [
    "// punctuation.definition.comment",
    "allow keyword.control.allow",
    "glass-drift entity.name.tag.rule",
  ]);
  const remark = await inside("members", `horizontal all note "as the sketch"`);
  assert.deepEqual(remark.slice(-2), ["note keyword.other.remark", `"as the sketch" string.quoted.double`]);
  const block = await scopes("/* a\n b */");
  assert.ok(block.every((piece) => piece.endsWith(" comment.block")), block.join("\n"));
});

test("a slip costs its line, not the block", async () => {
  const pieces = await inside("grid", `row sill at "2 above L1\n    row head at 4"`);
  assert.equal(pieces.filter((piece) => piece === "row keyword.control.statement").length, 2);
});
