package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import mullwright.layout.PieceRef;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;
import mullwright.review.FindingChange;
import mullwright.review.PieceChange;
import mullwright.review.WallReview;

/** Says what follows from each change, many pieces at once. */
final class ReviewEffects {
  private final WallReview review;
  private final UnitSystem units;
  private final double growth;

  ReviewEffects(WallReview review, UnitSystem units, double growth) {
    this.review = review;
    this.units = units;
    this.growth = growth;
  }

  /** What follows from the change of that index; "" if nothing does. */
  String of(int change) {
    StringJoiner said = new StringJoiner("; ");
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, String> nouns = new LinkedHashMap<>();
    for (PieceChange piece : review.pieces()) {
      if (piece.causes().get(0) == change) {
        String what = what(piece);
        counts.merge(what, 1, Integer::sum);
        nouns.put(what, noun(piece.key().kind(), piece.key().more()));
      }
    }
    String last = "";
    for (Map.Entry<String, Integer> entry : counts.entrySet()) {
      String noun = nouns.get(entry.getKey());
      String plural = entry.getValue() == 1 ? noun : noun + "s";
      String done = entry.getKey().substring(noun.length() + 1);
      said.add(entry.getValue() + (noun.equals(last) ? "" : " " + plural) + " " + done);
      last = noun;
    }
    count(said, grown(change), "reaction grown", "reactions grown");
    count(said, first(review.tripped(), change), "check tripped", "checks tripped");
    count(said, first(review.mended(), change), "check mended", "checks mended");
    return said.toString();
  }

  private static void count(StringJoiner said, long count, String one, String many) {
    if (count > 0) {
      said.add(count + " " + (count == 1 ? one : many));
    }
  }

  private long grown(int change) {
    return review.reactions().stream()
        .filter(reaction -> reaction.causes().get(0) == change && reaction.grewOver(growth))
        .count();
  }

  private static long first(List<FindingChange> findings, int change) {
    return findings.stream()
        .filter(one -> !one.causes().isEmpty() && one.causes().get(0) == change)
        .count();
  }

  /** What a piece is called beside others of its kind. */
  static String noun(PieceRef.Kind kind, String more) {
    return switch (kind) {
      case VERTICAL -> "vertical";
      case HORIZONTAL -> "horizontal";
      case CELL -> "lite";
      case COVER -> more.startsWith("plate") ? "plate" : "cap";
      case SPLICE -> "splice";
      case ANCHOR -> "anchor";
    };
  }

  private String what(PieceChange piece) {
    String noun = noun(piece.key().kind(), piece.key().more()) + " ";
    return switch (piece.what()) {
      case NEW -> noun + "new";
      case GONE -> noun + "gone";
      case CHANGED -> noun + altered(piece);
    };
  }

  private String altered(PieceChange piece) {
    boolean glass = piece.key().kind() == PieceRef.Kind.CELL;
    List<String> how = new ArrayList<>();
    grew(piece.longer(), glass ? "wider" : "longer", glass ? "narrower" : "shorter", how);
    grew(piece.taller(), "higher", "lower", how);
    if (piece.otherPart()) {
      how.add("now " + piece.state().make().part());
    }
    return how.isEmpty() ? "fixed otherwise" : String.join(" and ", how);
  }

  private void grew(Length by, String more, String less, List<String> how) {
    if (by.signum() != 0) {
      how.add((by.signum() > 0 ? more : less) + " by " + LengthPrinter.in(units, by.abs()));
    }
  }
}
