package mullwright.server.hover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.check.WallFacts;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.quantity.Quantity;
import mullwright.workspace.Reading;

/** Tells the governing numbers of members, splices and anchors, each with the piece it is of. */
final class FrameFacts {
  private static final String CAUTION =
      "An aid to drafting: a licensed engineer and the local code govern.";

  /** More pieces than this are not gone through while somebody waits for a hover. */
  private static final int MOST = 2000;

  private FrameFacts() {}

  /** Adds the governing numbers of those pieces; nothing where none was solved. */
  static void tell(
      List<PieceRef> pieces, Reading reading, WallLayout layout, Numbers numbers, Page page) {
    Optional<WallFacts> wall =
        reading.walls().stream().filter(facts -> facts.layout() == layout).findFirst();
    if (wall.isEmpty() || pieces.size() > MOST) {
      return;
    }
    List<FrameNumber> governing = new FrameNumbers(wall.get().analysis()).governing(pieces);
    for (FrameNumber number : governing) {
      StringBuilder text = new StringBuilder(of(number, number.value(), numbers));
      number
          .limit()
          .ifPresent(
              limit ->
                  text.append(" of ")
                      .append(of(number, limit, numbers))
                      .append(" (")
                      .append(share(number.value() / limit))
                      .append(')'));
      text.append(number.loads().isEmpty() ? "" : ", " + number.loads());
      text.append(pieces.size() == 1 ? "" : ", " + number.piece());
      page.fact(number.what(), text.toString());
    }
    if (!governing.isEmpty()) {
      page.line(CAUTION);
    }
  }

  private static String of(FrameNumber number, double value, Numbers numbers) {
    return numbers.of(Quantity.ofSi(value, number.kind()), number.kind());
  }

  private static String share(double share) {
    return BigDecimal.valueOf(share).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }
}
