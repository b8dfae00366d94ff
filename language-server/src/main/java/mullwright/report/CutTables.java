package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import mullwright.takeoff.cutting.CutBar;
import mullwright.takeoff.cutting.CutPiece;
import mullwright.takeoff.cutting.CutPlan;
import mullwright.takeoff.nesting.Certificate;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Proof;

/** Tables of cutting plans: what to buy, what becomes of it, the bars of each part. */
final class CutTables {
  private final List<CutPlan> plans;
  private final LengthFormat format;
  private final CutWords words;
  private final boolean severalWalls;

  CutTables(List<CutPlan> plans, LengthFormat format, boolean severalWalls) {
    this.plans = plans.stream().filter(plan -> !plan.bars().isEmpty()).toList();
    this.format = format;
    this.words = new CutWords(format);
    this.severalWalls = severalWalls;
  }

  Table toBuy() {
    List<List<Entry>> rows = new ArrayList<>();
    long count = 0;
    Length sum = Length.ZERO;
    for (CutPlan plan : plans) {
      Map<Length, Integer> bars = new TreeMap<>();
      for (CutBar bar : plan.bars()) {
        if (bar.lot().isEmpty()) {
          bars.merge(bar.stock(), 1, Integer::sum);
        }
      }
      for (Map.Entry<Length, Integer> each : bars.entrySet()) {
        Length all = each.getKey().times(each.getValue());
        count += each.getValue();
        sum = sum.plus(all);
        rows.add(
            List.of(
                Entry.text(plan.pool().part().name()),
                Entry.text(plan.pool().alloy()),
                Entry.text(plan.pool().finish()),
                new Entry.Count(each.getValue()),
                new Entry.Size(each.getKey()),
                new Entry.Size(all)));
      }
    }
    return new Table(
        "to-buy",
        "Bars to buy",
        List.of(
            Column.text("part", "Part"),
            Column.text("alloy", "Alloy").folding(),
            Column.text("finish", "Finish").folding(),
            Column.count("quantity", "Qty"),
            Column.length("stock-length", "Stock length", format),
            Column.length("total-length", "Total length", format)),
        rows,
        rows.isEmpty()
            ? List.of()
            : List.of(
                Entry.text("in all"),
                Entry.NONE,
                Entry.NONE,
                new Entry.Count(count),
                Entry.NONE,
                new Entry.Size(sum)));
  }

  Table whereItGoes() {
    List<List<Entry>> rows = new ArrayList<>();
    Length bars = Length.ZERO;
    Length pieces = Length.ZERO;
    Length kept = Length.ZERO;
    Length waste = Length.ZERO;
    for (CutPlan plan : plans) {
      Length keep = plan.kept().stream().reduce(Length.ZERO, Length::plus);
      bars = bars.plus(plan.barLength());
      pieces = pieces.plus(plan.cutLength());
      kept = kept.plus(keep);
      waste = waste.plus(plan.waste());
      rows.add(
          shares(
              plan.pool().part().name(), plan.barLength(), plan.cutLength(), keep, plan.waste()));
    }
    return new Table(
        "where-it-goes",
        "Where the length of the bars goes",
        List.of(
            Column.text("part", "Part"),
            Column.length("bars", "Bars", format),
            Column.length("pieces", "Pieces", format),
            Column.length("kept", "Kept drops", format),
            Column.length("waste", "Waste", format),
            Column.amount("waste-share", "Waste", Unit.PERCENT)),
        rows,
        rows.isEmpty() ? List.of() : shares("in all", bars, pieces, kept, waste));
  }

  private static List<Entry> shares(
      String name, Length bars, Length pieces, Length kept, Length waste) {
    return List.of(
        Entry.text(name),
        new Entry.Size(bars),
        new Entry.Size(pieces),
        new Entry.Size(kept),
        new Entry.Size(waste),
        new Entry.Amount(Quantity.of(Rational.of(waste.ticks(), bars.ticks()))));
  }

  /** The bars of each part, equal ones in one row. */
  List<Table> bars() {
    List<Table> tables = new ArrayList<>();
    for (CutPlan plan : plans) {
      List<List<Entry>> rows = new ArrayList<>();
      List<CutBar> bars = plan.bars();
      for (int from = 0; from < bars.size(); ) {
        int to = from + 1;
        while (to < bars.size() && bars.get(from).alike(bars.get(to))) {
          to++;
        }
        CutBar bar = bars.get(from);
        rows.add(
            List.of(
                new Entry.Count(to - from),
                new Entry.Size(bar.stock()),
                source(bar),
                new Entry.Phrases(pieces(bar)),
                new Entry.Size(bar.drop()),
                fate(plan, bar),
                Entry.text(plan.pool().finish())));
        from = to;
      }
      tables.add(
          new Table(
              "bars-of-" + plan.pool().part().name(),
              title(plan),
              List.of(
                  Column.count("bars", "Bars"),
                  Column.length("stock-length", "Of", format),
                  Column.text("from", "From").folding(),
                  Column.names("pieces", "Pieces of each, as cut"),
                  Column.length("drop", "Drop", format),
                  Column.text("fate", "Then"),
                  Column.text("finish", "Finish").folding()),
              rows,
              List.of()));
    }
    return tables;
  }

  /** Every bar by itself, piece by piece, with where each begins. */
  List<Table> saws() {
    List<Table> tables = new ArrayList<>();
    for (CutPlan plan : plans) {
      List<List<Entry>> rows = new ArrayList<>();
      for (int at = 0; at < plan.bars().size(); at++) {
        CutBar bar = plan.bars().get(at);
        Length position = plan.pool().saw().endTrim();
        for (CutPiece piece : bar.pieces()) {
          rows.add(
              List.of(
                  new Entry.Count(at + 1),
                  new Entry.Size(bar.stock()),
                  source(bar),
                  Entry.text(mark(piece)),
                  Entry.text(piece.name()),
                  new Entry.Size(position),
                  new Entry.Size(piece.length()),
                  Entry.text(plan.pool().finish())));
          position = position.plus(piece.length()).plus(plan.pool().saw().kerf());
        }
        rows.add(
            List.of(
                new Entry.Count(at + 1),
                new Entry.Size(bar.stock()),
                source(bar),
                Entry.NONE,
                Entry.text(plan.keeps(bar.drop()) ? "drop, keep" : "drop, scrap"),
                Entry.NONE,
                new Entry.Size(bar.drop()),
                Entry.text(plan.pool().finish())));
      }
      tables.add(
          new Table(
              "saw-list-of-" + plan.pool().part().name(),
              title(plan),
              List.of(
                  Column.count("bar", "Bar"),
                  Column.length("stock-length", "Of", format),
                  Column.text("from", "From").folding(),
                  Column.text("mark", "Mark"),
                  Column.text("piece", "Piece"),
                  Column.length("begins", "Begins at", format),
                  Column.length("cut-length", "Cut length", format),
                  Column.text("finish", "Finish").folding()),
              rows,
              List.of()));
    }
    return tables;
  }

  /** The prices by which anyone can check each bound. */
  List<Table> prices() {
    List<Table> tables = new ArrayList<>();
    for (CutPlan plan : plans) {
      Planned result = plan.result().orElseThrow();
      Certificate certificate = result.certificate();
      Map<Length, Long> counts = new LinkedHashMap<>();
      for (var part : plan.problem().parts()) {
        counts.merge(new Length(part.length()), (long) part.count(), Long::sum);
      }
      List<List<Entry>> rows = new ArrayList<>();
      long worth = 0;
      for (Map.Entry<Length, Long> each : new TreeMap<>(counts).descendingMap().entrySet()) {
        long price = certificate.prices().getOrDefault(each.getKey().ticks(), 0L);
        worth += price * each.getValue();
        rows.add(
            List.of(
                new Entry.Size(each.getKey()),
                new Entry.Count(each.getValue()),
                new Entry.Count(price),
                new Entry.Count(price * each.getValue())));
      }
      for (int s = 0; s < certificate.premiums().size(); s++) {
        long premium = certificate.premiums().get(s);
        if (premium > 0) {
          var stock = plan.problem().stocks().get(s);
          worth -= premium * stock.available();
          rows.add(
              List.of(
                  new Entry.Size(new Length(stock.length())),
                  new Entry.Count(-stock.available()),
                  new Entry.Count(premium),
                  new Entry.Count(-premium * stock.available())));
        }
      }
      tables.add(
          new Table(
              "prices-of-" + plan.pool().part().name(),
              "Proof for "
                  + plan.pool().name()
                  + ": no bar holds pieces worth more than "
                  + certificate.scale()
                  + (plan.goal() == CutPlan.Goal.BARS ? "" : " for each unit of its cost")
                  + ", so "
                  + least(plan, certificate)
                  + (result.proof() == Proof.SEARCH ? ". " + result.search() : ""),
              List.of(
                  Column.length("length", "Length", format),
                  Column.count("quantity", "Qty"),
                  Column.count("price", "Price"),
                  Column.count("worth", "Worth")),
              rows,
              List.of(Entry.text("in all"), Entry.NONE, Entry.NONE, new Entry.Count(worth))));
    }
    return tables;
  }

  private static String least(CutPlan plan, Certificate certificate) {
    return switch (plan.goal()) {
      case BARS ->
          "at least " + CutWords.counted((int) certificate.bound(), "bar") + " must be bought";
      case LENGTH, COST -> "no plan costs less than " + certificate.bound();
    };
  }

  private String title(CutPlan plan) {
    String name = plan.pool().name();
    String finish = plan.pool().finish();
    boolean twice =
        plans.stream().filter(other -> other.pool().name().equals(name)).count() > 1
            && !finish.isEmpty();
    return capital(name) + (twice ? " (" + finish + ")" : "") + ": " + words.outcome(plan);
  }

  private static String capital(String name) {
    return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
  }

  private static Entry source(CutBar bar) {
    return Entry.text(bar.lot().isPresent() ? "on hand" : "bought");
  }

  private static Entry fate(CutPlan plan, CutBar bar) {
    return bar.drop().signum() == 0
        ? Entry.NONE
        : Entry.text(plan.keeps(bar.drop()) ? "keep" : "scrap");
  }

  private String mark(CutPiece piece) {
    return severalWalls ? piece.wall() + " " + piece.mark() : piece.mark();
  }

  /** {@code 4'-9 7/16" × 4 H2}. */
  private List<String> pieces(CutBar bar) {
    List<String> phrases = new ArrayList<>();
    List<CutPiece> pieces = bar.pieces();
    for (int from = 0; from < pieces.size(); ) {
      CutPiece piece = pieces.get(from);
      int to = from;
      while (to < pieces.size()
          && pieces.get(to).length().equals(piece.length())
          && mark(pieces.get(to)).equals(mark(piece))) {
        to++;
      }
      phrases.add(
          words.length(piece.length())
              + (to - from > 1 ? " × " + (to - from) : "")
              + Optional.of(mark(piece)).filter(m -> !m.isEmpty()).map(m -> " " + m).orElse(""));
      from = to;
    }
    return phrases;
  }
}
