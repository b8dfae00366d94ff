// Lays the extension out in target/extension, with the jar inside, and packs it as a .vsix.
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";

const OUT = "target/extension";
const VSIX = "target/mullwright.vsix";
const JAR = process.env.MULLWRIGHT_JAR ?? "../../language-server/target/mullwright.jar";

if (!existsSync(JAR)) {
  console.error(`There is no ${JAR}: run 'mvn -q -DskipTests package' in the root first.`);
  process.exit(2);
}
rmSync(OUT, { recursive: true, force: true });
mkdirSync(`${OUT}/server`, { recursive: true });
await import("./bundle.mjs");
for (const part of ["README.md", "CHANGELOG.md", "icon.png", "language-configuration.json", "syntaxes", "snippets"]) {
  cpSync(part, `${OUT}/${part}`, { recursive: true });
}
cpSync("../../LICENSE", `${OUT}/LICENSE`);
cpSync(JAR, `${OUT}/server/mullwright.jar`);
// what only building needs stays behind
const manifest = JSON.parse(readFileSync("package.json", "utf8"));
for (const part of ["private", "scripts", "dependencies", "devDependencies"]) {
  delete manifest[part];
}
manifest.files = [
  "dist",
  "server",
  "snippets",
  "syntaxes",
  "language-configuration.json",
  "README.md",
  "CHANGELOG.md",
  "icon.png",
  "LICENSE",
];
writeFileSync(`${OUT}/package.json`, `${JSON.stringify(manifest, null, 2)}\n`);

const vsce = "node_modules/@vscode/vsce/vsce";
const packed = spawnSync(
  process.execPath,
  [`../../${vsce}`, "package", "--no-dependencies", "--allow-missing-repository", "--out", `../../${VSIX}`],
  { cwd: OUT, stdio: "inherit" },
);
if (packed.status !== 0) {
  process.exit(packed.status ?? 1);
}
console.log(`${VSIX}: ${(statSync(VSIX).size / 1e6).toFixed(1)} MB`);
