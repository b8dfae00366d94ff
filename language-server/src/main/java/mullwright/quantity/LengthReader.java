package mullwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.quantity.Outcome.Remark;
import mullwright.quantity.QuantityProblem.Limit;

/**
 * Reads one length literal ({@code 5'-6 1/2"}, {@code 71.1875"}, {@code 1.524 m}) to its exact
 * value.
 *
 * <p>A sign covers the whole literal: {@code -1'-6"} is -18". Pasted marks (′ ″ ’ ” and the like)
 * are read as ' and ". Between feet and inches stands a dash, space or nothing, between whole
 * inches and their fraction a dash or space. Never throws: what cannot be read is a refusal with
 * its place, what is merely odd a warning.
 */
public final class LengthReader {
  private static final Pattern MARKED =
      Pattern.compile(
          "(?<sign>-?)(?:(?<feet>\\d++(?:\\.\\d++)?+)')?+"
              + "(?:(?<joint> *+-? *+)"
              + "(?<inches>(?<decimal>\\d*+\\.\\d++|\\d++(?![-/ ]))"
              + "|(?:(?<whole>\\d++)(?:-| ++))?(?<fraction>(?<numerator>\\d++)/(?<denominator>\\d++))))?+"
              + "(?<mark>\"?)");
  private static final BigInteger LARGEST_DENOMINATOR = BigInteger.valueOf(64);

  private LengthReader() {}

  /** Reads a length that carries its unit; a quantity of another kind is refused as such. */
  public static Outcome<Length> read(String text) {
    return hasMark(text)
        ? marked(text)
        : QuantityReader.read(text, Kind.LENGTH)
            .then(quantity -> quantity.toLength().at(0, text.length()));
  }

  /** Reads a length that may leave its unit away, meaning the given one. */
  public static Outcome<Length> read(String text, Unit bare) {
    return hasMark(text)
        ? marked(text)
        : QuantityReader.read(text)
            .map(read -> isBare(read, text) ? Quantity.of(read.si(), bare) : read)
            .then(read -> read.toLength().at(0, text.length()));
  }

  /** Whether what was read is a number alone, not a percentage. */
  private static boolean isBare(Quantity read, String text) {
    return read.is(Kind.RATIO) && !text.endsWith(Unit.PERCENT.symbol());
  }

  /** Whether a foot or inch mark, typed or pasted, stands in the text. */
  static boolean hasMark(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isFootMark(c) || isInchMark(c)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isFootMark(int c) {
    return c == '\'' || c == '′' || c == '’' || c == '‘';
  }

  private static boolean isInchMark(int c) {
    return c == '"' || c == '″' || c == '”' || c == '“';
  }

  /** The text with plain marks and minus; one char for one, so that places stay. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(text);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (isFootMark(c)) {
        plain.setCharAt(i, '\'');
      } else if (isInchMark(c)) {
        plain.setCharAt(i, '"');
      } else if (c == '−') {
        plain.setCharAt(i, '-');
      }
    }
    return plain.toString();
  }

  private static Outcome<Length> marked(String text) {
    OptionalLong usual = UsualLength.ticks(text);
    return usual.isPresent() ? Outcome.of(new Length(usual.getAsLong())) : anySpelling(text);
  }

  static Outcome<Length> anySpelling(String text) {
    if (text.chars().filter(Character::isDigit).count() > QuantityReader.DIGIT_LIMIT) {
      return Outcome.refused(new QuantityProblem.TooLarge(Limit.DIGITS), 0, text.length());
    }
    Matcher m = MARKED.matcher(plain(text));
    if (!m.matches()) {
      return QuantityReader.malformed(text);
    }
    boolean feet = m.group("feet") != null;
    boolean inches = m.group("inches") != null;
    boolean mark = !m.group("mark").isEmpty();
    String joint = inches ? m.group("joint") : "";
    if (inches ? !feet && !joint.isEmpty() : mark || !feet) {
      return QuantityReader.malformed(text);
    }
    if (joint.contains("-") && joint.length() > 1) {
      boolean difference = joint.startsWith(" ") && joint.endsWith(" ");
      return difference
          ? QuantityReader.malformed(text)
          : Outcome.refused(
              new QuantityProblem.SpaceBesideDash(), m.start("joint"), m.end("joint"));
    }
    if (feet && inches && m.group("feet").contains(".")) {
      return QuantityReader.malformed(text);
    }
    if (inches && !mark) {
      return Outcome.refused(new QuantityProblem.InchMarkMissing(), text.length(), text.length());
    }
    return value(m, text.length());
  }

  private static Outcome<Length> value(Matcher m, int end) {
    List<Remark> remarks = new ArrayList<>();
    Rational inches = decimal(m.group("decimal")).plus(decimal(m.group("whole")));
    if (m.group("denominator") != null) {
      BigInteger denominator = new BigInteger(m.group("denominator"));
      if (denominator.signum() == 0) {
        return new Outcome.Refused<>(
            remark(new QuantityProblem.ZeroDenominator(), m, "denominator"));
      }
      if (denominator.bitCount() != 1 || denominator.compareTo(LARGEST_DENOMINATOR) > 0) {
        remarks.add(remark(new QuantityProblem.UnusualDenominator(denominator), m, "denominator"));
      }
      Rational fraction = new Rational(new BigInteger(m.group("numerator")), denominator);
      if (m.group("whole") != null && fraction.compareTo(Rational.ONE) >= 0) {
        remarks.add(remark(new QuantityProblem.FractionPastOne(), m, "fraction"));
      }
      inches = inches.plus(fraction);
    }
    if (m.group("feet") != null && inches.compareTo(Rational.of(12)) >= 0) {
      remarks.add(remark(new QuantityProblem.InchesPastFoot(), m, "inches"));
    }
    Rational feet = decimal(m.group("feet"));
    Rational size = feet.times(Unit.FOOT.factor()).plus(inches.times(Unit.INCH.factor()));
    Rational metres = m.group("sign").isEmpty() ? size : size.negated();
    return new Outcome.Given<>(metres, remarks).then(read -> Length.ofMetres(read).at(0, end));
  }

  private static Remark remark(QuantityProblem problem, Matcher m, String group) {
    return new Remark(problem, m.start(group), m.end(group));
  }

  private static Rational decimal(String digits) {
    return digits == null ? Rational.ZERO : Rational.of(new BigDecimal(digits));
  }
}
