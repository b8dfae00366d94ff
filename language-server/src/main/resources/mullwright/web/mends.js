// Mends and other actions, lenses, and the server's own commands behind them.
import { toWorkspaceEdit } from "./edits.js";
import { overlaps, range, toRange } from "./shapes.js";

const RUN = "mullwright.run";

export function register(page) {
  const { monaco, session } = page;
  monaco.editor.registerCommand(RUN, (_accessor, command) => page.run(command));
  if (session.capabilities.codeActionProvider) {
    actions(page, session.capabilities.codeActionProvider);
  }
  if (session.capabilities.codeLensProvider) {
    lenses(page, session.capabilities.codeLensProvider);
  }
}

const toCommand = (command) =>
  command && { id: RUN, title: command.title, tooltip: command.tooltip, arguments: [command] };

function actions(page, offered) {
  const { monaco, session, findings } = page;
  async function shown(action) {
    // a bare command is an action too
    const command = typeof action.command === "string" ? action : action.command;
    return {
      title: action.title,
      kind: action.kind,
      isPreferred: action.isPreferred,
      disabled: action.disabled?.reason,
      diagnostics: (action.diagnostics ?? []).map(findings.marker),
      edit: action.edit && (await toWorkspaceEdit(page, action.edit)),
      command: toCommand(command),
      told: action,
    };
  }
  monaco.languages.registerCodeActionProvider("wall", {
    async provideCodeActions(model, where, context, token) {
      const asked = range(where);
      const diagnostics = findings
        .of(model.uri)
        .filter((diagnostic) => overlaps(diagnostic.range, asked));
      const params = {
        range: asked,
        context: { diagnostics, triggerKind: context.trigger, ...(context.only && { only: [context.only] }) },
      };
      const answer = await session.about(model, "codeAction", params, token);
      return { actions: await Promise.all((answer ?? []).map(shown)), dispose() {} };
    },
    ...(offered.resolveProvider && {
      async resolveCodeAction(action, token) {
        if (action.edit || action.told.data === undefined) {
          return action;
        }
        const resolved = await session.wire.ask("codeAction/resolve", action.told, token);
        return resolved ? { ...action, ...(await shown(resolved)) } : action;
      },
    }),
  });
}

function lenses({ monaco, session, refreshes }, offered) {
  const shown = (lens) => ({ range: toRange(lens.range), command: toCommand(lens.command), told: lens });
  monaco.languages.registerCodeLensProvider("wall", {
    onDidChange: refreshes.event("workspace/codeLens/refresh"),
    async provideCodeLenses(model, token) {
      const answer = await session.about(model, "codeLens", {}, token);
      return { lenses: (answer ?? []).map(shown), dispose() {} };
    },
    async resolveCodeLens(_model, lens, token) {
      if (lens.command || !offered.resolveProvider) {
        return lens;
      }
      const resolved = await session.wire.ask("codeLens/resolve", lens.told, token);
      return resolved ? { ...lens, ...shown(resolved) } : lens;
    },
  });
}
