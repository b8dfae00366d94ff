// Reads lines with a problem matcher of the manifest, as VS Code does: the patterns of one matcher
// must match lines that follow each other, and what they capture is put together.

export interface Pattern {
  regexp: string;
  file?: number;
  line?: number;
  column?: number;
  severity?: number;
  code?: number;
  message?: number;
}

export interface Matcher {
  name: string;
  severity: string;
  pattern: Pattern[];
}

export interface Problem {
  file: string;
  line: number;
  column: number;
  severity: string;
  code: string;
  message: string;
}

const FIELDS = ["file", "line", "column", "severity", "code", "message"] as const;
const SEVERITIES = ["error", "warning", "info"];

export function problems(matchers: readonly Matcher[], output: string): Problem[] {
  const lines = output.split(/\r?\n/);
  const found: Problem[] = [];
  lines.forEach((_line, at) => {
    for (const matcher of matchers) {
      const problem = read(matcher, lines, at);
      if (problem) {
        found.push(problem);
      }
    }
  });
  return found;
}

function read(matcher: Matcher, lines: readonly string[], from: number): Problem | undefined {
  const captured: Partial<Record<(typeof FIELDS)[number], string>> = {};
  for (const [step, pattern] of matcher.pattern.entries()) {
    const match = new RegExp(pattern.regexp).exec(lines[from + step] ?? "");
    if (!match) {
      return undefined;
    }
    for (const field of FIELDS) {
      const group = pattern[field];
      if (group !== undefined) {
        captured[field] = match[group];
      }
    }
  }
  const severity = captured.severity ?? "";
  return {
    file: captured.file ?? "",
    line: Number(captured.line),
    column: Number(captured.column),
    // a word VS Code does not know falls back to the matcher's own
    severity: SEVERITIES.includes(severity) ? severity : matcher.severity,
    code: captured.code ?? "",
    message: captured.message ?? "",
  };
}
