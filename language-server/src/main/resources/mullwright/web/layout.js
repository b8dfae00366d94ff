// The one layout of the text: all of it, a stretch, or as it is typed.
import { position, range, toTextEdit } from "./shapes.js";

export function register({ monaco, session }) {
  const { capabilities } = session;
  const options = ({ tabSize, insertSpaces }) => ({ tabSize, insertSpaces });
  const edits = (answer) => answer?.map(toTextEdit);
  if (capabilities.documentFormattingProvider) {
    monaco.languages.registerDocumentFormattingEditProvider("wall", {
      displayName: "Mullwright",
      provideDocumentFormattingEdits: async (model, asked, token) =>
        edits(await session.about(model, "formatting", { options: options(asked) }, token)),
    });
  }
  if (capabilities.documentRangeFormattingProvider) {
    monaco.languages.registerDocumentRangeFormattingEditProvider("wall", {
      displayName: "Mullwright",
      provideDocumentRangeFormattingEdits: async (model, where, asked, token) => {
        const params = { range: range(where), options: options(asked) };
        return edits(await session.about(model, "rangeFormatting", params, token));
      },
    });
  }
  const typed = capabilities.documentOnTypeFormattingProvider;
  if (typed) {
    monaco.languages.registerOnTypeFormattingEditProvider("wall", {
      autoFormatTriggerCharacters: [typed.firstTriggerCharacter, ...(typed.moreTriggerCharacter ?? [])],
      provideOnTypeFormattingEdits: async (model, at, ch, asked, token) => {
        const params = { position: position(at), ch, options: options(asked) };
        return edits(await session.about(model, "onTypeFormatting", params, token));
      },
    });
  }
}
