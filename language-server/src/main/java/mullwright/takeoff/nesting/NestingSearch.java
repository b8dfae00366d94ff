package mullwright.takeoff.nesting;

import java.util.List;
import mullwright.takeoff.nesting.NestingResult.Proof;

/** The order in which methods are tried on one problem, from the cheapest to the dearest. */
final class NestingSearch {
  private static final int MOST_PATTERNS = 30_000;
  private final NestingProblem problem;
  private final CutModel model;
  private final Effort effort;
  private Draft best;
  private Bound bound;
  private Totals totals;
  private long lower;
  private String statement = "";
  private ColumnGeneration generation;

  NestingSearch(NestingProblem problem, CutModel model, Effort effort) {
    this.problem = problem;
    this.model = model;
    this.effort = effort;
    this.bound = Bound.none(model);
  }

  void run() {
    best = new Draft(model);
    Greedy.complete(best, effort);
    totals = new Totals(model, best.cost() + model.largestCost);
    if (model.size() == 0) {
      return;
    }
    if (model.plain()) {
      raise(ArithmeticBound.of(model));
    }
    if (done()) {
      return;
    }
    generation = new ColumnGeneration(model, effort);
    generation.seed(best);
    generation.run(model.demand, model.available, -1, Double.MAX_VALUE);
    raise(generation.bound());
    if (done() || effort.spent()) {
      return;
    }
    Diving diving = new Diving(model, generation, totals, effort, best);
    boolean searching = true;
    for (int discrepancies = 0; !done() && !effort.spent(); discrepancies++) {
      diving.dive(model.plain() ? lower : totals.below(best.cost()), discrepancies, 200);
      if (diving.best().cost() < best.cost()) {
        best = diving.best();
        discrepancies = -1;
        continue;
      }
      while (searching && !done() && !effort.spent()) {
        searching = searchAll(10_000);
      }
      if (!searching && discrepancies > 30) {
        return;
      }
    }
  }

  /** Searches all plans as cheap as the bound: finds one, raises the bound, or gives up. */
  private boolean searchAll(long nodes) {
    List<Pattern> patterns =
        PatternEnumeration.list(model, bound, lower, generation.upper(), MOST_PATTERNS, effort);
    if (patterns == null) {
      System.out.println("   too many for " + lower + " over " + bound.exact());
      return false;
    }
    PartitionSearch search = new PartitionSearch(model, patterns, lower, nodes, effort);
    PartitionSearch.Verdict verdict = search.run();
    System.out.println(
        "   search for "
            + lower
            + " over "
            + bound.exact()
            + " patterns "
            + patterns.size()
            + " nodes "
            + search.nodes()
            + " "
            + verdict);
    switch (verdict) {
      case FOUND -> best = search.found();
      case NONE -> {
        statement =
            "No plan costs "
                + lower
                + " or less: at the certificate's prices such a plan could use "
                + patterns.size()
                + " patterns, and all ways to combine them were searched in "
                + search.nodes()
                + " steps.";
        lower = totals.atLeast(lower + 1);
        return true;
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  private void raise(Bound next) {
    if (next.exact() > bound.exact() || bound.worth() == 0) {
      bound = next;
      lower = Math.max(lower, totals.atLeast(next.cost()));
    }
  }

  private boolean done() {
    return best.cost() <= lower;
  }

  /** The best plan; null if the stock cannot hold all parts or no way was found. */
  Draft best() {
    return model.shortage >= 0 && uses(model.shortage) ? null : best;
  }

  private boolean uses(int stock) {
    return best.patterns().stream().anyMatch(pattern -> pattern.stock() == stock);
  }

  long lowerBound() {
    return lower;
  }

  /** True if it is certain that the stock cannot hold all parts. */
  boolean impossible() {
    return model.shortageCertain && lower >= model.shortageCost;
  }

  Proof proof() {
    return statement.isEmpty() ? Proof.PRICES : Proof.SEARCH;
  }

  Certificate certificate() {
    return bound.certificate(model, problem, totals);
  }

  String statement() {
    return statement;
  }

  long work() {
    return effort.done();
  }
}
