// Two texts side by side, in a dialog.

export class Comparison {
  #monaco;
  #dialog = document.createElement("dialog");
  #heading = document.createElement("h2");
  #place = document.createElement("div");
  #editor;

  constructor(monaco) {
    this.#monaco = monaco;
    const close = document.createElement("button");
    close.textContent = "Close";
    close.onclick = () => this.#dialog.close();
    this.#dialog.append(this.#heading, this.#place, close);
    this.#dialog.onclose = () => this.#clear();
    document.body.append(this.#dialog);
  }

  /** Shows them until the dialog is closed. */
  show(title, theirs, mine) {
    const [original, modified] = [theirs, mine].map((text) =>
      this.#monaco.editor.createModel(text, "plaintext"),
    );
    this.#heading.textContent = title;
    this.#dialog.showModal();
    this.#made().setModel({ original, modified });
  }

  // kept once it is made: the lists of other editors lean on the one that was made last
  #made() {
    this.#editor ??= this.#monaco.editor.createDiffEditor(this.#place, {
      readOnly: true,
      originalEditable: false,
      automaticLayout: true,
      minimap: { enabled: false },
      hideUnchangedRegions: { enabled: true },
    });
    return this.#editor;
  }

  #clear() {
    const { original, modified } = this.#editor.getModel();
    this.#editor.setModel(null);
    original.dispose();
    modified.dispose();
  }
}
