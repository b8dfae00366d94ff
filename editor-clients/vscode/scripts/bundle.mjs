// Bundles the extension into one file, the one that VS Code loads, with the licences of what is in it.
import { build } from "esbuild";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";

const OUT = "target/extension/dist";

const built = await build({
  entryPoints: ["src/extension.ts"],
  outfile: `${OUT}/extension.js`,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "cjs",
  external: ["vscode"],
  minify: true,
  legalComments: "none",
  metafile: true,
});

const packages = new Set(
  Object.keys(built.metafile.inputs)
    .map((file) => /^((?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1])
    .filter((folder) => folder !== undefined),
);
const notices = [...packages].sort().map((folder) => {
  const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, "utf8"));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file === undefined || !existsSync(`${folder}/${file}`)) {
    throw new Error(`${name} has no licence file to ship along`);
  }
  return `${name} ${version} (${license})\n\n${readFileSync(`${folder}/${file}`, "utf8").trim()}\n`;
});
writeFileSync(`${OUT}/THIRD-PARTY.txt`, notices.join(`\n${"-".repeat(72)}\n\n`));
