package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.takeoff.cutting.CutPlan;
import mullwright.takeoff.nesting.Certificate;
import mullwright.takeoff.nesting.NestingProblem;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Proof;

/** Tables of the prices by which anyone can check that no plan does better. */
final class CutProofs {
  private final List<CutPlan> plans;
  private final LengthFormat format;
  private final CutWords words;

  CutProofs(List<CutPlan> plans, LengthFormat format) {
    this.plans = plans.stream().filter(plan -> !plan.bars().isEmpty()).toList();
    this.format = format;
    this.words = new CutWords(format);
  }

  /** One table for each plan, or one for each rule of a plan. */
  List<Table> tables() {
    List<Table> tables = new ArrayList<>();
    for (CutPlan plan : plans) {
      Certificate certificate = plan.result().orElseThrow().certificate();
      // a search stands by itself
      boolean ruled = certificate.search().isEmpty() && !certificate.rules().isEmpty();
      if (!ruled) {
        tables.add(prices(plan, certificate));
      }
      for (int r = 0; ruled && r < certificate.rules().size(); r++) {
        tables.add(rule(plan, certificate, r));
      }
      certificate
          .search()
          .ifPresent(
              tree ->
                  tables.addAll(
                      CutSearches.tables(
                          plan, tree, CutTables.tableName("prices", plan, plans), format)));
    }
    return tables;
  }

  private Table prices(CutPlan plan, Certificate certificate) {
    Planned result = plan.result().orElseThrow();
    List<List<Entry>> rows = new ArrayList<>();
    long worth = parts(plan, certificate.prices(), rows);
    for (int s = 0; s < certificate.premiums().size(); s++) {
      long premium = certificate.premiums().get(s);
      if (premium > 0) {
        NestingProblem.Stock stock = plan.problem().stocks().get(s);
        worth -= premium * stock.available();
        rows.add(row(new Length(stock.length()), -stock.available(), premium));
      }
    }
    return new Table(
        CutTables.tableName("prices", plan, plans),
        "Proof for "
            + plan.pool().name()
            + ": no bar holds pieces worth more than "
            + certificate.scale()
            + unit(plan)
            + (result.proof() == Proof.SEARCH ? ". " + result.search() + " So " : ", so ")
            + least(plan, certificate),
        columns(),
        rows,
        totals("in all", worth));
  }

  private Table rule(CutPlan plan, Certificate certificate, int r) {
    Certificate.Rule rule = certificate.rules().get(r);
    int count = certificate.rules().size();
    List<List<Entry>> rows = new ArrayList<>();
    long worth = parts(plan, rule.prices(), rows);
    List<String> bars = new ArrayList<>();
    for (int s = 0; s < rule.weights().size(); s++) {
      if (rule.weights().get(s) > 0) {
        Length length = new Length(plan.problem().stocks().get(s).length());
        bars.add(rule.weights().get(s) + " on " + words.length(length));
      }
    }
    String title =
        "Proof for "
            + plan.pool().name()
            + (count > 1 ? ", rule " + (r + 1) + " of " + count : "")
            + ": pieces worth the sum below need bars that hold it, and a bar holds no more than "
            + String.join(", ", bars)
            + (r + 1 < count
                ? ""
                : ". Every number of bars that would do better breaks "
                    + (count > 1 ? "one of these rules" : "this rule")
                    + ", so "
                    + least(plan, certificate));
    return new Table(
        CutTables.tableName("prices", plan, plans) + "-rule-" + (r + 1),
        title,
        columns(),
        rows,
        totals("needed", worth));
  }

  private static long parts(CutPlan plan, SortedMap<Long, Long> prices, List<List<Entry>> rows) {
    TreeMap<Length, Long> counts = new TreeMap<>();
    for (NestingProblem.Part part : plan.problem().parts()) {
      counts.merge(new Length(part.length()), (long) part.count(), Long::sum);
    }
    long worth = 0;
    for (Map.Entry<Length, Long> each : counts.descendingMap().entrySet()) {
      long price = prices.getOrDefault(each.getKey().ticks(), 0L);
      worth += price * each.getValue();
      rows.add(row(each.getKey(), each.getValue(), price));
    }
    return worth;
  }

  private static List<Entry> row(Length length, long count, long price) {
    return List.of(
        new Entry.Size(length),
        new Entry.Count(count),
        new Entry.Count(price),
        new Entry.Count(price * count));
  }

  private List<Column> columns() {
    return List.of(
        Column.length("length", "Length", format),
        Column.count("quantity", "Qty"),
        Column.count("price", "Price"),
        Column.count("worth", "Worth"));
  }

  private static List<Entry> totals(String what, long worth) {
    return List.of(Entry.text(what), Entry.NONE, Entry.NONE, new Entry.Count(worth));
  }

  private String unit(CutPlan plan) {
    return switch (plan.goal()) {
      case BARS -> "";
      case LENGTH -> " for each " + words.length(plan.unitOfCost()) + " of its length";
      case COST -> " for each unit of its cost";
    };
  }

  private String least(CutPlan plan, Certificate certificate) {
    long bound = certificate.bound();
    return switch (plan.goal()) {
      case BARS -> "at least " + CutWords.counted((int) bound, "bar") + " must be bought";
      case LENGTH -> "at least " + words.length(plan.unitOfCost().times(bound)) + " must be bought";
      case COST -> "no plan costs less than " + bound;
    };
  }
}
