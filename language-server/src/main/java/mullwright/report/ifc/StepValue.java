package mullwright.report.ifc;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import mullwright.quantity.Length;

/** A parameter of a data instance in the clear text form of ISO 10303-21. */
sealed interface StepValue {
  /** As the file spells it. */
  String spelling();

  /** Not given: {@code $}. */
  StepValue NONE = new Spelt("$");

  /** Derived by the schema: {@code *}. */
  StepValue DERIVED = new Spelt("*");

  /** A word or number whose spelling is known. */
  record Spelt(String spelling) implements StepValue {}

  /** A reference to an instance. */
  record Reference(int number) implements StepValue {
    @Override
    public String spelling() {
      return "#" + number;
    }
  }

  /** A list or set. */
  record Aggregate(List<StepValue> values) implements StepValue {
    public Aggregate {
      values = List.copyOf(values);
    }

    @Override
    public String spelling() {
      return values.stream().map(StepValue::spelling).collect(Collectors.joining(",", "(", ")"));
    }
  }

  /** A value with the name of its type, where the schema lets several stand. */
  static StepValue typed(String type, StepValue value) {
    return new Spelt(type + "(" + value.spelling() + ")");
  }

  /** An element of an enumeration. */
  static StepValue word(String name) {
    return new Spelt("." + name + ".");
  }

  static StepValue truth(boolean value) {
    return word(value ? "T" : "F");
  }

  static StepValue whole(int value) {
    return new Spelt(Integer.toString(value));
  }

  /** A real number: it always has a point. */
  static StepValue real(BigDecimal value) {
    String plain = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    return new Spelt(plain.indexOf('.') < 0 ? plain + "." : plain);
  }

  /** A length in millimetres, exact. */
  static StepValue real(Length length) {
    return real(length.millimetres());
  }

  static StepValue list(List<? extends StepValue> values) {
    return new Aggregate(List.copyOf(values));
  }

  static StepValue list(StepValue... values) {
    return new Aggregate(List.of(values));
  }

  /** Text; what is not printable ASCII is written by its code point. */
  static StepValue text(String words) {
    StringBuilder out = new StringBuilder("'");
    words
        .codePoints()
        .forEach(
            point -> {
              if (point == '\'' || point == '\\') {
                out.appendCodePoint(point).appendCodePoint(point);
              } else if (point >= ' ' && point <= '~') {
                out.appendCodePoint(point);
              } else if (Character.isBmpCodePoint(point)) {
                out.append(String.format(Locale.ROOT, "\\X2\\%04X\\X0\\", point));
              } else {
                out.append(String.format(Locale.ROOT, "\\X4\\%08X\\X0\\", point));
              }
            });
    return new Spelt(out.append('\'').toString());
  }

  /** Text, or nothing where it is empty. */
  static StepValue textOrNone(String words) {
    return words.isEmpty() ? NONE : text(words);
  }
}
