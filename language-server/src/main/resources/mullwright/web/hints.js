// Cut lengths and glass sizes at the ends of lines.
import { range, toMarkdown, toPosition } from "./shapes.js";

export function register({ monaco, session, refreshes }) {
  const { inlayHintProvider: offered } = session.capabilities;
  if (!offered) {
    return;
  }
  const shown = (hint) => ({
    position: toPosition(hint.position),
    label: typeof hint.label === "string" ? hint.label : hint.label.map(part),
    tooltip: toMarkdown(hint.tooltip),
    paddingLeft: hint.paddingLeft,
    paddingRight: hint.paddingRight,
    kind: hint.kind,
    told: hint,
  });
  const part = ({ value, tooltip }) => ({ label: value, tooltip: toMarkdown(tooltip) });
  monaco.languages.registerInlayHintsProvider("wall", {
    onDidChangeInlayHints: refreshes.event("workspace/inlayHint/refresh"),
    async provideInlayHints(model, where, token) {
      const hints = await session.about(model, "inlayHint", { range: range(where) }, token);
      return { hints: (hints ?? []).map(shown), dispose() {} };
    },
    ...(offered.resolveProvider && {
      async resolveInlayHint(hint, token) {
        const resolved = await session.wire.ask("inlayHint/resolve", hint.told, token);
        return resolved ? { ...hint, ...shown(resolved) } : hint;
      },
    }),
  });
}
