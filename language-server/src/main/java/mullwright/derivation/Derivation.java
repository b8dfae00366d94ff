package mullwright.derivation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * A number that knows itself: its value, how it came about and from what.
 *
 * <p>A plain immutable tree, made on demand by whoever computed the number. One derivation may be
 * an input of many.
 *
 * @param name what it is, in the trade's words, such as "cut length"; a formula refers to its
 *     inputs by their names
 * @param value the exact or computed value
 * @param kind which kind it is, and so in which units it prints
 * @param formula right side of the formula in words and the names of the inputs; empty unless
 *     computed
 * @param inputs the numbers put in, in the order they are to be read; empty unless computed
 * @param source on whose word the formula or the default stands; absent for what is stated
 * @param standing stated, default or computed
 * @param locus where it is stated; absent for what is not
 */
public record Derivation(
    String name,
    Quantity value,
    Kind kind,
    String formula,
    List<Derivation> inputs,
    Optional<Source> source,
    Standing standing,
    Optional<Locus> locus) {

  /**
   * Checks that the parts go together.
   *
   * @throws IllegalArgumentException if the value is not of the kind, or a part is missing or too
   *     many for the standing
   */
  public Derivation {
    inputs = List.copyOf(inputs);
    boolean computed = standing == Standing.COMPUTED;
    boolean stated = standing == Standing.STATED;
    if (!value.is(kind)
        || name.isBlank()
        || computed == formula.isBlank()
        || (!computed && !inputs.isEmpty())
        || stated == source.isPresent()
        || stated != locus.isPresent()) {
      throw new IllegalArgumentException("derivation of " + name + " does not hang together");
    }
  }

  /** A length somebody wrote. */
  public static Derivation stated(String name, Length value, Locus locus) {
    return stated(name, Quantity.of(value), Kind.LENGTH, locus);
  }

  /** A quantity somebody wrote. */
  public static Derivation stated(String name, Quantity value, Kind kind, Locus locus) {
    return new Derivation(
        name, value, kind, "", List.of(), Optional.empty(), Standing.STATED, Optional.of(locus));
  }

  /** A length taken because nobody wrote another. */
  public static Derivation assumed(String name, Length value, String source) {
    return assumed(name, Quantity.of(value), Kind.LENGTH, source);
  }

  /** A quantity taken because nobody wrote another. */
  public static Derivation assumed(String name, Quantity value, Kind kind, String source) {
    return unplaced(name, value, kind, "", source, Standing.DEFAULT, List.of());
  }

  /** A length that follows from others. */
  public static Derivation computed(
      String name, Length value, String formula, String source, Derivation... inputs) {
    return computed(name, Quantity.of(value), Kind.LENGTH, formula, source, inputs);
  }

  /** A quantity that follows from others. */
  public static Derivation computed(
      String name, Quantity value, Kind kind, String formula, String source, Derivation... inputs) {
    return unplaced(name, value, kind, formula, source, Standing.COMPUTED, List.of(inputs));
  }

  /**
   * A number of analysis that follows from others, in SI base units (degrees for an angle).
   *
   * @throws NumberFormatException if it is infinite or not a number
   */
  public static Derivation computed(
      String name, double si, Kind kind, String formula, String source, Derivation... inputs) {
    return computed(name, Quantity.ofSi(si, kind), kind, formula, source, inputs);
  }

  private static Derivation unplaced(
      String name,
      Quantity value,
      Kind kind,
      String formula,
      String source,
      Standing standing,
      List<Derivation> inputs) {
    return new Derivation(
        name,
        value,
        kind,
        formula,
        inputs,
        Optional.of(new Source(source)),
        standing,
        Optional.empty());
  }

  /**
   * The value as a length: exact if it was given as one, else the nearest.
   *
   * @throws IllegalStateException if it is of another kind
   */
  public Length length() {
    if (kind != Kind.LENGTH) {
      throw new IllegalStateException(name + " is no length: " + kind.words());
    }
    return Length.nearest(value.si());
  }

  /** All defaults it leans on, itself included, each once, in the order a reader meets them. */
  public List<Derivation> defaults() {
    Set<Derivation> found = new LinkedHashSet<>();
    for (Derivation step : steps()) {
      if (step.standing == Standing.DEFAULT) {
        found.add(step);
      }
    }
    return List.copyOf(found);
  }

  /** Itself and everything it leans on, each object once, a result before its inputs. */
  public List<Derivation> steps() {
    List<Derivation> steps = new ArrayList<>();
    collect(steps, Collections.newSetFromMap(new IdentityHashMap<>()));
    return List.copyOf(steps);
  }

  // by identity: shared inputs are walked once, however often they are reached
  private void collect(List<Derivation> steps, Set<Derivation> seen) {
    if (seen.add(this)) {
      steps.add(this);
      inputs.forEach(input -> input.collect(steps, seen));
    }
  }

  /** Name and value only, for people who debug. */
  @Override
  public String toString() {
    return name + " = " + value.si() + " " + kind;
  }
}
