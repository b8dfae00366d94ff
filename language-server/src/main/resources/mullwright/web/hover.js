// What stands under the pointer comes to, and why.
import { position, toMarkdown, toRange } from "./shapes.js";

export function register({ monaco, session }) {
  if (!session.capabilities.hoverProvider) {
    return;
  }
  monaco.languages.registerHoverProvider("wall", {
    async provideHover(model, at, token) {
      const hover = await session.about(model, "hover", { position: position(at) }, token);
      if (!hover) {
        return null;
      }
      const contents = [hover.contents].flat().map(toMarkdown);
      return { contents, range: hover.range && toRange(hover.range) };
    },
  });
}
