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

/**
 * Does the edits; each text can take its own back.
 * @returns why not, and nothing was done then; undefined if they are done
 */
export async function apply({ monaco, documents }, edit) {
  const files = editsByFile(edit);
  await documents.models(files.map(({ uri }) => uri));
  const models = files.map(({ uri }) => monaco.editor.getModel(monaco.Uri.parse(uri)));
  if (models.includes(null)) {
    return "A file to be edited cannot be opened, so nothing was changed.";
  }
  if (files.some(({ version }, at) => version !== null && version !== models[at].getVersionId())) {
    return "The text has moved on meanwhile, so nothing was changed: ask again.";
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
