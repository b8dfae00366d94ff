// The texts the page holds: loaded when first needed, saved, and kept in step with the disk.
import * as folder from "./folder.js";
import { HeldText } from "./held-text.js";

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
    const text = new HeldText(this.#monaco, path, this.uri(path), await folder.read(path));
    const { model } = text;
    this.#held.set(path, text);
    if (model.getLanguageId() === "wall") {
      this.#session.open(model);
    }
    model.onDidChangeContent(() => this.whenChanged());
    return model;
  }

  /** True if the page has something that the disk has not. */
  isChanged(path) {
    const text = this.#held.get(path);
    return text !== undefined && (text.gone || text.isTyped);
  }

  /** True if the file has bytes that are no text: shown, and not edited. */
  isDamaged(path) {
    return this.#held.get(path)?.damaged ?? false;
  }

  /** True if the file's lines end in more than one way, which is not kept. */
  isEvened(path) {
    return this.#held.get(path)?.evened ?? false;
  }

  get anyChanged() {
    return [...this.#held.keys()].some((path) => this.isChanged(path));
  }

  /** The paths of texts that are here and no longer on the disk. */
  get gone() {
    return [...this.#held.keys()].filter((path) => this.#held.get(path).gone);
  }

  /**
   * Saves.
   *
   * @param over the version it is saved over: the one that was edited, if none is told
   * @throws Conflict if the disk has another; nothing is written then
   */
  async save(path, over) {
    await this.#held.get(path).save(over);
    this.#tellSaved(path);
  }

  /** Writes a text whose file is gone. */
  async writeAnew(path) {
    await this.#held.get(path).writeAnew();
    this.#tellSaved(path);
  }

  #tellSaved(path) {
    this.#session.wire.tell("textDocument/didSave", {
      textDocument: { uri: this.uri(path).toString() },
    });
    this.whenChanged();
  }

  /** Takes what the disk has; what was typed can be had back by undo. */
  async takeFromDisk(path) {
    await this.#held.get(path).takeFromDisk();
    this.whenChanged();
  }

  /** The disk changed: texts that were not edited here follow it, and the server is told. */
  async refresh(changedPaths, gonePaths) {
    const told = (paths, type) => paths.map((path) => ({ uri: this.uri(path).toString(), type }));
    this.#session.wire.tell("workspace/didChangeWatchedFiles", {
      changes: [...told(changedPaths, CHANGED), ...told(gonePaths, DELETED)],
    });
    // one that is being loaded may have been read before
    const loading = [...changedPaths, ...gonePaths].map((path) => this.#loading.get(path));
    await Promise.allSettled(loading);
    changedPaths.forEach((path) => this.#held.get(path)?.changedOnDisk());
    gonePaths.forEach((path) => this.#held.get(path)?.goneFromDisk());
    this.whenChanged();
    await this.follow();
  }

  /** Texts that were edited when the disk changed, and no longer are, follow it too. */
  async follow() {
    const followed = await Promise.all([...this.#held.values()].map((text) => text.follow()));
    if (followed.includes(true)) {
      this.whenChanged();
    }
  }

  /** Lets go of texts whose files are gone and in which nothing was typed, but for the one shown. */
  clear(shown) {
    for (const path of this.gone) {
      if (path !== shown && !this.#held.get(path).isTyped) {
        this.letGo(path);
      }
    }
  }

  /** Lets go of a text, with all that was typed into it. */
  letGo(path) {
    const { model } = this.#held.get(path);
    this.#held.delete(path);
    this.#session.close(model);
    model.dispose();
    this.whenChanged();
  }
}
