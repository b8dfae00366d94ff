package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.LengthReader;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.Route;
import mullwright.server.hover.Numbers;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import mullwright.workspace.Leaf;
import mullwright.workspace.Supposition;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Writes all lengths of a file in the other system of units, every one exactly.
 *
 * <p>A bare number that is a length gets its unit; the {@code units} line changes too where nothing
 * hangs on it. Refused where a length has no exact spelling there (1500 mm is no number of inches),
 * and where anything would mean something else. What is no length keeps its unit.
 */
@AutoService(ActionSource.class)
public final class SwitchUnits implements ActionSource {
  @Override
  public String kind() {
    return CodeActionKind.RefactorRewrite;
  }

  /** A length as it stands and as it would be written. */
  private record Rewrite(int start, int end, String text) {}

  @Override
  public List<Action> offers(Selected selected) {
    Optional<UnitSystem> here = systemAt(selected);
    if (here.isEmpty()) {
      return List.of();
    }
    UnitSystem to = here.get() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    String title =
        to == UnitSystem.SI
            ? "Write all lengths of this file in millimetres"
            : "Write all lengths of this file in feet and inches";
    Scan scan = new Scan(selected.document(), to);
    if (scan.refusal == null && scan.rewrites.isEmpty() && scan.bares.isEmpty()) {
      scan.refusal = "No length of this file is written in the other units.";
    }
    if (scan.refusal != null) {
      return List.of(Action.refused(title, scan.refusal));
    }
    return List.of(Action.of(title, () -> edits(selected, scan)));
  }

  /** The system of the length, or of the {@code units}, under the cursor. */
  private static Optional<UnitSystem> systemAt(Selected selected) {
    if (selected.cursor().leaf().orElse(null) instanceof Leaf.Value value) {
      var literal = value.literal();
      if (literal.hasMarks()) {
        return Optional.of(UnitSystem.US);
      }
      return literal.unit() == null
          ? Numbers.of(selected.document().file()).bare().map(SwitchUnits::system)
          : system(literal.unit().text());
    }
    Statement statement = selected.statement();
    return statement != null && statement.kind() == StatementKind.UNITS
        ? statement
            .argument(mullwright.syntax.Argument.Name.class)
            .flatMap(name -> system(name.word().text()))
        : Optional.empty();
  }

  private static Optional<UnitSystem> system(String word) {
    return switch (word) {
      case "mm", "m", "cm", "millimetres", "metres" -> Optional.of(UnitSystem.SI);
      case "inches", "feet", "ft" -> Optional.of(UnitSystem.US);
      default -> Optional.empty();
    };
  }

  private static Edits edits(Selected selected, Scan scan) {
    Document document = selected.document();
    List<Rewrite> rewrites = null;
    Optional<String> difference = Optional.empty();
    for (List<Rewrite> each : scan.attempts()) {
      if (!each.isEmpty()) {
        difference = difference(selected, each);
        if (difference.isEmpty()) {
          rewrites = each;
          break;
        }
      }
    }
    if (rewrites == null) {
      throw Route.refused("The units are not switched, since " + difference.orElseThrow() + ".");
    }
    Edits edits = new Edits(document.view());
    edits.annotate(
        "Other units",
        rewrites.size() + " lengths are written in the other system; each is exactly what it was.");
    for (Rewrite rewrite : rewrites) {
      edits.replace(document, document.range(rewrite.start(), rewrite.end()), rewrite.text());
    }
    return edits;
  }

  private static UnitSystem system(Unit unit) {
    return unit == Unit.INCH || unit == Unit.FOOT ? UnitSystem.US : UnitSystem.SI;
  }

  private static Optional<String> difference(Selected selected, List<Rewrite> rewrites) {
    StringBuilder text = new StringBuilder(selected.text());
    for (int i = rewrites.size() - 1; i >= 0; i--) {
      Rewrite rewrite = rewrites.get(i);
      text.replace(rewrite.start(), rewrite.end(), rewrite.text());
    }
    return new Supposition(
            selected.document().snapshot(), Map.of(selected.document().path(), text.toString()))
        .difference(selected.desk().cancel());
  }

  /** Goes through the tokens of a file until one cannot be rewritten. */
  private static final class Scan {
    private final List<Rewrite> rewrites = new ArrayList<>();

    /** Those of numbers without a unit. */
    private final List<Rewrite> bares = new ArrayList<>();

    private final Document document;
    private final Optional<Unit> bare;
    private final ParsedFile file;
    private final UnitSystem to;
    private String refusal;
    private Rewrite units;
    private boolean property;

    /** True if a property holds a number without unit, which may be a length or a count. */
    private boolean bareProperty;

    Scan(Document document, UnitSystem to) {
      this.document = document;
      this.file = document.file();
      this.bare = Numbers.of(file).bare();
      this.to = to;
      for (int i = 0; i < file.segments().size() && refusal == null; i++) {
        tokens(file.segmentStart(i), file.tokens(i));
      }
    }

    private void tokens(int base, List<Token> tokens) {
      for (int i = 0; i < tokens.size() && refusal == null; i++) {
        Token token = tokens.get(i);
        int start = base + token.range().start();
        int end = base + token.range().end();
        Token next = i + 1 < tokens.size() ? tokens.get(i + 1) : null;
        boolean unit = next != null && next.kind() == TokenKind.UNIT;
        if (token.kind() == TokenKind.LENGTH) {
          length(start, end);
        } else if (token.kind() == TokenKind.NUMBER && unit) {
          int last = base + next.range().end();
          if (system(nextWord(base, next)).isPresent()) {
            length(start, last);
          }
          i++;
        } else if (token.kind() == TokenKind.NUMBER && property) {
          bareProperty = true;
        } else if (token.kind() == TokenKind.NUMBER && bare.isPresent()) {
          // a count is none
          if (document.cursor(start).leaf().orElse(null) instanceof Leaf.Value) {
            rewrite(start, end, written(start, end) + mark(bare.get()), bares);
          }
        } else if (token.kind() == TokenKind.KEYWORD || token.kind() == TokenKind.PROPERTY) {
          property = token.kind() == TokenKind.PROPERTY;
          boolean said = next != null && written(start, end).equals("units");
          if (said && system(nextWord(base, next)).filter(to::equals).isEmpty()) {
            units =
                new Rewrite(
                    base + next.range().start(),
                    base + next.range().end(),
                    to == UnitSystem.SI ? "millimetres" : "inches");
          }
        }
      }
    }

    private void length(int start, int end) {
      rewrite(start, end, written(start, end), rewrites);
    }

    private void rewrite(int start, int end, String whole, List<Rewrite> into) {
      Optional<Length> length = LengthReader.read(whole).value();
      if (length.isEmpty()) {
        refusal = "“" + written(start, end) + "” on line " + line(start) + " cannot be read.";
        return;
      }
      String other = LengthPrinter.exact(length.get(), to);
      if (to == UnitSystem.US && other.endsWith("mm")) {
        refusal =
            "“"
                + written(start, end)
                + "” on line "
                + line(start)
                + " has no exact spelling in feet and inches.";
        return;
      }
      boolean same = (to == UnitSystem.SI) == whole.endsWith("m");
      if (!same) {
        into.add(new Rewrite(start, end, other));
      }
    }

    private static String mark(Unit unit) {
      return unit == Unit.INCH ? "\"" : unit == Unit.FOOT ? "'" : " " + unit.symbol();
    }

    /** What may be written, the most first: where a number is a factor and no length, less. */
    List<List<Rewrite>> attempts() {
      List<Rewrite> all = joined(rewrites, bares);
      // where no bare number hangs on it, what a bare number is may change as well
      List<Rewrite> flip = units == null || bareProperty ? List.of() : List.of(units);
      return List.of(joined(all, flip), all, joined(rewrites, flip), rewrites);
    }

    private static List<Rewrite> joined(List<Rewrite> some, List<Rewrite> more) {
      List<Rewrite> all = new ArrayList<>(some);
      all.addAll(more);
      all.sort(Comparator.comparingInt(Rewrite::start));
      return all;
    }

    private String nextWord(int base, Token next) {
      return written(base + next.range().start(), base + next.range().end());
    }

    private String written(int start, int end) {
      return file.text().substring(start, end);
    }

    private int line(int offset) {
      return file.lines().line(offset) + 1;
    }
  }
}
