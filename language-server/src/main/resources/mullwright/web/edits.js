// Edits over several files, for Monaco to do or done at once.
import { editsByFile, toRange, toTextEdit } from "./shapes.js";

/** For Monaco, which wants the texts to be there: those that are not are loaded first. */
export async function toWorkspaceEdit({ monaco, documents }, edit) {
  const files = editsByFile(edit);
  await documents.models(files.map(({ uri }) => uri));
  return {
    edits: files.flatMap(({ uri, edits }) => {
      const resource = monaco.Uri.parse(uri);
      const model = monaco.editor.getModel(resource);
      return edits.map((one) => ({
        resource,
        textEdit: toTextEdit(one),
        versionId: model?.getVersionId(),
      }));
    }),
  };
}

/** Does the edits; each text can take its own back. */
export async function apply({ monaco, documents }, edit) {
  const files = editsByFile(edit);
  await documents.models(files.map(({ uri }) => uri));
  const models = files.map(({ uri }) => monaco.editor.getModel(monaco.Uri.parse(uri)));
  if (models.includes(null)) {
    return false;
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
  return true;
}
