package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult.Bar;
import mullwright.takeoff.nesting.NestingResult.Cut;
import mullwright.takeoff.nesting.NestingResult.Planned;

/** Says what is wrong with a plan, reckoned from the problem alone. */
public final class PlanCheck {
  private PlanCheck() {}

  /** Every fault of {@code plan}; empty if each piece is cut once and each bar adds up. */
  public static List<String> faults(NestingProblem problem, Planned plan) {
    List<String> faults = new ArrayList<>();
    int[] cut = new int[problem.parts().size()];
    int[] used = new int[problem.stocks().size()];
    long cost = 0;
    for (Bar bar : plan.bars()) {
      Stock stock = problem.stocks().get(bar.stock());
      used[bar.stock()]++;
      cost += stock.cost();
      long sum = 0;
      long free = problem.trim();
      for (Cut piece : bar.cuts()) {
        cut[piece.part()]++;
        long length = problem.parts().get(piece.part()).length();
        if (piece.position() < free) {
          faults.add("pieces overlap on " + bar);
        }
        free = piece.position() + length + problem.kerf();
        sum += length;
      }
      if (free - problem.kerf() > stock.length() - problem.trim()) {
        faults.add("a piece reaches into the trimmed end on " + bar);
      }
      if (sum + bar.kerf() + 2 * problem.trim() + bar.drop() != stock.length()) {
        faults.add("lengths do not add up to the stock on " + bar);
      }
      long n = bar.cuts().size();
      if (bar.kerf() < (n - 1) * problem.kerf() || bar.kerf() > n * problem.kerf()) {
        faults.add("the saw cuts do not add up on " + bar);
      }
      if (bar.drop() < 0 || n == 0) {
        faults.add("no such bar: " + bar);
      }
      if (bar.drop() > 0 && bar.kerf() != n * problem.kerf()) {
        faults.add("a drop is not cut off on " + bar);
      }
      if (problem.piecesPerBar() > 0 && n > problem.piecesPerBar()) {
        faults.add("too many pieces on " + bar);
      }
    }
    for (int i = 0; i < cut.length; i++) {
      if (cut[i] != problem.parts().get(i).count()) {
        faults.add("part " + i + " is cut " + cut[i] + " times");
      }
    }
    for (int s = 0; s < used.length; s++) {
      if (used[s] > problem.stocks().get(s).available()) {
        faults.add("stock " + s + " is used " + used[s] + " times");
      }
    }
    if (cost != plan.cost()) {
      faults.add("the cost is " + cost + ", not " + plan.cost());
    }
    if (plan.lowerBound() > plan.cost()) {
      faults.add("the bound exceeds the cost");
    }
    return faults;
  }
}
