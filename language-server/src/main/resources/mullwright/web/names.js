// Names: where they are made and used, and how they are changed.
import { MOVED_ON, movedOn, toWorkspaceEdit } from "./edits.js";
import { position, toRange } from "./shapes.js";

const NO_ANSWER = "The server has no answer now, so nothing was changed: ask again.";

export function register(page) {
  const { monaco, session, documents } = page;
  const { capabilities } = session;

  async function places(answer) {
    const found = [answer ?? []].flat().map((place) => ({
      uri: place.targetUri ?? place.uri,
      range: toRange(place.targetSelectionRange ?? place.range),
    }));
    // Monaco shows a glimpse of each, and for that wants the texts to be there
    await documents.models(found.map(({ uri }) => uri));
    return found.map(({ uri, range }) => ({ uri: monaco.Uri.parse(uri), range }));
  }
  const at = (method) => async (model, where, token) =>
    places(await session.about(model, method, { position: position(where) }, token));

  if (capabilities.definitionProvider) {
    monaco.languages.registerDefinitionProvider("wall", { provideDefinition: at("definition") });
  }
  if (capabilities.typeDefinitionProvider) {
    monaco.languages.registerTypeDefinitionProvider("wall", {
      provideTypeDefinition: at("typeDefinition"),
    });
  }
  if (capabilities.implementationProvider) {
    monaco.languages.registerImplementationProvider("wall", {
      provideImplementation: at("implementation"),
    });
  }
  if (capabilities.referencesProvider) {
    monaco.languages.registerReferenceProvider("wall", {
      provideReferences: async (model, where, context, token) => {
        const params = { position: position(where), context };
        return places(await session.about(model, "references", params, token));
      },
    });
  }
  if (capabilities.documentHighlightProvider) {
    monaco.languages.registerDocumentHighlightProvider("wall", {
      provideDocumentHighlights: async (model, where, token) => {
        const params = { position: position(where) };
        const found = await session.about(model, "documentHighlight", params, token);
        return found?.map(({ range, kind }) => ({ range: toRange(range), kind: (kind ?? 1) - 1 }));
      },
    });
  }
  if (capabilities.renameProvider) {
    renaming(page);
  }
}

function renaming(page) {
  const { monaco, session } = page;
  monaco.languages.registerRenameProvider("wall", {
    async provideRenameEdits(model, where, newName, token) {
      try {
        const params = { position: position(where), newName };
        const edit = await session.about(model, "rename", params, token);
        if (!edit) {
          return { edits: [], rejectReason: NO_ANSWER };
        }
        const made = await toWorkspaceEdit(page, edit);
        return movedOn(page, edit) ? { edits: [], rejectReason: MOVED_ON } : made;
      } catch (refused) {
        return { edits: [], rejectReason: refused.message };
      }
    },
    async resolveRenameLocation(model, where, token) {
      const nothing = { range: where, text: "", rejectReason: "Nothing here has a name." };
      try {
        const params = { position: position(where) };
        const answer = await session.about(model, "prepareRename", params, token);
        if (!answer) {
          return nothing;
        }
        const range = toRange(answer.range ?? answer);
        return { range, text: answer.placeholder ?? model.getValueInRange(range) };
      } catch (refused) {
        return { ...nothing, rejectReason: refused.message };
      }
    },
  });
}
