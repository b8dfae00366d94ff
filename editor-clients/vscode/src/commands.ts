/** The names of what the extension offers; those of the server's own commands are the server's. */
export const SHOW_PREVIEW = "mullwright.showPreview";
export const MOVE_LINE = "mullwright.moveGridLine";
export const CHECK = "mullwright.checkWorkspace";
export const RUN = "mullwright.runServerCommand";
export const RESTART = "mullwright.restartServer";
export const SHOW_LOG = "mullwright.showLog";
export const MENU = "mullwright.showMenu";

/** The server's command that answers with the address of the live drawing. */
export const SERVER_PREVIEW = "mullwright.preview";

/** The server's command that moves a grid line by a length it is given. */
export const SERVER_MOVE_LINE = "mullwright.moveLine";

/** A server's command for people: `mullwright.mark-ledger` is "Mark ledger". */
export function title(command: string): string {
  const words = command
    .replace(/^mullwright\./, "")
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/[-._]+/g, " ")
    .toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The text of an answer: words, or a title with its lines and the caution that goes with them. */
export function words(answer: unknown): string | undefined {
  if (typeof answer === "string") {
    return answer.trim() === "" ? undefined : `${answer.trimEnd()}\n`;
  }
  if (typeof answer !== "object" || answer === null || !("title" in answer)) {
    return undefined;
  }
  const { title: heading, lines = [], caution } = answer as Record<string, unknown>;
  const parts = [String(heading), (lines as unknown[]).join("\n"), caution ? String(caution) : ""];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

/** An answer in one line, for a notice: its title, then what follows from it. */
export function sentence(answer: unknown): string | undefined {
  return words(answer)?.trimEnd().replace(/\n+/, ": ").replace(/\n+/g, " ");
}
