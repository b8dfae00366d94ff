package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.check.Severity;
import mullwright.check.Waiting;
import mullwright.derivation.Derivation;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Writes findings for people: grouped by file, with the line of text and carets under the place,
 * the number and its limit, the mend; a summary and the caution at the end.
 *
 * @param width columns a line may take
 */
public record CheckText(int width, Paint paint) {
  /** The column the words of a finding start at. */
  private static final int INDENT = 2;

  /** How many other pieces a finding that stands for many names. */
  private static final int OTHERS_NAMED = 6;

  /** The whole report, ending with a line end. */
  public String write(CheckReport report) {
    StringBuilder out = new StringBuilder();
    for (CheckReport.FileFindings file : report.files()) {
      if (!file.items().isEmpty()) {
        out.append(paint.bold(TextWidth.harmless(file.file()))).append('\n');
        Map<Finding, CheckReport.Item> items = new LinkedHashMap<>();
        file.items().forEach(item -> items.putIfAbsent(item.finding(), item));
        for (FoldedFinding folded : FoldedFinding.fold(List.copyOf(items.keySet()))) {
          out.append('\n');
          write(items.get(folded.shown()), file.units(), out);
          paragraph("", folded.more(OTHERS_NAMED), out);
        }
        out.append('\n');
      }
    }
    for (Waiting waiting : report.waiting()) {
      for (String line : TextWidth.wrap(TextWidth.harmless(waiting.words()), width)) {
        out.append(line).append('\n');
      }
    }
    out.append(paint.bold(summary(report))).append('\n');
    for (String line : TextWidth.wrap(Caution.WORDS, width)) {
      out.append(paint.dim(line)).append('\n');
    }
    return out.toString();
  }

  private void write(CheckReport.Item item, UnitSystem units, StringBuilder out) {
    Finding finding = item.finding();
    String severity = finding.severity().name().toLowerCase(Locale.ROOT);
    out.append(TextWidth.spaces(INDENT))
        .append(paint.severity(finding.severity(), severity))
        .append("  ")
        .append(paint.bold(finding.rule()))
        .append("  ")
        .append(item.spot().words())
        .append('\n');
    excerpt(item, out);
    String piece = finding.piece().isEmpty() ? "" : finding.piece() + ": ";
    paragraph("", piece + finding.what(), out);
    number("measured", finding.measured(), units, out);
    number("limit", finding.limit(), units, out);
    for (CheckReport.RelatedSpot related : item.related()) {
      paragraph("see", related.spot().words() + ": " + related.word(), out);
    }
    if (!finding.mend().isEmpty()) {
      paragraph("mend", finding.mend(), out);
    }
  }

  private void excerpt(CheckReport.Item item, StringBuilder out) {
    Excerpt excerpt = item.excerpt();
    String number = Integer.toString(excerpt.line());
    String lead = TextWidth.spaces(INDENT);
    String gutter = lead + TextWidth.padded(number, 4, true) + " │ ";
    String below = lead + TextWidth.spaces(Math.max(4, number.length())) + " │ ";
    Excerpt.Shown shown = excerpt.shown(Math.max(20, width - TextWidth.of(gutter)));
    out.append(paint.dim(gutter)).append(shown.line()).append('\n');
    String carets = shown.carets();
    int start = carets.indexOf('^');
    out.append(paint.dim(below))
        .append(carets, 0, start)
        .append(paint.severity(item.finding().severity(), carets.substring(start)))
        .append('\n');
    if (excerpt.furtherLines() > 0) {
      int last = excerpt.line() + excerpt.furtherLines();
      out.append(paint.dim(below + "… to line " + last)).append('\n');
    }
  }

  private void number(
      String label, Optional<Derivation> number, UnitSystem units, StringBuilder out) {
    number.ifPresent(
        told ->
            paragraph(
                label,
                told.name() + " = " + QuantityPrinter.both(told.value(), told.kind(), units),
                out));
  }

  /** Words with a label in a column of its own, or across the whole width without one. */
  private void paragraph(String label, String words, StringBuilder out) {
    if (words.isEmpty()) {
      return;
    }
    int indent = INDENT + (label.isEmpty() ? 0 : 10);
    List<String> lines = TextWidth.wrap(TextWidth.harmless(words), Math.max(20, width - indent));
    for (int at = 0; at < lines.size(); at++) {
      if (label.isEmpty() || at > 0) {
        out.append(TextWidth.spaces(indent));
      } else {
        out.append(TextWidth.spaces(INDENT))
            .append(paint.dim(TextWidth.padded(label, indent - INDENT, false)));
      }
      out.append(lines.get(at)).append('\n');
    }
  }

  /** {@code 2 files, 3 walls: 2 errors, 1 warning}; {@code 1 file, 1 wall: nothing found}. */
  static String summary(CheckReport report) {
    List<String> found = new ArrayList<>();
    Stream.of(Severity.values())
        .filter(severity -> report.count(severity) > 0)
        .forEach(severity -> found.add(counted(report.count(severity), severity)));
    return counted(report.files().size(), "file")
        + ", "
        + counted(report.walls(), "wall")
        + ": "
        + (found.isEmpty() ? "nothing found" : String.join(", ", found));
  }

  private static String counted(long count, Severity severity) {
    return severity == Severity.INFORMATION
        ? count + " information"
        : counted(count, severity.name().toLowerCase(Locale.ROOT));
  }

  private static String counted(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
