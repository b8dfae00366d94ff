package mullwright.layout;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;

/** Tells how the ends of pieces are cut where a row slopes. */
final class Slants {
  private final List<HorizontalPiece> sloped;

  Slants(WallLayout layout) {
    sloped =
        layout.horizontals().stream()
            .filter(piece -> !piece.yLeft().equals(piece.yRight()))
            .toList();
  }

  /** Of a horizontal: its ends are cut upright, so over its face they go out of square. */
  static Length of(HorizontalPiece piece) {
    return slant(piece, piece.profile().face().value());
  }

  /** Of a vertical's upper or lower end: as the sloped horizontal there runs, if one does. */
  Length of(VerticalPiece piece, boolean top) {
    if (sloped.isEmpty() || (top ? piece.spliceAbove() : piece.spliceBelow()) >= 0) {
      return Length.ZERO;
    }
    Length face = piece.profile().face().value();
    Length end = top ? piece.top() : piece.bottom();
    Optional<HorizontalPiece> at = Optional.empty();
    Length nearest = Length.ZERO;
    for (HorizontalPiece horizontal : sloped) {
      boolean beside =
          !horizontal.right().isShorterThan(piece.x().minus(face))
              && !horizontal.left().isLongerThan(piece.x().plus(face));
      Length off = centre(horizontal, piece.x()).minus(end).abs();
      boolean near =
          !off.isLongerThan(
              horizontal.profile().face().value().plus(slant(horizontal, face).abs()));
      if (beside && near && (at.isEmpty() || off.isShorterThan(nearest))) {
        at = Optional.of(horizontal);
        nearest = off;
      }
    }
    return at.map(horizontal -> slant(horizontal, face)).orElse(Length.ZERO);
  }

  static Length slant(HorizontalPiece piece, Length over) {
    Length rise = piece.yRight().minus(piece.yLeft());
    return rise.signum() == 0
        ? Length.ZERO
        : over.scaled(rise.ticks(), piece.right().minus(piece.left()).ticks());
  }

  private static Length centre(HorizontalPiece piece, Length x) {
    Length rise = piece.yRight().minus(piece.yLeft());
    Length run = piece.right().minus(piece.left());
    return piece.yLeft().plus(rise.scaled(x.minus(piece.left()).ticks(), run.ticks()));
  }
}
