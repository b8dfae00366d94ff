// One text the page holds, and what the disk is known to have of it.
import { difference } from "./difference.js";
import { lineEnd, withEnd } from "./ends.js";
import * as folder from "./folder.js";

export class HeldText {
  #monaco;
  #path;
  #version;
  #saved;
  #behind = false;
  #turn = Promise.resolve();
  #busy = 0;
  model;

  /** True if the disk has it no longer. */
  gone = false;

  /** True if the file has bytes that are no text: shown, and not edited. */
  damaged;

  /** True if the file's lines end in more than one way, which is not kept. */
  evened;

  constructor(monaco, path, uri, { text, version, damaged }) {
    this.#monaco = monaco;
    this.#path = path;
    this.#version = version;
    this.damaged = damaged;
    this.model = monaco.editor.createModel(text, path.endsWith(".wall") ? "wall" : "plaintext", uri);
    this.evened = withEnd(text, this.model.getEOL()) !== text;
    this.#saved = this.model.getAlternativeVersionId();
  }

  /** True if it is another than the one that was read or saved last. */
  get isTyped() {
    return this.#saved !== this.model.getAlternativeVersionId();
  }

  /** What is read of the disk and written to it is done in turn, each over the last. */
  #inTurn(task) {
    this.#busy += 1;
    const done = this.#turn.then(task).finally(() => (this.#busy -= 1));
    // the one that waits for it makes its own attempt
    this.#turn = done.catch(() => undefined);
    return done;
  }

  /**
   * Saves.
   *
   * @param over the version it is saved over: the one that was edited, if none is told
   * @throws Conflict if the disk has another; nothing is written then
   */
  save(over) {
    return this.#inTurn(() => this.#write(over ?? this.#version));
  }

  /** Writes it where the disk has no file. */
  writeAnew() {
    return this.#inTurn(() => this.#write(undefined));
  }

  async #write(over) {
    if (this.damaged) {
      throw new Error("it holds bytes that are no text, and those would be lost.");
    }
    const saved = this.model.getAlternativeVersionId();
    this.#version = await folder.save(this.#path, this.model.getValue(), over);
    this.#saved = saved;
    this.gone = false;
    this.evened = false;
  }

  /** Takes what the disk has; what was typed can be had back by undo. */
  takeFromDisk() {
    return this.#inTurn(async () => this.#take(await folder.read(this.#path)));
  }

  #take({ text, version, damaged }) {
    const { model } = this;
    const end = lineEnd(text) ?? model.getEOL();
    const wanted = withEnd(text, end);
    model.pushStackElement();
    if (end !== model.getEOL()) {
      const { LF, CRLF } = this.#monaco.editor.EndOfLineSequence;
      model.pushEOL(end === "\n" ? LF : CRLF);
    }
    const edit = difference(model.getValue(), wanted);
    if (edit) {
      const range = this.#monaco.Range.fromPositions(
        model.getPositionAt(edit.start),
        model.getPositionAt(edit.end),
      );
      model.pushEditOperations([], [{ range, text: edit.text }], () => null);
    }
    model.pushStackElement();
    this.#version = version;
    this.#saved = model.getAlternativeVersionId();
    this.gone = false;
    this.damaged = damaged;
    this.evened = wanted !== text;
  }

  /** The disk has another since. */
  changedOnDisk() {
    this.#behind = true;
    this.gone = false;
  }

  /** The disk has it no longer. */
  goneFromDisk() {
    this.#behind = false;
    this.gone = true;
  }

  /**
   * Takes over what changed on the disk, once nothing is typed here that the disk has not, and
   * nothing is being saved.
   * @returns true if it did
   */
  async follow() {
    return this.#behind && this.#busy === 0 && !this.isTyped && this.#inTurn(() => this.#follow());
  }

  async #follow() {
    this.#behind = false;
    const there = await folder.read(this.#path).catch(() => undefined);
    if (this.model.isDisposed()) {
      return false;
    }
    if (!there || this.isTyped) {
      // it could not be read, or something was typed meanwhile: that stays
      this.#behind = true;
      return false;
    }
    if (there.version === this.#version) {
      return false;
    }
    this.#take(there);
    return true;
  }
}
