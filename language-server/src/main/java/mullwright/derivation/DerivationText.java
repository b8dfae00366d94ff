package mullwright.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Writes a derivation out for a reader: result in both unit systems, formula, the same with the
 * numbers put in, inputs with their standing, source.
 */
public final class DerivationText {
  /** After these a number may follow as it is; after anything else it stands in parentheses. */
  private static final String OPENERS = "+−-×(,=≤≥<>";

  /** Before these a number may stand as it is. */
  private static final String CLOSERS = "+−-×),≤≥<>";

  private DerivationText() {}

  /** The lines of one step; its inputs are named with their values, not taken apart. */
  public static List<String> lines(Derivation derivation, UnitSystem first) {
    List<String> lines = new ArrayList<>();
    lines.add(derivation.name() + " = " + both(derivation, first) + standing(derivation));
    if (derivation.standing() == Standing.COMPUTED) {
      lines.add("  = " + derivation.formula());
      String numbers = withNumbers(derivation, first);
      if (!numbers.equals(derivation.formula())) {
        lines.add("  = " + numbers);
      }
      for (Derivation input : derivation.inputs()) {
        lines.add("  " + input.name() + " = " + both(input, first) + standing(input));
      }
      derivation.source().ifPresent(source -> lines.add("  source: " + source.words()));
    }
    return List.copyOf(lines);
  }

  /** The lines of the step and then of every computed step below it, each once. */
  public static List<String> allLines(Derivation derivation, UnitSystem first) {
    List<String> lines = new ArrayList<>(lines(derivation, first));
    for (Derivation step : derivation.steps()) {
      if (step != derivation && step.standing() == Standing.COMPUTED) {
        lines.addAll(lines(step, first));
      }
    }
    return List.copyOf(lines);
  }

  private static String both(Derivation derivation, UnitSystem first) {
    return QuantityPrinter.both(derivation.value(), derivation.kind(), first);
  }

  private static String standing(Derivation derivation) {
    if (derivation.standing() == Standing.DEFAULT) {
      return derivation.source().map(source -> ", default (" + source.words() + ")").orElse("");
    }
    return derivation.standing() == Standing.STATED ? ", stated" : "";
  }

  private static String withNumbers(Derivation derivation, UnitSystem system) {
    if (derivation.inputs().isEmpty()) {
      return derivation.formula();
    }
    Matcher names = names(derivation.inputs()).matcher(derivation.formula());
    return names.replaceAll(
        match -> {
          Derivation input = named(match.group(), derivation.inputs());
          String value = QuantityPrinter.in(system, input.value(), input.kind());
          String before = derivation.formula().substring(0, match.start()).stripTrailing();
          String after = derivation.formula().substring(match.end());
          boolean open = before.isEmpty() || OPENERS.indexOf(last(before)) >= 0;
          boolean closed =
              after.isEmpty()
                  || (after.charAt(0) == ' ' || after.charAt(0) == ')' || after.charAt(0) == ',')
                      && CLOSERS.indexOf(after.strip().charAt(0)) >= 0;
          return Matcher.quoteReplacement(open && closed ? value : "(" + value + ")");
        });
  }

  private static char last(String text) {
    return text.charAt(text.length() - 1);
  }

  /**
   * Any of the names as a whole word, the longest first, so that "left face" is not taken for
   * "left".
   */
  private static Pattern names(List<Derivation> inputs) {
    String any =
        inputs.stream()
            .map(Derivation::name)
            .sorted(Comparator.comparingInt(String::length).reversed())
            .map(Pattern::quote)
            .reduce((one, other) -> one + "|" + other)
            .orElseThrow();
    return Pattern.compile("(?<![\\p{L}\\p{Nd}_])(?:" + any + ")(?![\\p{L}\\p{Nd}_])");
  }

  private static Derivation named(String name, List<Derivation> inputs) {
    return inputs.stream().filter(input -> input.name().equals(name)).findFirst().orElseThrow();
  }
}
