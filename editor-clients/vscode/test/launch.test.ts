import assert from "node:assert/strict";
import { test } from "node:test";
import { sentence, title, words } from "../src/commands";
import { archive, check, same, serve } from "../src/launch";

const launch = { java: "/jdk/bin/java", jar: "/ext/server/mullwright.jar", extra: ["-Xmx1g"] };

test("the server is started with its flags, then the user's", () => {
  assert.deepEqual(serve(launch, false), {
    command: "/jdk/bin/java",
    args: [
      "-Xlog:disable",
      "-Xlog:all=warning:stderr",
      "-XX:+UseSerialGC",
      "-XX:TieredStopAtLevel=1",
      "-XX:CICompilerCount=1",
      "-Xmx1g",
      "-jar",
      "/ext/server/mullwright.jar",
      "serve",
    ],
  });
});

test("with an archive its argument file stands in place of the flags", () => {
  assert.deepEqual(serve(launch, true).args, [
    "@/ext/server/mullwright.args",
    "-Xmx1g",
    "-jar",
    "/ext/server/mullwright.jar",
    "serve",
  ]);
});

test("another Java, jar or argument is another launch", () => {
  assert.ok(same(launch, { ...launch, extra: [...launch.extra] }));
  assert.ok(!same(launch, { ...launch, java: "/other/bin/java" }));
  assert.ok(!same(launch, { ...launch, jar: "/other/mullwright.jar" }));
  assert.ok(!same(launch, { ...launch, extra: [] }));
});

test("files with blanks stay one argument each", () => {
  assert.deepEqual(check(launch, ["north wall.wall", "."]).args.slice(1), [
    "-jar",
    "/ext/server/mullwright.jar",
    "check",
    "--width",
    "400",
    "north wall.wall",
    ".",
  ]);
  assert.deepEqual(archive(launch).args, ["-jar", "/ext/server/mullwright.jar", "archive"]);
});

test("a command of the server reads as words", () => {
  assert.equal(title("mullwright.preview"), "Preview");
  assert.equal(title("mullwright.issue-marks"), "Issue marks");
  assert.equal(title("mullwright.showCutList"), "Show cut list");
});

test("an answer of the server reads as text", () => {
  assert.equal(words("done\n\n"), "done\n");
  assert.equal(words({ title: "T", lines: ["a", "b"], caution: "C" }), "T\n\na\nb\n\nC\n");
  assert.equal(words({ title: "T" }), "T\n");
  assert.equal(words({ uri: "http://127.0.0.1:1/" }), undefined);
  assert.equal(words(null), undefined);
  assert.equal(sentence({ title: "Move", lines: ["a.", "b."] }), "Move: a. b.");
  assert.equal(sentence(null), undefined);
});
