package mullwright.layout;

import java.util.Comparator;
import java.util.List;
import mullwright.derivation.Derivation;

/**
 * Works out the formula of a derivation from its words and the numbers put in, with an arithmetic
 * of its own, so that a formula that does not give its value is seen.
 */
final class Formula {
  private final String text;
  private final List<Derivation> inputs;
  private int at;

  private Formula(Derivation derivation) {
    this.text = derivation.formula();
    this.inputs =
        derivation.inputs().stream()
            .sorted(Comparator.comparingInt((Derivation input) -> input.name().length()).reversed())
            .toList();
  }

  /** The value in SI base units; degrees for an angle put in. */
  static double value(Derivation derivation) {
    Formula formula = new Formula(derivation);
    double value = formula.sum();
    if (formula.at != formula.text.length()) {
      throw new IllegalStateException("cannot read on: " + formula.text.substring(formula.at));
    }
    return value;
  }

  private boolean take(String word) {
    if (text.startsWith(word, at)) {
      at += word.length();
      return true;
    }
    return false;
  }

  private double sum() {
    double value = product();
    while (true) {
      if (take(" + ")) {
        value += product();
      } else if (take(" − ")) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = factor();
    while (true) {
      if (take(" × ")) {
        value *= factor();
      } else if (take(" ÷ ")) {
        value /= factor();
      } else {
        return value;
      }
    }
  }

  private double factor() {
    if (take("½ ")) {
      return factor() / 2;
    }
    if (take("2")) {
      return 2;
    }
    if (take("cos(")) {
      return closed(Math.cos(Math.toRadians(sum())));
    }
    if (take("tan(")) {
      return closed(Math.tan(Math.toRadians(sum())));
    }
    if (take("atan(")) {
      return closed(Math.toDegrees(Math.atan(sum())));
    }
    if (take("(")) {
      return closed(sum());
    }
    for (Derivation input : inputs) {
      if (take(input.name())) {
        return input.value().toSi();
      }
    }
    throw new IllegalStateException("no number for: " + text.substring(at) + " in " + text);
  }

  private double closed(double value) {
    if (!take(")")) {
      throw new IllegalStateException("no closing parenthesis: " + text);
    }
    return value;
  }
}
