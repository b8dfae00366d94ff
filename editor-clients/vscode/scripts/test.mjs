// Bundles the tests and runs them under Node's own runner; no VS Code is needed.
import { build } from "esbuild";
import { spawnSync } from "node:child_process";
import { readdirSync, rmSync } from "node:fs";

rmSync("target/test", { recursive: true, force: true });
const tests = readdirSync("test").filter((file) => file.endsWith(".test.ts"));
await build({
  entryPoints: tests.map((file) => `test/${file}`),
  outdir: "target/test",
  bundle: true,
  platform: "node",
  target: "node20",
  format: "cjs",
  packages: "external",
  sourcemap: "inline",
});
const run = spawnSync(
  process.execPath,
  ["--enable-source-maps", "--test", ...tests.map((file) => `target/test/${file.replace(/\.ts$/, ".js")}`)],
  { stdio: "inherit" },
);
process.exit(run.status ?? 1);
