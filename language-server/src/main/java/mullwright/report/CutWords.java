package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import mullwright.model.Fabrication;
import mullwright.model.Given;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.takeoff.cutting.CutPiece;
import mullwright.takeoff.cutting.CutPlan;
import mullwright.takeoff.cutting.Rack;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.Refusal;

/** Sentences about cutting plans. */
final class CutWords {
  private final LengthFormat format;

  CutWords(LengthFormat format) {
    this.format = format;
  }

  String length(Length length) {
    return format.print(length);
  }

  /** {@code 31 bars to buy; no plan buys fewer}. */
  String outcome(CutPlan plan) {
    if (plan.result().isEmpty()) {
      return "no plan";
    }
    int bought = plan.bought();
    int onHand = plan.bars().size() - bought;
    List<String> bars = new ArrayList<>();
    if (bought > 0 || onHand == 0) {
      bars.add(counted(bought, "bar") + " to buy");
    }
    if (onHand > 0) {
      bars.add(counted(onHand, "bar") + " on hand");
    }
    return String.join(" and ", bars) + size(plan) + bound(plan);
  }

  private String size(CutPlan plan) {
    long cost = plan.result().map(Planned::cost).orElse(0L);
    return switch (plan.goal()) {
      case BARS -> "";
      case LENGTH -> ", " + length(plan.boughtLength());
      case COST -> ", cost " + cost;
    };
  }

  private String bound(CutPlan plan) {
    Planned result = plan.result().orElseThrow();
    if (result.cost() == 0) {
      return "";
    }
    String least =
        switch (plan.goal()) {
          case BARS -> counted((int) result.lowerBound(), "bar");
          case LENGTH -> length(plan.unitOfCost().times(result.lowerBound()));
          case COST -> "cost " + result.lowerBound();
        };
    if (!result.proved()) {
      return "; proved only that no plan can do with less than " + least;
    }
    return switch (plan.goal()) {
      case BARS -> "; no plan can use fewer";
      case LENGTH -> "; no plan can buy less";
      case COST -> "; no plan can cost less";
    };
  }

  /** What a reader must know of a plan before he cuts. */
  List<String> warnings(CutPlan plan) {
    List<String> warnings = new ArrayList<>();
    String name = plan.pool().name();
    if (!plan.tooLong().isEmpty()) {
      Length longest =
          plan.tooLong().stream().map(CutPiece::length).max(Length::compareTo).orElseThrow();
      warnings.add(
          "Left out, since no bar of "
              + name
              + " is long enough once "
              + length(plan.pool().saw().endTrim())
              + " is cut off each end: "
              + pieces(plan.tooLong())
              + ", up to "
              + length(longest)
              + ". Splice them, or add a longer stock length to the catalog.");
    }
    plan.refusal().map(reason -> refused(plan, reason)).ifPresent(warnings::add);
    if (plan.result().map(Planned::clock).orElse(false)) {
      warnings.add(
          "The clock ended the search for "
              + name
              + ": the plan holds, but another run may find a better one. Give it more time with"
              + " --seconds.");
    }
    return warnings;
  }

  private String refused(CutPlan plan, Refusal reason) {
    String name = plan.pool().name();
    String count = counted(plan.pool().pieces().size() - plan.tooLong().size(), "piece");
    if (reason instanceof Refusal.NoStock) {
      return "No plan for "
          + name
          + ": the catalog states no length it is bought in, so "
          + count
          + " wait. Add “stock 24'-0\"” or the like to it.";
    }
    if (reason instanceof Refusal.StockRunsOut) {
      return "No plan for "
          + name
          + ": the bars on hand do not hold all its pieces. Add a stock length to the catalog, or"
          + " more bars to “on-hand”.";
    }
    return "No plan for " + name + ": " + reason.message() + ".";
  }

  /** Bars on hand that no plan takes. */
  List<String> unused(Rack rack, List<CutPlan> plans) {
    Set<String> parts =
        plans.stream().map(plan -> plan.pool().part().name()).collect(Collectors.toSet());
    Map<String, List<String>> strangers = new LinkedHashMap<>();
    for (Rack.Lot lot : rack.lots()) {
      if (!parts.contains(lot.part())) {
        strangers
            .computeIfAbsent(lot.part(), part -> new ArrayList<>())
            .add(lot.count() + " × " + length(lot.length()));
      }
    }
    List<String> sentences = new ArrayList<>();
    strangers.forEach(
        (part, bars) ->
            sentences.add(
                "On hand but of no use here, since nothing is cut from “"
                    + part
                    + "”: "
                    + String.join(", ", bars)
                    + "."));
    return sentences;
  }

  /** How the shops of the walls cut, defaults called so. */
  List<String> saws(List<Report.WallAtHand> walls) {
    Set<String> sentences = new LinkedHashSet<>();
    for (Report.WallAtHand wall : walls) {
      Fabrication shop = wall.facts().wall().fabrication();
      sentences.add(
          "Each cut takes "
              + given(shop.kerf())
              + "; "
              + given(shop.endTrim())
              + " is cut off each end of a bar; a drop of "
              + given(shop.leastDrop())
              + " or more is kept"
              + shop.piecesPerBar()
                  .map(most -> "; a bar holds " + counted(most.value(), "piece") + " at most")
                  .orElse("")
              + ".");
    }
    return List.copyOf(sentences);
  }

  private String given(Given<Length> given) {
    return length(given.value()) + (given.assumed() ? " (default, " + given.source() + ")" : "");
  }

  private static String pieces(List<CutPiece> pieces) {
    List<String> names =
        pieces.stream().limit(3).map(piece -> piece.wall() + " " + piece.name()).toList();
    int more = pieces.size() - names.size();
    return String.join("; ", names) + (more > 0 ? " and " + more + " more" : "");
  }

  static String counted(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
