// Reads walls with the TextMate grammar, as VS Code does.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadWASM, OnigScanner, OnigString } from "vscode-oniguruma";
import { IGrammar, INITIAL, parseRawGrammar, Registry } from "vscode-textmate";

/** A stretch of a line and its innermost scope. */
export interface Coloured {
  line: number;
  text: string;
  scope: string;
}

const GRAMMAR = "syntaxes/wall.tmLanguage.json";

export async function grammar(): Promise<IGrammar> {
  const wasm = readFileSync(join("node_modules", "vscode-oniguruma", "release", "onig.wasm"));
  await loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new OnigScanner(patterns),
      createOnigString: (text) => new OnigString(text),
    }),
    loadGrammar: async () => parseRawGrammar(readFileSync(GRAMMAR, "utf8"), GRAMMAR),
  });
  const loaded = await registry.loadGrammar("source.wall");
  if (!loaded) {
    throw new Error(`${GRAMMAR} cannot be read`);
  }
  return loaded;
}

/** All stretches but blanks, in order. */
export function colours(of: IGrammar, text: string): Coloured[] {
  const found: Coloured[] = [];
  let state = INITIAL;
  text.split(/\r?\n/).forEach((content, line) => {
    const read = of.tokenizeLine(content, state);
    state = read.ruleStack;
    for (const token of read.tokens) {
      const piece = content.slice(token.startIndex, token.endIndex);
      if (piece.trim() !== "") {
        found.push({ line, text: piece.trim(), scope: token.scopes[token.scopes.length - 1] });
      }
    }
  });
  return found;
}
