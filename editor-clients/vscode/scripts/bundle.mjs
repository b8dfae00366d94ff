// Bundles the extension into one file, the one file that VS Code loads.
import { build } from "esbuild";

await build({
  entryPoints: ["src/extension.ts"],
  outfile: "target/extension/dist/extension.js",
  bundle: true,
  platform: "node",
  target: "node20",
  format: "cjs",
  external: ["vscode"],
  minify: true,
  legalComments: "linked",
});
