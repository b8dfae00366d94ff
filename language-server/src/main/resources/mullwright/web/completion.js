// What may be written next.
import { position, toMarkdown, toRange, toTextEdit } from "./shapes.js";

const KINDS = [
  "Text", "Method", "Function", "Constructor", "Field", "Variable", "Class", "Interface", "Module",
  "Property", "Unit", "Value", "Enum", "Keyword", "Snippet", "Color", "File", "Reference", "Folder",
  "EnumMember", "Constant", "Struct", "Event", "Operator", "TypeParameter",
];
const SNIPPET = 2;

export function register({ monaco, session }) {
  const { completionProvider: offered } = session.capabilities;
  if (!offered) {
    return;
  }
  const { CompletionItemKind, CompletionItemInsertTextRule } = monaco.languages;

  function shown(item, defaults, wordRange) {
    const where = item.textEdit?.range ?? item.textEdit?.replace ?? defaults?.editRange;
    const format = item.insertTextFormat ?? defaults?.insertTextFormat;
    return {
      label: item.labelDetails ? { label: item.label, ...item.labelDetails } : item.label,
      kind: CompletionItemKind[KINDS[item.kind - 1] ?? "Text"],
      detail: item.detail,
      documentation: toMarkdown(item.documentation),
      sortText: item.sortText,
      filterText: item.filterText,
      preselect: item.preselect,
      insertText: item.textEdit?.newText ?? item.textEditText ?? item.insertText ?? item.label,
      insertTextRules:
        format === SNIPPET ? CompletionItemInsertTextRule.InsertAsSnippet : undefined,
      range: where ? toRange(where.replace ?? where) : wordRange,
      commitCharacters: item.commitCharacters ?? defaults?.commitCharacters,
      additionalTextEdits: item.additionalTextEdits?.map(toTextEdit),
      told: item,
    };
  }

  monaco.languages.registerCompletionItemProvider("wall", {
    triggerCharacters: offered.triggerCharacters ?? [],
    async provideCompletionItems(model, at, _context, token) {
      const answer = await session.about(model, "completion", { position: position(at) }, token);
      const word = model.getWordUntilPosition(at);
      const wordRange = {
        startLineNumber: at.lineNumber,
        startColumn: word.startColumn,
        endLineNumber: at.lineNumber,
        endColumn: at.column,
      };
      const items = Array.isArray(answer) ? answer : (answer?.items ?? []);
      return {
        suggestions: items.map((item) => shown(item, answer.itemDefaults, wordRange)),
        incomplete: answer?.isIncomplete ?? false,
      };
    },
    ...(offered.resolveProvider && {
      async resolveCompletionItem(item, token) {
        const resolved = await session.wire.ask("completionItem/resolve", item.told, token);
        return resolved
          ? {
              ...item,
              detail: resolved.detail ?? item.detail,
              documentation: toMarkdown(resolved.documentation) ?? item.documentation,
              additionalTextEdits:
                resolved.additionalTextEdits?.map(toTextEdit) ?? item.additionalTextEdits,
            }
          : item;
      },
    }),
  });
}
