// The texts the page holds: loaded when first needed, saved, and kept in step with the disk.
import { difference } from "./difference.js";
import * as folder from "./folder.js";

// kinds of change, LSP FileChangeType
const CHANGED = 2;
const DELETED = 3;

export class Documents {
  #monaco;
  #session;
  #root;
  #held = new Map();
  #loading = new Map();

  /** Called when a text was changed, saved or loaded anew. */
  whenChanged = () => {};

  constructor(monaco, session, root) {
    this.#monaco = monaco;
    this.#session = session;
    this.#root = monaco.Uri.parse(root);
  }

  uri(path) {
    return this.#root.with({ path: `${this.#root.path}/${path}` });
  }

  /** The path below the folder, undefined for what lies elsewhere. */
  path(uri) {
    const start = `${this.#root.path}/`;
    return uri.scheme === "file" && uri.path.startsWith(start) ? uri.path.slice(start.length) : undefined;
  }

  /** The model of a file; loads it if need be. */
  async model(path) {
    const held = this.#held.get(path);
    if (held) {
      return held.model;
    }
    if (!this.#loading.has(path)) {
      this.#loading.set(path, this.#load(path).finally(() => this.#loading.delete(path)));
    }
    return this.#loading.get(path);
  }

  /** The models of the addresses, as far as they are files of the folder. */
  async models(uris) {
    const paths = new Set(uris.map((uri) => this.path(this.#monaco.Uri.parse(uri))));
    paths.delete(undefined);
    await Promise.all([...paths].map((path) => this.model(path).catch(() => undefined)));
  }

  async #load(path) {
    const { text, version, damaged } = await folder.read(path);
    const language = path.endsWith(".wall") ? "wall" : "plaintext";
    const model = this.#monaco.editor.createModel(text, language, this.uri(path));
    this.#held.set(path, { model, version, damaged, saved: model.getAlternativeVersionId() });
    if (language === "wall") {
      this.#session.open(model);
    }
    model.onDidChangeContent(() => this.whenChanged());
    return model;
  }

  isChanged(path) {
    const held = this.#held.get(path);
    return held !== undefined && held.saved !== held.model.getAlternativeVersionId();
  }

  /** True if the file has bytes that are no text: shown, and not edited. */
  isDamaged(path) {
    return this.#held.get(path)?.damaged ?? false;
  }

  get anyChanged() {
    return [...this.#held.keys()].some((path) => this.isChanged(path));
  }

  /**
   * Saves; a conflict is thrown on, with nothing written. One save waits for the other, as it is
   * made over the version that the other wrote.
   */
  save(path) {
    const held = this.#held.get(path);
    const saved = (held.saving ?? Promise.resolve()).then(() => this.#save(path, held));
    // the one that waits for it makes its own attempt
    held.saving = saved.catch(() => undefined);
    return saved;
  }

  async #save(path, held) {
    const saving = held.model.getAlternativeVersionId();
    held.version = await folder.save(path, held.model.getValue(), held.version);
    held.saved = saving;
    this.#session.wire.tell("textDocument/didSave", {
      textDocument: { uri: held.model.uri.toString() },
    });
    this.whenChanged();
  }

  /** Takes what the disk has; what was typed can be had back by undo. */
  async takeFromDisk(path) {
    this.#take(this.#held.get(path), await folder.read(path));
  }

  #take(held, { text, version, damaged }) {
    const edit = difference(held.model.getValue(), text);
    if (edit) {
      const range = this.#monaco.Range.fromPositions(
        held.model.getPositionAt(edit.start),
        held.model.getPositionAt(edit.end),
      );
      held.model.pushStackElement();
      held.model.pushEditOperations([], [{ range, text: edit.text }], () => null);
      held.model.pushStackElement();
    }
    Object.assign(held, { version, damaged, saved: held.model.getAlternativeVersionId() });
    this.whenChanged();
  }

  /** Takes what the disk has if nothing was typed here, not even while the disk was read. */
  async #follow(path) {
    const held = this.#held.get(path);
    const { version } = held;
    // one that goes meanwhile stays as it is here, and saving it says so
    const there = await folder.read(path).catch(() => undefined);
    // what was saved meanwhile is newer than what was read
    const stale = held.version !== version;
    if (there && !stale && there.version !== version && !this.isChanged(path)) {
      this.#take(held, there);
    }
  }

  /** The next save goes over what the disk has now: the user has seen it and wants so. */
  async keepMine(path) {
    this.#held.get(path).version = (await folder.read(path)).version;
    await this.save(path);
  }

  /** Writes a text whose file is gone. */
  async writeAnew(path) {
    this.#held.get(path).version = undefined;
    await this.save(path);
  }

  /** The disk changed: takes over texts that were not edited here, and tells the server. */
  async refresh(changedPaths, gonePaths) {
    for (const path of changedPaths) {
      if (this.#held.has(path) && !this.isChanged(path)) {
        await this.#follow(path);
      }
    }
    const told = (paths, type) => paths.map((path) => ({ uri: this.uri(path).toString(), type }));
    this.#session.wire.tell("workspace/didChangeWatchedFiles", {
      changes: [...told(changedPaths, CHANGED), ...told(gonePaths, DELETED)],
    });
  }
}
