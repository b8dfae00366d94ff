import assert from "node:assert/strict";
import { test } from "node:test";
import { findJava, javaVersion, Machine, NoJava } from "../src/java";
import { thisMachine } from "../src/machine";

/** A machine with those programs, each with what it prints for its version. */
function machine(
  programs: Record<string, string>,
  environment: Record<string, string> = {},
  platform: NodeJS.Platform = "linux",
): Machine {
  return {
    platform,
    environment,
    isFile: (path) => path in programs,
    versionOf: async (program) => {
      if (programs[program] === "") {
        throw new Error("it does not start");
      }
      return programs[program];
    },
  };
}

// as OpenJDK prints them
const JAVA_8 = 'java version "1.8.0_402"';
const JAVA_11 = 'openjdk version "11.0.22" 2024-01-16';
const JAVA_17 = 'openjdk version "17.0.15" 2025-04-15';
const JAVA_25 = 'openjdk version "25" 2025-09-16';

async function refusal(setting: string, on: Machine): Promise<string> {
  return findJava(setting, on).then(
    (found) => assert.fail(`found ${found.program}`),
    (refused) => {
      assert.ok(refused instanceof NoJava);
      return refused.message;
    },
  );
}

test("versions are read as Java prints them", () => {
  assert.equal(javaVersion(JAVA_8), 8);
  assert.equal(javaVersion(JAVA_11), 11);
  assert.equal(javaVersion(JAVA_17), 17);
  assert.equal(javaVersion(JAVA_25), 25);
  assert.equal(javaVersion('openjdk version "26-ea" 2026-03-17'), 26);
  assert.equal(javaVersion("no such thing"), undefined);
});

test("the setting comes first, as a folder or as the program", async () => {
  const on = machine(
    { "/opt/jdk/bin/java": JAVA_17, "/usr/lib/jvm/25/bin/java": JAVA_25 },
    { JAVA_HOME: "/usr/lib/jvm/25" },
  );
  assert.equal((await findJava("/opt/jdk", on)).program, "/opt/jdk/bin/java");
  assert.deepEqual(await findJava("/opt/jdk/bin/java", on), {
    program: "/opt/jdk/bin/java",
    version: 17,
    from: "The setting mullwright.java.home",
  });
});

test("a setting that names none is said and not passed over", async () => {
  const on = machine({ "/usr/bin/java": JAVA_17 }, { PATH: "/usr/bin" });
  const said = await refusal("/gone", on);
  assert.match(said, /\/gone, and there is no java in its bin folder/);
  assert.match(said, /Mend the setting mullwright\.java\.home/);
});

test("JAVA_HOME comes before PATH, unless it is too old", async () => {
  const programs = { "/a/bin/java": JAVA_25, "/b/bin/java": JAVA_11, "/usr/bin/java": JAVA_17 };
  const path = { PATH: "/nothing:/usr/bin" };
  assert.equal((await findJava("", machine(programs, { ...path, JAVA_HOME: "/a" }))).version, 25);
  assert.equal((await findJava("", machine(programs, { ...path, JAVA_HOME: "/b" }))).version, 17);
  assert.equal((await findJava("", machine(programs, path))).from, "PATH");
});

test("what was looked at is told, with how to mend it", async () => {
  const on = machine(
    { "/old/bin/java": JAVA_8, "/usr/bin/java": "" },
    { JAVA_HOME: "/old", PATH: "/usr/bin" },
  );
  assert.equal(
    await refusal("", on),
    "Mullwright needs Java 17 or later to check walls, and found none: " +
      "JAVA_HOME names /old/bin/java, which is Java 8; " +
      "PATH names /usr/bin/java, which does not start. " +
      "Install one, or name its folder in the setting mullwright.java.home.",
  );
  assert.match(await refusal("", machine({})), /JAVA_HOME is not set; PATH has no java/);
});

test("Windows has its own names", async () => {
  const on = machine(
    { "C:\\Java\\bin\\java.exe": JAVA_17 },
    { Path: "C:\\Windows;C:\\Java\\bin" },
    "win32",
  );
  assert.equal((await findJava("", on)).program, "C:\\Java\\bin\\java.exe");
  assert.equal((await findJava("C:\\Java", on)).program, "C:\\Java\\bin\\java.exe");
});

test("this machine's own Java is found", async () => {
  const found = await findJava("", thisMachine);
  assert.ok(found.version >= 17);
});
