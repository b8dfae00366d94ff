package mullwright.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.analysis.wall.NotChecked;
import mullwright.check.Finding;
import mullwright.check.WallFacts;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.derivation.Standing;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cancel;
import mullwright.workspace.FilePlace;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;

/**
 * Tells how the numbers of a wall came about: those of one line of its text, or all defaults it
 * leans on.
 *
 * @param path of the file below the root
 * @param shown the path as shown to the reader
 */
public record Explanation(Snapshot snapshot, String path, String shown, int width, Paint paint) {
  /** Every default the walls of the file lean on, wall by wall, each once. */
  public String defaults() {
    StringBuilder out = new StringBuilder();
    UnitSystem units = FileUnits.of(snapshot.file(path));
    List<WallFacts> walls = snapshot.reading(path).map(Reading::walls).orElse(List.of());
    for (WallFacts wall : walls) {
      out.append(paint.bold("Wall " + wall.wall().name() + ": defaults it leans on")).append('\n');
      List<Defaults.Taken> taken = new ArrayList<>(Defaults.of(wall.layout(), units));
      taken.addAll(computed(wall, units, taken));
      if (taken.isEmpty()) {
        out.append("  none: everything it needs is stated\n");
      }
      String of = "";
      for (Defaults.Taken one : taken) {
        if (!one.of().equals(of)) {
          of = one.of();
          out.append("\n  ").append(TextWidth.harmless(of)).append('\n');
        }
        paragraph(4, one.name() + " = " + one.value() + "  (" + one.source() + ")", out);
      }
      out.append('\n');
    }
    if (walls.isEmpty()) {
      paragraph(0, shown + " holds no wall, so nothing leans on a default here.", out);
    }
    caution(out);
    return out.toString();
  }

  /** Defaults only the traces of lengths and of findings know of. */
  private List<Defaults.Taken> computed(
      WallFacts wall, UnitSystem units, List<Defaults.Taken> known) {
    Set<String> told = new LinkedHashSet<>();
    known.forEach(one -> told.add(one.value() + one.source()));
    Map<String, Defaults.Taken> more = new LinkedHashMap<>();
    Traces traces = new Traces(wall.layout());
    List<Derivation> numbers = new ArrayList<>();
    traces.all().forEach(piece -> numbers.addAll(traces.of(piece)));
    for (Finding finding : snapshot.findings(path, Cancel.NEVER)) {
      finding.measured().ifPresent(numbers::add);
      finding.limit().ifPresent(numbers::add);
    }
    for (Derivation number : numbers) {
      for (Derivation taken : number.defaults()) {
        String value = QuantityPrinter.both(taken.value(), taken.kind(), units);
        String source = taken.source().map(word -> word.words()).orElse("");
        if (!told.contains(value + source)) {
          more.putIfAbsent(
              taken.name() + value + source,
              new Defaults.Taken("lengths and checks", taken.name(), value, source));
        }
      }
    }
    return List.copyOf(more.values());
  }

  /**
   * What stands in a line and how its numbers came about; empty if the file has no such line.
   *
   * @param line from 1
   */
  public Optional<String> line(int line) {
    ParsedFile file = snapshot.file(path).orElseThrow();
    LineTable lines = file.lines();
    if (line < 1 || line > lines.count()) {
      return Optional.empty();
    }
    int start = lines.start(line - 1);
    int end = lines.end(line - 1);
    String text = file.text().substring(start, end);
    int first = start + text.length() - text.stripLeading().length();
    int last = Math.max(first, start + text.stripTrailing().length());
    StringBuilder out = new StringBuilder();
    out.append(paint.bold(TextWidth.harmless(shown) + ":" + line)).append('\n');
    Excerpt.Shown excerpt =
        new Excerpt(line, text, first - start, last - start, 0).shown(width - 4);
    out.append("    ").append(excerpt.line().strip()).append('\n');
    int segment = file.segmentAt(first);
    int begin = file.segmentStart(segment);
    TextRange range = new TextRange(first - begin, Math.max(first, last) - begin);
    statement(file.segments().get(segment), range)
        .ifPresent(statement -> paragraph(2, statement.kind().meaning(), out));
    int before = out.length();
    Origin place = new Origin(path, segment, range);
    UnitSystem units = FileUnits.of(Optional.of(file));
    findings(line, units, out);
    for (WallFacts wall : snapshot.reading(path).map(Reading::walls).orElse(List.of())) {
      pieces(wall, place, units, out);
    }
    if (out.length() == before) {
      out.append("\n  Nothing that is measured or counted follows from this line alone.\n");
    }
    out.append('\n');
    caution(out);
    return Optional.of(out.toString());
  }

  /** The innermost statement that begins in the range. */
  private static Optional<Statement> statement(Segment segment, TextRange range) {
    return statement(segment.statements(), range);
  }

  private static Optional<Statement> statement(List<Statement> statements, TextRange range) {
    for (Statement statement : statements) {
      if (range.start() <= statement.range().start() && statement.range().start() < range.end()) {
        return Optional.of(statement).filter(found -> !found.kind().meaning().isEmpty());
      }
      if (statement.range().touches(range.start()) && statement.block().isPresent()) {
        return statement(statement.block().get().statements(), range);
      }
    }
    return Optional.empty();
  }

  private void findings(int line, UnitSystem units, StringBuilder out) {
    List<Finding> findings = snapshot.findings(path, Cancel.NEVER);
    LineTable lines = snapshot.file(path).orElseThrow().lines();
    for (Finding finding : findings) {
      Optional<FilePlace> place =
          snapshot.place(finding.origin()).filter(found -> found.path().equals(path));
      if (place.isPresent() && lines.line(place.get().start()) == line - 1) {
        out.append("\n  ").append(paint.severity(finding.severity(), finding.rule())).append('\n');
        paragraph(2, finding.message(), out);
        finding.measured().ifPresent(number -> trace(number, units, out));
        finding.limit().ifPresent(number -> trace(number, units, out));
      }
    }
  }

  private void pieces(WallFacts wall, Origin place, UnitSystem units, StringBuilder out) {
    LayoutIndex index = LayoutIndex.of(wall.layout());
    Traces traces = new Traces(wall.layout());
    FrameNumbers frame = new FrameNumbers(wall.analysis());
    Map<String, List<PieceRef>> equal = new LinkedHashMap<>();
    for (PieceRef piece : index.touching(place)) {
      equal.computeIfAbsent(traces.likeness(piece), any -> new ArrayList<>()).add(piece);
    }
    equal.forEach(
        (key, pieces) -> {
          PieceRef first = pieces.get(0);
          List<FrameNumber> numbers = frame.governing(pieces);
          if (traces.of(first).isEmpty() && numbers.isEmpty()) {
            return;
          }
          String mark = traces.mark(first);
          String more = pieces.size() == 1 ? "" : " and " + (pieces.size() - 1) + " more like it";
          out.append("\n  ")
              .append(
                  paint.bold(
                      TextWidth.harmless(
                          (mark.isEmpty() ? "" : mark + "  ") + index.name(first) + more)))
              .append('\n');
          traces.of(first).forEach(number -> trace(number, units, out));
          Set<String> told = new HashSet<>();
          numbers.forEach(number -> frame(number, index.name(first), units, told, out));
          notChecked(wall, first, out);
          LiteTraces lites = new LiteTraces(wall, units);
          lites.numbers(first).forEach(number -> trace(number, units, out));
          lites.words(first).forEach(line -> paragraph(4, line, out));
        });
  }

  /** A number of the frame, of the piece it is largest at, with its limit. */
  private void frame(
      FrameNumber number, String first, UnitSystem units, Set<String> told, StringBuilder out) {
    String of = number.piece().equals(first) ? "" : ", greatest at " + number.piece();
    String loads = number.loads().isEmpty() ? "" : ", by " + number.loads();
    String share =
        number
            .limit()
            .map(most -> ", " + Figures.share(number.value() / most) + " of its limit")
            .orElse("");
    out.append('\n');
    paragraph(4, paint.bold(number.what()) + of + loads + share, out);
    trace(number.measured().get(), units, told, out);
    number.allowed().ifPresent(limit -> trace(limit.get(), units, told, out));
  }

  /** The number and every step under it that was not told before. */
  private void trace(Derivation number, UnitSystem units, Set<String> told, StringBuilder out) {
    for (Derivation step : number.steps()) {
      List<String> lines = DerivationText.lines(step, units);
      boolean computed = step.standing() == Standing.COMPUTED;
      if (step == number || computed && !told.contains(String.join("\n", lines))) {
        lines.forEach(line -> line(line, out));
      }
      told.add(String.join("\n", lines));
    }
  }

  private void notChecked(WallFacts wall, PieceRef piece, StringBuilder out) {
    for (String why : NotChecked.of(wall.analysis(), piece)) {
      out.append('\n');
      paragraph(4, "not checked: " + why, out);
    }
  }

  private void trace(Derivation number, UnitSystem units, StringBuilder out) {
    DerivationText.allLines(number, units).forEach(line -> line(line, out));
  }

  private void line(String line, StringBuilder out) {
    int lead = line.length() - line.stripLeading().length();
    paragraph(4 + lead, line, out);
  }

  private void paragraph(int indent, String words, StringBuilder out) {
    String lead = TextWidth.spaces(indent);
    for (String line : TextWidth.wrap(TextWidth.harmless(words), Math.max(20, width - indent))) {
      out.append(lead).append(line).append('\n');
      lead = TextWidth.spaces(indent + (indent > 0 ? 2 : 0));
    }
  }

  private void caution(StringBuilder out) {
    for (String line : TextWidth.wrap(Caution.WORDS, width)) {
      out.append(paint.dim(line)).append('\n');
    }
  }
}
