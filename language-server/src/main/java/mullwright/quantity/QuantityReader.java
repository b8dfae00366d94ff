package mullwright.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.quantity.QuantityProblem.Limit;

/**
 * Reads one literal ({@code 32 psf}, {@code 4.1e6 mm4}, {@code -12 C}, {@code 5'-6 1/2"}, {@code
 * 7}) to its exact value.
 *
 * <p>The text is the literal alone, without space around it. A decimal mark is a point. Never
 * throws: what cannot be read is a refusal with its place.
 */
public final class QuantityReader {
  /** The most digits of one number. */
  public static final int DIGIT_LIMIT = 40;

  /** The largest power of ten, either way. */
  public static final int EXPONENT_LIMIT = 30;

  /** Made when a literal is not plain, which few are. */
  private static final class Patterns {
    static final Pattern LITERAL =
        Pattern.compile(
            "(?<number>[-−]?(?<digits>\\d++(?:\\.\\d++)?+|\\.\\d++)(?:[eE](?<exponent>[-+]?\\d++))?+)"
                + "(?<space> *+)(?<unit>(?:[\\p{L}%°/]\\S*+)?+)");
    static final Pattern COMMA = Pattern.compile("\\d(,)\\d");
  }

  private QuantityReader() {}

  /** Reads a literal of any kind; a number without unit is a ratio. */
  public static Outcome<Quantity> read(String text) {
    return LengthReader.hasMark(text)
        ? LengthReader.read(text).map(Quantity::of)
        : unmarked(text, null);
  }

  /**
   * Reads a literal where that kind is asked for: a spelling that serves two kinds means this one,
   * another kind is {@link QuantityProblem.WrongKind}, and a bare number does for a ratio only.
   */
  public static Outcome<Quantity> read(String text, Kind asked) {
    Outcome<Quantity> read = LengthReader.hasMark(text) ? read(text) : unmarked(text, asked);
    return read.then(quantity -> quantity.as(asked).at(0, text.length()));
  }

  private static Outcome<Quantity> unmarked(String text, Kind asked) {
    Optional<UsualNumber> usual = UsualNumber.of(text);
    if (usual.isPresent()) {
      return withUnit(usual.get().number(), usual.get().unit(), usual.get().unitAt(), text, asked);
    }
    Matcher literal = Patterns.LITERAL.matcher(text);
    if (!literal.matches()) {
      return malformed(text);
    }
    if (literal.group("digits").length() > DIGIT_LIMIT || !exponentFits(literal)) {
      return Outcome.refused(new QuantityProblem.TooLarge(Limit.DIGITS), 0, literal.end("number"));
    }
    Rational number = Rational.of(new BigDecimal(literal.group("number").replace('−', '-')));
    return withUnit(number, literal.group("unit"), literal.start("unit"), text, asked);
  }

  private static Outcome<Quantity> withUnit(
      Rational number, String spelling, int at, String text, Kind asked) {
    if (spelling.isEmpty()) {
      return asked == null || asked.dimension().equals(Dimension.NONE)
          ? Outcome.of(Quantity.of(number))
          : Outcome.refused(new QuantityProblem.UnitMissing(), text.length(), text.length());
    }
    return (asked == null ? Unit.named(spelling) : Unit.named(spelling, asked))
        .or(() -> Unit.named(spelling))
        .map(unit -> Outcome.of(Quantity.of(number, unit)))
        .orElseGet(
            () ->
                Outcome.refused(
                    new QuantityProblem.UnknownUnit(spelling, offers(spelling, asked)),
                    at,
                    text.length()));
  }

  private static boolean exponentFits(Matcher literal) {
    String exponent = literal.group("exponent");
    // four chars hold a sign and three digits, enough to be beyond the limit and safe to parse
    return exponent == null
        || (exponent.length() <= 4 && Math.abs(Integer.parseInt(exponent)) <= EXPONENT_LIMIT);
  }

  static <T> Outcome<T> malformed(String text) {
    Matcher comma = Patterns.COMMA.matcher(text);
    return comma.find()
        ? Outcome.refused(new QuantityProblem.CommaInNumber(), comma.start(1), comma.end(1))
        : Outcome.refused(new QuantityProblem.Malformed(), 0, text.length());
  }

  /**
   * What an unknown spelling may mean: the mark for inches and feet in words, else the same letters
   * in other case.
   */
  private static List<String> offers(String spelling, Kind asked) {
    String plain = spelling.toLowerCase(Locale.ROOT).replace(".", "");
    if (List.of("in", "inch", "inches").contains(plain)) {
      return List.of(Unit.INCH.symbol());
    }
    if (List.of("ft", "foot", "feet").contains(plain)) {
      return List.of(Unit.FOOT.symbol());
    }
    List<Unit> candidates = asked == null ? List.of(Unit.values()) : Unit.of(asked);
    return candidates.stream()
        .flatMap(unit -> unit.spellings().stream())
        .filter(known -> known.equalsIgnoreCase(plain))
        .distinct()
        .toList();
  }
}
