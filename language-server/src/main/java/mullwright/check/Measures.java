package mullwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.Rounding;
import mullwright.quantity.Step;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.Argument;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/**
 * Says measures in the units the wall is written in.
 *
 * @param system of the file's first {@code units} statement; US where there is none
 */
record Measures(UnitSystem system) {
  /** Beyond it a share only tells that a number of the text is out of all proportion. */
  private static final int MOST = 1_000_000;

  /** In the units of a wall's file. */
  static Measures of(WallFacts facts) {
    ParsedFile file = facts.text().files().get(facts.wall().origin().file());
    for (Segment segment : file == null ? List.<Segment>of() : file.segments()) {
      Optional<String> units = units(segment.statements());
      if (units.isPresent()) {
        return new Measures(units.get().startsWith("m") ? UnitSystem.SI : UnitSystem.US);
      }
    }
    return new Measures(UnitSystem.US);
  }

  private static Optional<String> units(List<Statement> statements) {
    for (Statement statement : statements) {
      if (statement.kind() == StatementKind.UNITS) {
        return statement.argument(Argument.Name.class).map(name -> name.word().text());
      }
      boolean holds =
          statement.kind() == StatementKind.PROJECT_BLOCK
              || statement.kind() == StatementKind.WALL_BLOCK;
      Optional<String> inside =
          holds ? statement.block().flatMap(b -> units(b.statements())) : Optional.empty();
      if (inside.isPresent()) {
        return inside;
      }
    }
    return Optional.empty();
  }

  String length(Length length) {
    return LengthPrinter.in(system, length);
  }

  /** A computed length, which may be of any size: what bends may bend beyond all measure. */
  String length(double metres) {
    return of(metres, Kind.LENGTH);
  }

  String pressure(double pascals) {
    return QuantityPrinter.in(system, Quantity.ofSi(pascals, Kind.PRESSURE), Kind.PRESSURE);
  }

  String area(double squareMetres) {
    return QuantityPrinter.in(system, Quantity.ofSi(squareMetres, Kind.AREA), Kind.AREA);
  }

  /** A size, width by height: {@code 58 1/2" × 70 1/2"}. */
  String size(Length width, Length height) {
    return length(width) + " × " + length(height);
  }

  String force(double newtons) {
    return of(newtons, Kind.FORCE);
  }

  /** A quantity in SI base units. */
  String of(double si, Kind kind) {
    return QuantityPrinter.in(system, Quantity.ofSi(si, kind), kind);
  }

  /** An inch or a centimetre. */
  Length step() {
    return system == UnitSystem.US ? Length.ofInches(1) : Length.ofMillimetres(10);
  }

  /** To the whole inch or the whole centimetre, whichever the wall is written in. */
  Length round(Length length) {
    return system == UnitSystem.US
        ? Length.ofInches(length.inches().rounded(RoundingMode.HALF_UP).longValueExact())
        : Length.ofMillimetres(
            10
                * length
                    .millimetres()
                    .divide(BigDecimal.TEN)
                    .setScale(0, RoundingMode.HALF_UP)
                    .longValueExact());
  }

  /**
   * The length to write for what needs at least so many metres: up to the next sixteenth or
   * millimetre; empty if no text may say it.
   */
  Optional<Length> enough(double metres) {
    return metres <= Length.LIMIT.toMetres()
        ? Optional.of(atLeast().round(Length.nearest(metres)))
        : Optional.empty();
  }

  /** For what must not be less: up to the next sixteenth or millimetre. */
  LengthFormat atLeast() {
    return (system == UnitSystem.US
            ? LengthFormat.feetIfAny(Step.SIXTEENTH)
            : LengthFormat.millimetres(Step.MILLIMETRE))
        .rounding(Rounding.UP);
  }

  /** As the text of a wall says it. */
  String written(Length length) {
    return LengthPrinter.exact(length, system);
  }

  /** A share of one, to the hundredth: {@code 0.21}; one without end is told as more than any. */
  static String share(double share) {
    if (!(share < MOST)) {
      return "more than " + MOST + " times";
    }
    return BigDecimal.valueOf(share).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }
}
