package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;
import mullwright.takeoff.nesting.NestingResult.Proof;

/** The order in which methods are tried on one problem, from the cheapest to the dearest. */
final class NestingSearch {
  private static final int FEW_PATTERNS = 1_000;
  private static final int MOST_PATTERNS = 30_000;
  private static final int VARIANTS = 10;
  private static final int DIVE_NODES = 100;
  private static final long FIRST_NODES = 2_000;
  private static final int MOST_DISCREPANCIES = 40;

  private final NestingProblem problem;
  private final CutModel model;
  private final Effort effort;
  private Draft best;
  private Bound bound;

  /** The linear programme's prices, which leave fewer patterns possible than other bounds. */
  private Bound sharp;

  private Totals totals;
  private long lower;
  private String statement = "";
  private ColumnGeneration generation;
  private List<Bound> variants;

  /** The bounds that left the patterns of the last list. */
  private List<Bound> filters = List.of();

  private SearchTree tree;
  private List<BarCounts.Rule> rules = List.of();
  private long ruled;

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
    if (done() || effort.spent()) {
      return;
    }
    generation = new ColumnGeneration(model, effort);
    generation.seed(best);
    generation.run(model.demand, model.available, -1, Double.MAX_VALUE, true);
    sharp = generation.bound();
    raise(sharp);
    Diving diving = new Diving(model, generation, totals, effort, best);
    long nodes = FIRST_NODES;
    boolean counted = false;
    for (int discrepancies = 0; open() && discrepancies <= MOST_DISCREPANCIES; discrepancies++) {
      diving.dive(model.plain() ? lower : totals.below(best.cost()), discrepancies, DIVE_NODES);
      if (diving.best().cost() < best.cost()) {
        best = diving.best();
        discrepancies = -1;
        continue;
      }
      if (!counted) {
        // before any search, whose certificate is longer
        counted = true;
        byCounts();
      }
      if (discrepancies % 4 == 0) {
        while (open() && searchAll(nodes)) {
          // each search that ends has found a plan or raised the bound
        }
        nodes *= 2;
      }
    }
  }

  /** Looks at the numbers of bars of each stock, where there are several to choose from. */
  private void byCounts() {
    CountSearch search = new CountSearch(problem, model, generation, effort, best, List.of(sharp));
    if (!search.useful()) {
      return;
    }
    search.run();
    best = search.best();
    if (search.lower() > lower) {
      ruled = search.lower();
      rules = search.rules();
      lower = rules.isEmpty() ? lower : ruled;
    }
  }

  private boolean open() {
    return !done() && !effort.spent();
  }

  /** Searches all plans as cheap as the bound: finds one or raises the bound; false if neither. */
  private boolean searchAll(long nodes) {
    List<Pattern> patterns = possible();
    if (patterns == null) {
      return false;
    }
    PartitionSearch search = new PartitionSearch(problem, model, patterns, lower, nodes, effort);
    switch (search.run()) {
      case FOUND -> best = search.found();
      case NONE -> {
        statement =
            "No plan costs "
                + lower
                + " or less: weighed by integer prices such a plan could use only "
                + patterns.size()
                + " patterns, and all ways to combine them were searched in "
                + search.nodes()
                + " steps.";
        tree =
            new SearchTree(
                lower,
                filters.stream().map(each -> each.prices(model, problem)).toList(),
                search.root());
        lower = totals.atLeast(lower + 1);
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  /** Every pattern that a plan as cheap as the bound may use; null if there are too many. */
  private List<Pattern> possible() {
    List<Pattern> patterns =
        PatternEnumeration.list(model, sharp, lower, generation.upper(), MOST_PATTERNS, effort);
    filters = List.of(sharp);
    if ((patterns != null && patterns.size() <= FEW_PATTERNS) || effort.spent()) {
      return patterns;
    }
    if (variants == null) {
      variants = new ArrayList<>(generation.variants(VARIANTS));
      variants.add(sharp);
      if (model.plain()) {
        variants.add(ArithmeticBound.of(model));
      }
      variants.forEach(this::raise);
      variants.removeIf(each -> each.exact() < sharp.exact() - 1e-4 * (1 + sharp.exact()));
    }
    if (patterns == null) {
      Bound mean = generation.mean(variants);
      raise(mean);
      patterns =
          PatternEnumeration.list(model, mean, lower, generation.upper(), MOST_PATTERNS, effort);
      filters = List.of(mean);
    }
    if (patterns != null) {
      filters = new ArrayList<>(filters);
      filters.addAll(variants);
      for (Bound each : variants) {
        patterns.removeIf(pattern -> each.loss(model, pattern) > each.loss(lower));
      }
    }
    return patterns;
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
    return certificate().search().isEmpty() ? Proof.PRICES : Proof.SEARCH;
  }

  /** The shortest of what shows the bound: prices, rules with them, or a search written down. */
  Certificate certificate() {
    Certificate priced = bound.certificate(model, problem, totals);
    if (priced.bound() < lower && !rules.isEmpty()) {
      priced = bound.certificate(model, problem, ruled, rules);
    }
    return priced.bound() >= lower || tree == null ? priced : priced.with(tree, lower);
  }

  String statement() {
    return proof() == Proof.SEARCH ? statement : "";
  }

  boolean clock() {
    return effort.clock();
  }

  long work() {
    return effort.done();
  }
}
