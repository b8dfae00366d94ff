package mullwright.server.hover;

import java.util.Optional;
import mullwright.layout.GlassSizes;
import mullwright.model.Given;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.LengthReader;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.QuantityReader;
import mullwright.quantity.Step;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.Argument;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/**
 * Prints numbers for the reader of one file: both systems of units, the file's own first.
 *
 * @param first the system the file is written in
 * @param bare what a bare number is there, if it says so
 */
public record Numbers(UnitSystem first, Optional<Unit> bare) {
  private static final LengthFormat CUT_US = LengthFormat.feetIfAny(Step.THIRTY_SECOND);
  private static final LengthFormat CUT_SI = LengthFormat.millimetres(Step.TENTH_MILLIMETRE);

  /** How to print for a file: by its first {@code units}; without one by the marks it uses. */
  public static Numbers of(ParsedFile file) {
    for (Segment segment : file.segments()) {
      for (Statement statement : segment.statements()) {
        Optional<Unit> unit = units(statement);
        if (unit.isPresent()) {
          return new Numbers(system(unit.get()), unit);
        }
      }
    }
    boolean marks = file.text().indexOf('"') >= 0 && file.text().matches("(?s).*\\d[\"'].*");
    return new Numbers(marks ? UnitSystem.US : UnitSystem.SI, Optional.empty());
  }

  /** A length exactly, as the file writes them: bare where bare numbers are millimetres. */
  public String written(Length length) {
    return bare.filter(unit -> unit == Unit.MILLIMETRE).isPresent()
        ? length.millimetres().toPlainString()
        : LengthPrinter.exact(length, first);
  }

  private static Optional<Unit> units(Statement statement) {
    if (statement.kind() == StatementKind.UNITS) {
      return statement.argument(Argument.Name.class).flatMap(name -> unit(name.word().text()));
    }
    return statement
        .block()
        .flatMap(
            block ->
                block.statements().stream()
                    .map(Numbers::units)
                    .flatMap(Optional::stream)
                    .findFirst());
  }

  private static Optional<Unit> unit(String word) {
    return switch (word) {
      case "inches" -> Optional.of(Unit.INCH);
      case "feet" -> Optional.of(Unit.FOOT);
      case "millimetres", "mm" -> Optional.of(Unit.MILLIMETRE);
      case "metres", "m" -> Optional.of(Unit.METRE);
      default -> Optional.empty();
    };
  }

  private static UnitSystem system(Unit unit) {
    return unit == Unit.INCH || unit == Unit.FOOT ? UnitSystem.US : UnitSystem.SI;
  }

  /** The same in the units the reader has chosen. */
  public Numbers in(mullwright.server.Settings settings) {
    return new Numbers(settings.units(first), bare);
  }

  /** A length in both systems. */
  public String of(Length length) {
    return LengthPrinter.both(length, first);
  }

  /** A cut length, to the fineness a shop cuts to: 1/32" or 0.1 mm. */
  public String cut(Length length) {
    String us = CUT_US.print(length);
    String si = CUT_SI.print(length);
    return first == UnitSystem.US ? us + " (" + si + ")" : si + " (" + us + ")";
  }

  /** The same in the file's own system only. */
  public String cutShort(Length length) {
    return (first == UnitSystem.US ? CUT_US : CUT_SI).print(length);
  }

  /** A size of glass to order, in the file's own system only. */
  public String order(Length exact) {
    return LengthPrinter.in(first, GlassSizes.order(exact, first));
  }

  /** A quantity in both systems. */
  public String of(Quantity quantity, Kind kind) {
    return QuantityPrinter.both(quantity, kind, first);
  }

  /** A length with its standing: a default says on whose word it stands. */
  public String of(Given<Length> length) {
    return of(length.value()) + standing(length);
  }

  static String standing(Given<?> given) {
    return given.assumed() ? ", default (" + given.source() + ")" : "";
  }

  /**
   * A literal in both systems, empty if it is a plain count or cannot be read.
   *
   * @param number digits and marks as written
   * @param unit the unit word, or ""
   */
  Optional<String> literal(String number, String unit) {
    String text = unit.isEmpty() ? number : number + " " + unit;
    Optional<Length> length =
        bare.map(what -> LengthReader.read(text, what))
            .orElseGet(() -> LengthReader.read(text))
            .value();
    if (length.isPresent()) {
      return length.map(this::of);
    }
    return QuantityReader.read(text)
        .value()
        .flatMap(
            quantity ->
                Kind.of(quantity.dimension())
                    .map(kind -> kind.words() + ": " + of(quantity, kind)));
  }
}
