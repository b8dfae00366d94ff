// Edits over several files, for Monaco to do or done at once.
import { editsByFile, toRange, toTextEdit } from "./shapes.js";

/** For Monaco, which wants the texts to be there: those that are not are loaded first. */
export async function toWorkspaceEdit({ monaco, documents }, edit) {
  const files = editsByFile(edit);
  await documents.models(files.map(({ uri }) => uri));
  return {
    edits: files.flatMap(({ uri, version, edits }) => {
      const resource = monaco.Uri.parse(uri);
      const model = monaco.editor.getModel(resource);
      return edits.map((one) => ({
        resource,
        textEdit: toTextEdit(one),
        // Monaco leaves a text alone that is another by then
        versionId: version ?? model?.getVersionId(),
      }));
    }),
  };
}

export const MOVED_ON = "The text has moved on meanwhile, so nothing was changed: ask again.";

/** True if one of the texts is another than the one the edits were made for. */
export function movedOn({ monaco }, edit) {
  return editsByFile(edit).some(
    ({ uri, version }) =>
      version !== null && version !== monaco.editor.getModel(monaco.Uri.parse(uri))?.getVersionId(),
  );
}

/**
 * Does the edits; each text can take its own back.
 * @returns why not, and nothing was done then; undefined if they are done
 */
export async function apply(page, edit) {
  const { monaco, documents } = page;
  const files = editsByFile(edit);
  await documents.models(files.map(({ uri }) => uri));
  const models = files.map(({ uri }) => monaco.editor.getModel(monaco.Uri.parse(uri)));
  if (models.includes(null)) {
    return "A file to be edited cannot be opened, so nothing was changed.";
  }
  if (movedOn(page, edit)) {
    return MOVED_ON;
  }
  files.forEach(({ edits }, at) => {
    models[at].pushStackElement();
    models[at].pushEditOperations(
      [],
      edits.map(({ range, newText }) => ({ range: toRange(range), text: newText })),
      () => null,
    );
    models[at].pushStackElement();
  });
  return undefined;
}
