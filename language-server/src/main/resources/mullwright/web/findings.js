// What the server finds: underlined in the text, listed below it, counted in the list of files.
import { plainWords, toRange } from "./shapes.js";

const SEVERITIES = ["error", "warning", "information", "hint"];

export class Findings {
  #monaco;
  #documents;
  #byUri = new Map();

  /** Called when there are others. */
  whenChanged = () => {};

  constructor(monaco, documents) {
    this.#monaco = monaco;
    this.#documents = documents;
    // a text that is loaded later shows what was found in it before
    monaco.editor.onDidCreateModel((model) => this.#mark(model));
  }

  take({ uri, diagnostics }) {
    const address = this.#monaco.Uri.parse(uri);
    if (diagnostics.length > 0) {
      this.#byUri.set(address.toString(), diagnostics);
    } else {
      this.#byUri.delete(address.toString());
    }
    const model = this.#monaco.editor.getModel(address);
    if (model) {
      this.#mark(model);
    }
    this.whenChanged();
  }

  /** Nothing is found any more. */
  clear() {
    this.#byUri.clear();
    this.#monaco.editor.getModels().forEach((model) => this.#mark(model));
    this.whenChanged();
  }

  #mark(model) {
    this.#monaco.editor.setModelMarkers(model, "mullwright", this.of(model.uri).map(this.marker));
  }

  /** As the protocol tells them. */
  of(uri) {
    return this.#byUri.get(uri.toString()) ?? [];
  }

  /** As Monaco marks them. */
  marker = (diagnostic) => {
    const { MarkerSeverity: levels } = this.#monaco;
    const page = diagnostic.codeDescription?.href;
    const code = diagnostic.code === undefined ? undefined : String(diagnostic.code);
    return {
      ...toRange(diagnostic.range),
      severity: [levels.Error, levels.Warning, levels.Info, levels.Hint][(diagnostic.severity ?? 1) - 1],
      message: plainWords(diagnostic.message),
      source: diagnostic.source,
      code: page && /^https?:/.test(page) ? { value: code, target: this.#monaco.Uri.parse(page) } : code,
      tags: diagnostic.tags,
      relatedInformation: diagnostic.relatedInformation?.map(({ location, message }) => ({
        resource: this.#monaco.Uri.parse(location.uri),
        message,
        ...toRange(location.range),
      })),
    };
  };

  /** All in files of the folder, those of the file first that is edited. */
  all(currentPath) {
    const rows = [];
    for (const [uri, diagnostics] of this.#byUri) {
      const path = this.#documents.path(this.#monaco.Uri.parse(uri));
      for (const diagnostic of diagnostics) {
        rows.push({
          path,
          severity: SEVERITIES[(diagnostic.severity ?? 1) - 1],
          message: plainWords(diagnostic.message),
          rule: diagnostic.code,
          range: toRange(diagnostic.range),
        });
      }
    }
    const elsewhere = (row) => (row.path === currentPath ? 0 : 1);
    const rank = (row) => SEVERITIES.indexOf(row.severity);
    return rows
      .filter((row) => row.path !== undefined)
      .sort(
        (a, b) =>
          elsewhere(a) - elsewhere(b) ||
          (a.path < b.path ? -1 : a.path > b.path ? 1 : 0) ||
          rank(a) - rank(b) ||
          a.range.startLineNumber - b.range.startLineNumber,
      );
  }
}

/** Draws the list; without an open wall nothing was looked at, and nothing is said to be found. */
export function draw(rows, open, looked) {
  const { summary, list } = elements();
  const counts = SEVERITIES.map((severity) => [severity, rows.filter((row) => row.severity === severity).length]);
  const words = counts
    .filter(([, count]) => count > 0)
    .map(([severity, count]) =>
      severity === "error" || severity === "warning" ? `${count} ${severity}${count === 1 ? "" : "s"}` : `${count} ${severity}`,
    );
  const told = words.length > 0 ? `Findings: ${words.join(", ")}` : looked ? "Nothing found" : "Findings";
  if (summary.textContent !== told) {
    summary.textContent = told;
  }
  // each row stays in its place: whoever is in the list, or clicks on it, is not put out
  while (list.children.length > rows.length) {
    const left = list.lastElementChild.contains(document.activeElement);
    list.lastElementChild.remove();
    if (left) {
      list.lastElementChild?.querySelector("button").focus();
    }
  }
  rows.forEach((row, i) => {
    const button = list.children[i]?.querySelector("button") ?? added(list);
    button.replaceChildren(
      piece(row.severity, row.severity),
      piece(`${row.message}`, "message"),
      piece(`${row.rule ?? ""}  ${row.path}:${row.range.startLineNumber}`, "where"),
    );
    button.onclick = () => open(row.path, row.range);
  });
}

function added(list) {
  const item = document.createElement("li");
  const button = document.createElement("button");
  item.append(button);
  list.append(item);
  return button;
}

function elements() {
  return { summary: document.getElementById("summary"), list: document.getElementById("rows") };
}

function piece(text, className) {
  const span = document.createElement("span");
  span.className = className;
  span.textContent = text;
  return span;
}
