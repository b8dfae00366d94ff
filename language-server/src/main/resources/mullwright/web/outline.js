// The shape of the text: outline, folds, links, growing selections.
import { position, toRange } from "./shapes.js";

export function register({ monaco, session }) {
  const { capabilities } = session;
  if (capabilities.documentSymbolProvider) {
    const shown = (symbol) => ({
      name: symbol.name,
      detail: symbol.detail ?? "",
      kind: symbol.kind - 1,
      tags: symbol.tags ?? [],
      range: toRange(symbol.range),
      selectionRange: toRange(symbol.selectionRange),
      children: symbol.children?.map(shown),
    });
    monaco.languages.registerDocumentSymbolProvider("wall", {
      displayName: "Mullwright",
      provideDocumentSymbols: async (model, token) =>
        (await session.about(model, "documentSymbol", {}, token))?.map(shown),
    });
  }
  if (capabilities.foldingRangeProvider) {
    monaco.languages.registerFoldingRangeProvider("wall", {
      provideFoldingRanges: async (model, _context, token) =>
        (await session.about(model, "foldingRange", {}, token))?.map((fold) => ({
          start: fold.startLine + 1,
          end: fold.endLine + 1,
          kind: fold.kind && new monaco.languages.FoldingRangeKind(fold.kind),
        })),
    });
  }
  if (capabilities.documentLinkProvider) {
    monaco.languages.registerLinkProvider("wall", {
      provideLinks: async (model, token) => ({
        links: ((await session.about(model, "documentLink", {}, token)) ?? []).map((link) => ({
          range: toRange(link.range),
          url: link.target && monaco.Uri.parse(link.target),
          tooltip: link.tooltip,
        })),
      }),
    });
  }
  if (capabilities.selectionRangeProvider) {
    const outwards = (selection) =>
      selection ? [{ range: toRange(selection.range) }, ...outwards(selection.parent)] : [];
    monaco.languages.registerSelectionRangeProvider("wall", {
      provideSelectionRanges: async (model, where, token) => {
        const params = { positions: where.map(position) };
        return (await session.about(model, "selectionRange", params, token))?.map(outwards);
      },
    });
  }
}
