package mullwright.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gathers problems and references while a file is read; each is kept once. */
final class Collector {
  private final Set<ModelProblem> problems = new LinkedHashSet<>();
  private final Set<Reference> references = new LinkedHashSet<>();

  /** Others that were taken over; what they found is not looked through again at every edit. */
  private final List<Collector> taken = new ArrayList<>();

  /** The references in the order of the text, as far as they were known when it was asked for. */
  private List<Reference> inTextOrder = List.of();

  void problem(ModelProblem problem) {
    if (problems.size() < Limits.PROBLEMS) {
      problems.add(problem);
    }
  }

  /**
   * @param where what lacks it, {@code floor L2}
   * @param what what it does not say
   * @param offer an example of what to write, or ""
   */
  void missing(String where, String what, String offer, Origin origin) {
    Optional<String> example = offer.isEmpty() ? Optional.empty() : Optional.of(offer);
    problem(new ModelProblem.Missing(what, where, example, origin));
  }

  /**
   * @param what what is wrong, as a clause: {@code "C" is no bay}
   * @param why the rule, as a clause: {@code a bay lies between two lines, as A..B}
   */
  void misplaced(String what, String why, Origin origin) {
    problem(new ModelProblem.OutOfPlace(what, why, origin));
  }

  void duplicate(String what, String name, Origin first, Origin origin) {
    problem(new ModelProblem.Duplicate(what, name, first, origin));
  }

  void bad(ModelProblem.BadValue.Reason reason, String text, Origin origin) {
    problem(new ModelProblem.BadValue(reason, text, Optional.empty(), origin));
  }

  /** Things that are placed by one another in a circle. */
  void circular(List<String> names, Origin origin) {
    List<String> shown = new ArrayList<>(names.subList(0, Math.min(20, names.size())));
    shown.add(names.get(0));
    bad(ModelProblem.BadValue.Reason.CIRCULAR, String.join(" = ", shown), origin);
  }

  void unknown(String what, String name, Collection<String> known, Origin origin) {
    problem(new ModelProblem.UnknownName(what, name, NearNames.of(name, known), origin));
  }

  void defines(Symbol symbol, Origin origin) {
    references.add(new Reference(symbol, origin, true));
  }

  void names(Symbol symbol, Origin origin) {
    references.add(new Reference(symbol, origin, false));
  }

  void addAll(Collector other) {
    other.problems.forEach(this::problem);
    taken.add(other);
    taken.addAll(other.taken);
  }

  List<ModelProblem> problems() {
    return new ArrayList<>(problems);
  }

  /**
   * Those of each collector in the order of the text; one that was found by several collectors
   * stands there several times.
   */
  List<Reference> references() {
    List<Reference> all = new ArrayList<>(inTextOrder());
    taken.forEach(other -> all.addAll(other.inTextOrder()));
    return all;
  }

  // a collector only grows; nearly all are those of walls and files that an edit leaves as they are
  private List<Reference> inTextOrder() {
    List<Reference> known = inTextOrder;
    if (known.size() != references.size()) {
      List<Reference> sorted = new ArrayList<>(references);
      sorted.sort((one, other) -> Origin.inText(one.origin(), other.origin()));
      known = List.copyOf(sorted);
      inTextOrder = known;
    }
    return known;
  }
}
