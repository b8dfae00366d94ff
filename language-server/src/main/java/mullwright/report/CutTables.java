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

  /** By part, all its finishes together. */
  Table whereItGoes() {
    Map<String, Share> parts = new LinkedHashMap<>();
    plans.forEach(plan -> parts.merge(plan.pool().part().name(), Share.of(plan), Share::plus));
    List<List<Entry>> rows = new ArrayList<>();
    parts.forEach((part, share) -> rows.add(share.row(part)));
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
        parts.values().stream()
            .reduce(Share::plus)
            .map(all -> all.row("in all"))
            .orElse(List.of()));
  }

  /** Where the length of some bars goes. */
  private record Share(Length bars, Length pieces, Length kept, Length waste) {
    static Share of(CutPlan plan) {
      Length kept = plan.kept().stream().reduce(Length.ZERO, Length::plus);
      return new Share(plan.barLength(), plan.cutLength(), kept, plan.waste());
    }

    Share plus(Share other) {
      return new Share(
          bars.plus(other.bars),
          pieces.plus(other.pieces),
          kept.plus(other.kept),
          waste.plus(other.waste));
    }

    List<Entry> row(String name) {
      return List.of(
          Entry.text(name),
          new Entry.Size(bars),
          new Entry.Size(pieces),
          new Entry.Size(kept),
          new Entry.Size(waste),
          new Entry.Amount(Quantity.of(Rational.of(waste.ticks(), bars.ticks()))));
    }
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
              tableName("bars", plan),
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
              tableName("saw-list", plan),
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

  private String title(CutPlan plan) {
    return capital(plan.pool().name()) + ": " + words.outcome(plan);
  }

  private String tableName(String what, CutPlan plan) {
    return tableName(what, plan, plans);
  }

  /** {@code bars-of-mullion-6}; the second pool of a part has another finish or saw. */
  static String tableName(String what, CutPlan plan, List<CutPlan> plans) {
    String part = plan.pool().part().name();
    long before =
        plans.subList(0, plans.indexOf(plan)).stream()
            .filter(other -> other.pool().part().name().equals(part))
            .count();
    return what + "-of-" + part + (before == 0 ? "" : "-" + (before + 1));
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
