package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.takeoff.cutting.CutPlan;
import mullwright.takeoff.nesting.SearchTree;
import mullwright.takeoff.nesting.SearchTree.Prices;
import mullwright.takeoff.nesting.SearchTree.Step;

/** Tables of a search that shows that no plan does better, step by step, with all its prices. */
final class CutSearches {
  private final CutPlan plan;
  private final String name;
  private final CutWords words;
  private final List<List<Entry>> steps = new ArrayList<>();
  private final List<List<Entry>> prices = new ArrayList<>();

  private CutSearches(CutPlan plan, String name, LengthFormat format) {
    this.plan = plan;
    this.name = name;
    this.words = new CutWords(format);
  }

  /**
   * The steps, and the prices they stand on.
   *
   * @param name of the plan's table of prices, as programs know it
   */
  static List<Table> tables(CutPlan plan, SearchTree tree, String name, LengthFormat format) {
    CutSearches searches = new CutSearches(plan, name, format);
    for (int f = 0; f < tree.filters().size(); f++) {
      searches.prices("filter " + (f + 1), tree.filters().get(f));
    }
    searches.step(tree.root(), 0, "");
    return List.of(searches.steps(tree), searches.priced(format));
  }

  private int step(Step step, int under, String bars) {
    int number = steps.size() + 1;
    String what = "closed: the bars cost more already";
    Prices given = null;
    if (step instanceof SearchTree.Closed closed) {
      what = "closed: what is left is worth more than the cost left";
      given = closed.prices();
    } else if (step instanceof SearchTree.Bare bare) {
      what = "closed: every filling left loses more than can be lost";
      given = bare.prices();
    } else if (step instanceof SearchTree.Split split) {
      what = "how many bars have " + filling(split.filling());
      given = split.prices();
    }
    steps.add(
        List.of(
            new Entry.Count(number),
            under == 0 ? Entry.NONE : new Entry.Count(under),
            Entry.text(bars),
            Entry.text(what)));
    if (given != null) {
      prices("step " + number, given);
    }
    if (step instanceof SearchTree.Split split) {
      for (int k = 0; k < split.bars().size(); k++) {
        step(split.bars().get(k), number, CutWords.counted(k, "bar"));
      }
    }
    return number;
  }

  private String filling(SearchTree.Filling filling) {
    List<String> pieces = new ArrayList<>();
    for (Map.Entry<Long, Integer> each : filling.pieces().entrySet()) {
      pieces.add(each.getValue() + " × " + words.length(new Length(each.getKey())));
    }
    Length stock = new Length(plan.problem().stocks().get(filling.stock()).length());
    return String.join(" + ", pieces) + " on " + words.length(stock);
  }

  private void prices(String of, Prices given) {
    for (Map.Entry<Long, Long> each : given.prices().entrySet()) {
      prices.add(priced(of, "piece", new Length(each.getKey()), each.getValue(), given));
    }
    for (int s = 0; s < given.premiums().size(); s++) {
      if (given.premiums().get(s) > 0) {
        Length stock = new Length(plan.problem().stocks().get(s).length());
        prices.add(priced(of, "bar of the rack, premium", stock, given.premiums().get(s), given));
      }
    }
  }

  private static List<Entry> priced(
      String of, String what, Length length, long price, Prices given) {
    return List.of(
        Entry.text(of),
        Entry.text(what),
        new Entry.Size(length),
        new Entry.Count(price),
        new Entry.Count(given.scale()));
  }

  private Table steps(SearchTree tree) {
    return new Table(
        name + "-search",
        "Search for "
            + plan.pool().name()
            + ": a bar that loses more at a filter's prices than all bars together can is in no plan"
            + " of cost "
            + tree.target()
            + "; the others are gone through",
        List.of(
            Column.count("step", "Step"),
            Column.count("under", "Under"),
            Column.text("bars", "If"),
            Column.text("what", "Then")),
        steps,
        List.of());
  }

  private Table priced(LengthFormat format) {
    return new Table(
        name + "-search-prices",
        "Prices of the search for " + plan.pool().name(),
        List.of(
            Column.text("of", "Of"),
            Column.text("what", "What"),
            Column.length("length", "Length", format),
            Column.count("price", "Price"),
            Column.count("scale", "Scale")),
        prices,
        List.of());
  }
}
