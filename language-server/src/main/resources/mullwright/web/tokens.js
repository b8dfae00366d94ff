// Colours by what each word is in its place.

export function register({ monaco, session, refreshes }) {
  const { semanticTokensProvider: offered } = session.capabilities;
  if (!offered) {
    return;
  }
  // a server knows only the answers it gave itself, and numbers them as any other does
  const answering = new WeakMap();
  monaco.languages.registerDocumentSemanticTokensProvider("wall", {
    onDidChange: refreshes.event("workspace/semanticTokens/refresh"),
    getLegend: () => offered.legend,
    async provideDocumentSemanticTokens(model, lastResultId, token) {
      const { wire } = session;
      const delta = lastResultId && offered.full?.delta && answering.get(model) === wire;
      const answer = delta
        ? await session.about(model, "semanticTokens/full/delta", { previousResultId: lastResultId }, token)
        : await session.about(model, "semanticTokens/full", {}, token);
      if (!answer) {
        return null;
      }
      answering.set(model, wire);
      return answer.edits
        ? {
            resultId: answer.resultId,
            edits: answer.edits.map(({ start, deleteCount, data }) => ({
              start,
              deleteCount,
              data: data && new Uint32Array(data),
            })),
          }
        : { resultId: answer.resultId, data: new Uint32Array(answer.data) };
    },
    releaseDocumentSemanticTokens() {},
  });
}
