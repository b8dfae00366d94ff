package mullwright.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Writes a derivation out for a reader: result in both unit systems, formula, the same with the
 * numbers put in, inputs with their standing, source.
 */
public final class DerivationText {
  /** After these a number may follow as it is; after anything else it stands in parentheses. */
  private static final String OPENERS = "+−-×·(,=≤≥<>";

  /** Before these a number may stand as it is. */
  private static final String CLOSERS = "+−-×·),≤≥<>";

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
    Map<String, Derivation> inputs = byName(derivation.inputs());
    if (inputs.isEmpty()) {
      return derivation.formula();
    }
    String formula = derivation.formula();
    return names(inputs.keySet())
        .matcher(formula)
        .replaceAll(
            match -> {
              Derivation input = inputs.get(match.group());
              String value = QuantityPrinter.in(system, input.value(), input.kind());
              boolean alone =
                  opens(formula.substring(0, match.start()))
                      && closes(formula.substring(match.end()));
              return Matcher.quoteReplacement(alone ? value : "(" + value + ")");
            });
  }

  /**
   * The inputs a formula can mean by name: of one name with several values it is not told which.
   */
  private static Map<String, Derivation> byName(List<Derivation> inputs) {
    Map<String, Derivation> named = new HashMap<>();
    for (Derivation input : inputs) {
      named.putIfAbsent(input.name(), input);
    }
    for (Derivation input : inputs) {
      Derivation meant = named.get(input.name());
      if (meant != null && !meant.value().equals(input.value())) {
        named.remove(input.name());
      }
    }
    return named;
  }

  private static boolean opens(String before) {
    String text = before.stripTrailing();
    return text.isEmpty() || OPENERS.indexOf(text.charAt(text.length() - 1)) >= 0;
  }

  private static boolean closes(String after) {
    String text = after.stripLeading();
    boolean apart = text.length() < after.length() || text.startsWith(")") || text.startsWith(",");
    return text.isEmpty() || (apart && CLOSERS.indexOf(text.charAt(0)) >= 0);
  }

  /**
   * Any of the names as a whole word, the longest first, so that "left face" is not taken for
   * "left".
   */
  private static Pattern names(Set<String> names) {
    String any =
        names.stream()
            .sorted(Comparator.comparingInt(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    return Pattern.compile("(?<![\\p{L}\\p{Nd}_-])(?:" + any + ")(?![\\p{L}\\p{Nd}_-])");
  }
}
