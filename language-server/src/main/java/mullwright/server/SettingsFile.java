package mullwright.server;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.check.Rules;
import mullwright.check.Severities;
import mullwright.syntax.LineTable;
import mullwright.syntax.TextRange;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * The project's own file of settings: what it sets for the editor, and which of its lines set
 * nothing.
 *
 * @param text of the file, "" if there is none
 * @param editor what it sets for the editor
 * @param problems in the order of the text
 */
record SettingsFile(String text, Settings editor, List<Problem> problems) {
  /** No file. */
  static final SettingsFile NONE = new SettingsFile("", Settings.NONE, List.of());

  private static final String CODE = "settings";

  SettingsFile {
    problems = List.copyOf(problems);
  }

  /**
   * A stretch of the text that sets nothing.
   *
   * @param sentence what is wrong and what would be right
   */
  record Problem(TextRange range, String sentence) {}

  static SettingsFile read(String text, Rules rules) {
    Settings editor = Settings.read(text);
    Map<String, List<TextRange>> places = PropertyPlaces.of(text);
    List<Problem> problems = new ArrayList<>();
    for (Severities.Fault fault : Severities.read(text, rules).faults()) {
      problems.add(problem(fault, places));
    }
    for (Severities.Fault fault : editor.faults()) {
      problems.add(problem(fault, places));
    }
    places.forEach((key, lines) -> again(key, lines, LineTable.of(text), problems));
    problems.sort((one, other) -> one.range().start() - other.range().start());
    return new SettingsFile(text, editor, problems);
  }

  /** Of lines with the same key the last one counts. */
  private static Problem problem(Severities.Fault fault, Map<String, List<TextRange>> places) {
    List<TextRange> lines = places.getOrDefault(fault.key(), List.of(new TextRange(0, 0)));
    return new Problem(lines.get(lines.size() - 1), fault.sentence());
  }

  private static void again(
      String key, List<TextRange> lines, LineTable table, List<Problem> problems) {
    int last = lines.get(lines.size() - 1).start();
    for (TextRange line : lines.subList(0, lines.size() - 1)) {
      problems.add(
          new Problem(
              line,
              Severities.FILE
                  + ", “"
                  + key
                  + "” is set again on line "
                  + (table.line(last) + 1)
                  + ", so this line sets nothing. Keep one of them."));
    }
  }

  /** The problems as the client gets them. */
  List<Diagnostic> diagnostics(PositionEncoding encoding) {
    List<Diagnostic> diagnostics = new ArrayList<>();
    LineTable lines = LineTable.of(text);
    for (Problem problem : problems) {
      Range range =
          new Range(
              position(problem.range().start(), lines, encoding),
              position(problem.range().end(), lines, encoding));
      diagnostics.add(
          new Diagnostic(
              range, problem.sentence(), DiagnosticSeverity.Warning, "mullwright", CODE));
    }
    return diagnostics;
  }

  private Position position(int offset, LineTable lines, PositionEncoding encoding) {
    int line = lines.line(offset);
    int start = lines.start(line);
    return new Position(line, encoding.columns(text.substring(start, offset), offset - start));
  }
}
