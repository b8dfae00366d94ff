import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync, cpSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { test } from "node:test";
import { findJava } from "../src/java";
import { check } from "../src/launch";
import { thisMachine } from "../src/machine";
import { Matcher, problems } from "./problems";

const JAR = process.env.MULLWRIGHT_JAR ?? join("..", "..", "language-server", "target", "mullwright.jar");
const RULES = join("..", "..", "language-server", "src", "test", "resources", "rules");
const matchers: Matcher[] = JSON.parse(readFileSync("package.json", "utf8")).contributes
  .problemMatchers;

interface Said {
  file: string;
  line: number;
  column: number;
  rule: string;
  severity: string;
}

/** What `check` prints as text, and the same findings as it tells them to programs. */
async function both(files: string[], cwd = "."): Promise<{ text: string; said: Said[] }> {
  assert.ok(existsSync(JAR), `there is no ${JAR}: run 'mvn -q -DskipTests package' in the root first`);
  const java = (await findJava("", thisMachine)).program;
  const { command, args } = check({ java, jar: resolve(JAR), extra: [] }, files);
  const text = spawnSync(command, args, { cwd, encoding: "utf8" }).stdout;
  const annotated = spawnSync(command, [...args, "--output", "github"], { cwd, encoding: "utf8" }).stdout;
  const said = [...annotated.matchAll(
    /^::(error|warning|notice) file=([^,]+),line=(\d+),endLine=\d+,col=(\d+),title=([^:]+)::/gm,
  )].map(([, severity, file, line, column, rule]) => ({
    file,
    line: Number(line),
    column: Number(column),
    rule,
    severity: severity === "notice" ? "info" : severity,
  }));
  return { text, said };
}

test("every finding of the rules' walls becomes one problem at its place", async () => {
  const rules = ["splice-gap-too-small", "anchor-end-without-plates", "isolation-overdone", "unused"];
  const { text, said } = await both(rules.map((rule) => join(RULES, rule, "trips.wall")));
  assert.ok(said.length >= rules.length, text);
  const found = problems(matchers, text).map(({ file, line, column, code, severity }) => ({
    file,
    line,
    column,
    rule: code,
    severity,
  }));
  assert.deepEqual(found, said);
});

test("the sentence of a finding is its problem's message", async () => {
  const { text } = await both([join(RULES, "splice-gap-too-small", "trips.wall")]);
  const [problem] = problems(matchers, text);
  assert.match(problem.message, /^splice of vertical B above L2: The gap is 7\/16", it needs /);
});

test("a finding that goes on over several lines is a problem too", async () => {
  const folder = mkdtempSync(join(tmpdir(), "mullwright-"));
  cpSync(RULES, folder, { recursive: true });
  const wall = join(folder, "splice-gap-too-small", "trips.wall");
  const laidOut = readFileSync(wall, "utf8").replace(` gap 7/16"`, ` {\n      gap 7/16"\n    }`);
  writeFileSync(wall, laidOut);
  const { text, said } = await both([wall], folder);
  assert.match(text, /│ … to line \d+\n/);
  const found = problems(matchers, text);
  assert.equal(found.length, said.length, text);
  assert.match(found[0].message, /^splice of vertical B above L2: /);
});
