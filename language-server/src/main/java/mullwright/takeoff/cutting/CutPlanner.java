package mullwright.takeoff.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;
import mullwright.takeoff.nesting.Limits;
import mullwright.takeoff.nesting.Nesting;
import mullwright.takeoff.nesting.NestingProblem;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult;
import mullwright.takeoff.nesting.NestingResult.Bar;
import mullwright.takeoff.nesting.NestingResult.Cut;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Refused;

/**
 * Plans the bars of a cut list, pool after pool; a bar on hand that one pool takes is gone for the
 * next. Lengths are exact throughout, never rounded.
 */
public final class CutPlanner {
  private CutPlanner() {}

  /** One plan for each pool, in their order. */
  public static List<CutPlan> plan(CutList list, Limits limits) {
    List<CutPlan> plans = new ArrayList<>();
    Rack rack = list.rack();
    for (CutPool pool : list.pools()) {
      CutPlan plan = plan(pool, rack.of(pool), limits);
      plans.add(plan);
      Map<Origin, Integer> used = new LinkedHashMap<>();
      for (CutBar bar : plan.bars()) {
        bar.lot().ifPresent(lot -> used.merge(lot.origin(), 1, Integer::sum));
      }
      rack = rack.without(used);
    }
    return List.copyOf(plans);
  }

  /** What can be bought, by length, the cheapest where one length is listed twice. */
  private record Market(TreeMap<Length, Optional<Integer>> lengths) {
    static Market of(CutPool pool) {
      TreeMap<Length, Optional<Integer>> lengths = new TreeMap<>();
      for (Part.Stock stock : pool.stock()) {
        if (stock.length().value().signum() > 0) {
          lengths.merge(
              stock.length().value(), stock.cost().map(cost -> cost.value()), Market::cheaper);
        }
      }
      return new Market(lengths);
    }

    private static Optional<Integer> cheaper(Optional<Integer> one, Optional<Integer> other) {
      return one.isEmpty() ? other : other.isEmpty() || one.get() <= other.get() ? one : other;
    }

    CutPlan.Goal goal() {
      if (lengths.size() <= 1) {
        return CutPlan.Goal.BARS;
      }
      return lengths.values().stream().allMatch(Optional::isPresent)
          ? CutPlan.Goal.COST
          : CutPlan.Goal.LENGTH;
    }

    /** The stocks to buy, from the shortest. */
    List<Stock> stocks() {
      long unit = 0;
      for (Length length : lengths.keySet()) {
        unit = gcd(length.ticks(), unit);
      }
      List<Stock> stocks = new ArrayList<>();
      for (Map.Entry<Length, Optional<Integer>> each : lengths.entrySet()) {
        long cost =
            switch (goal()) {
              case BARS -> 1;
              case LENGTH -> each.getKey().ticks() / unit;
              case COST -> each.getValue().orElseThrow();
            };
        stocks.add(Stock.unlimited(each.getKey().ticks(), cost));
      }
      return stocks;
    }

    private static long gcd(long a, long b) {
      return b == 0 ? a : gcd(b, a % b);
    }
  }

  /** Pieces that need not be told apart on a bar. */
  private record Alike(Length length, String wall, String mark) {}

  private static CutPlan plan(CutPool pool, List<Rack.Lot> lots, Limits limits) {
    Market market = Market.of(pool);
    List<Stock> stocks = new ArrayList<>(market.stocks());
    int bought = stocks.size();
    for (Rack.Lot lot : lots) {
      stocks.add(new Stock(lot.length().ticks(), 0, lot.count()));
    }
    Length longest = Length.ZERO;
    for (Stock stock : stocks) {
      longest = Length.max(longest, new Length(stock.length()));
    }
    Length reach = longest.minus(pool.saw().endTrim().times(2));
    List<CutPiece> tooLong = new ArrayList<>();
    Map<Alike, List<CutPiece>> alike = new LinkedHashMap<>();
    for (CutPiece piece : pool.pieces()) {
      if (!stocks.isEmpty() && piece.length().isLongerThan(reach)) {
        tooLong.add(piece);
      } else {
        alike
            .computeIfAbsent(
                new Alike(piece.length(), piece.wall(), piece.mark()), key -> new ArrayList<>())
            .add(piece);
      }
    }
    List<NestingProblem.Part> parts = new ArrayList<>();
    alike.forEach(
        (key, pieces) -> parts.add(new NestingProblem.Part(key.length().ticks(), pieces.size())));
    NestingProblem problem =
        new NestingProblem(
            stocks,
            parts,
            pool.saw().kerf().ticks(),
            pool.saw().endTrim().ticks(),
            pool.saw().piecesPerBar());
    NestingResult result = Nesting.solve(problem, limits);
    if (result instanceof Refused refused) {
      return new CutPlan(
          pool,
          List.of(),
          tooLong,
          market.goal(),
          problem,
          Optional.empty(),
          Optional.of(refused.reason()));
    }
    Planned planned = (Planned) result;
    List<CutBar> bars = bars(planned, problem, List.copyOf(alike.values()), lots, bought);
    return new CutPlan(
        pool, bars, tooLong, market.goal(), problem, Optional.of(planned), Optional.empty());
  }

  private static List<CutBar> bars(
      Planned planned,
      NestingProblem problem,
      List<List<CutPiece>> pieces,
      List<Rack.Lot> lots,
      int bought) {
    int[] taken = new int[pieces.size()];
    List<CutBar> bars = new ArrayList<>();
    for (Bar bar : planned.bars()) {
      List<CutPiece> on = new ArrayList<>();
      for (Cut cut : bar.cuts()) {
        on.add(pieces.get(cut.part()).get(taken[cut.part()]++));
      }
      bars.add(
          new CutBar(
              new Length(problem.stocks().get(bar.stock()).length()),
              bar.stock() < bought ? Optional.empty() : Optional.of(lots.get(bar.stock() - bought)),
              on,
              new Length(bar.kerf()),
              new Length(bar.drop())));
    }
    return bars;
  }
}
