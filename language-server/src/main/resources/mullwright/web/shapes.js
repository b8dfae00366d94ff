// The protocol's shapes as Monaco's, and back: Monaco counts lines and columns from 1.

export const position = ({ lineNumber, column }) => ({ line: lineNumber - 1, character: column - 1 });

export const range = (r) => ({
  start: { line: r.startLineNumber - 1, character: r.startColumn - 1 },
  end: { line: r.endLineNumber - 1, character: r.endColumn - 1 },
});

export const toPosition = ({ line, character }) => ({ lineNumber: line + 1, column: character + 1 });

export const toRange = ({ start, end }) => ({
  startLineNumber: start.line + 1,
  startColumn: start.character + 1,
  endLineNumber: end.line + 1,
  endColumn: end.character + 1,
});

/** Words of the server: Markdown, or plain ones that are shown as they are. */
export function toMarkdown(words) {
  if (words === undefined || words === null) {
    return undefined;
  }
  if (typeof words === "object" && words.kind === "markdown") {
    return { value: words.value };
  }
  const plain = typeof words === "string" ? words : words.value;
  return { value: plain.replace(/[\\`*_{}[\]()#+\-.!<>|~]/g, "\\$&").replace(/\n/g, "  \n") };
}

export const plainWords = (words) => (typeof words === "string" ? words : words.value);

export const toTextEdit = ({ range: where, newText }) => ({ range: toRange(where), text: newText });

/**
 * All edits of a workspace edit as `{ uri, version, edits }`, the edits still the protocol's; the
 * version is that of the text they are made for, null if it may be any.
 */
export function editsByFile(edit) {
  const files = (edit.documentChanges ?? [])
    .filter((change) => change.textDocument)
    .map(({ textDocument: { uri, version = null }, edits }) => ({ uri, version, edits }));
  for (const [uri, edits] of Object.entries(edit.changes ?? {})) {
    files.push({ uri, version: null, edits });
  }
  return files;
}

export const overlaps = (a, b) =>
  !before(a.end, b.start) && !before(b.end, a.start);

const before = (a, b) => a.line < b.line || (a.line === b.line && a.character < b.character);
