package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.ByHeight;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.quantity.Length;

/** Finds what holds each run of vertical in and out: its anchors, and what its ends butt. */
final class RunSupports {
  private final List<List<PlacedAnchor>> anchorsOfPiece;

  /** By line: the horizontals that run through it, by their faces. */
  private final List<ByHeight<HorizontalPiece>> throughOfLine = new ArrayList<>();

  RunSupports(WallLayout layout) {
    anchorsOfPiece = Lists.of(layout.verticals().size());
    for (PlacedAnchor anchor : layout.anchors()) {
      if (anchor.vertical() >= 0) {
        anchorsOfPiece.get(anchor.vertical()).add(anchor);
      }
    }
    List<List<HorizontalPiece>> through = Lists.of(layout.wall().grid().lines().size());
    for (HorizontalPiece horizontal : layout.horizontals()) {
      for (int line = horizontal.leftLine() + 1; line < horizontal.rightLine(); line++) {
        through.get(line).add(horizontal);
      }
    }
    through.forEach(pieces -> throughOfLine.add(byFace(pieces)));
  }

  private static ByHeight<HorizontalPiece> byFace(List<HorizontalPiece> pieces) {
    long[] bottoms = new long[pieces.size()];
    long[] tops = new long[pieces.size()];
    for (int i = 0; i < tops.length; i++) {
      Length half = pieces.get(i).profile().face().value().half();
      bottoms[i] = pieces.get(i).yLeft().minus(half).ticks();
      tops[i] = pieces.get(i).yLeft().plus(half).ticks();
    }
    return new ByHeight<>(pieces, bottoms, tops);
  }

  /** From below, none twice at one height. */
  List<RunSupport> of(List<VerticalPiece> pieces) {
    List<RunSupport> found = new ArrayList<>();
    for (VerticalPiece piece : pieces) {
      for (PlacedAnchor anchor : anchorsOfPiece.get(piece.index())) {
        boolean dead = anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD;
        double y = anchor.y().toMetres();
        add(found, RunSupport.anchor(y, anchor.index(), dead, anchor.name()));
      }
    }
    buttedEnd(pieces.get(0), true).ifPresent(support -> add(found, support));
    buttedEnd(pieces.get(pieces.size() - 1), false).ifPresent(support -> add(found, support));
    return found;
  }

  private static void add(List<RunSupport> found, RunSupport support) {
    // those found stand from below, as they nearly always come
    int at = found.size();
    while (at > 0 && found.get(at - 1).y() > support.y() - RunSupport.SAME_HEIGHT) {
      at--;
    }
    if (at == found.size() || found.get(at).y() >= support.y() + RunSupport.SAME_HEIGHT) {
      found.add(at, support);
    } else if (support.deadLoad() && !found.get(at).deadLoad()) {
      found.set(at, support);
    }
  }

  /** The anchors and clips of a length, from below. */
  List<PlacedAnchor> anchorsOn(VerticalPiece piece) {
    return anchorsOfPiece.get(piece.index());
  }

  /** The horizontal running through that an end of a length butts, if one does. */
  Optional<RunSupport> buttedEnd(VerticalPiece piece, boolean lower) {
    Length end = lower ? piece.bottom() : piece.top();
    Length near = Length.nearest(RunSupport.SAME_HEIGHT);
    for (HorizontalPiece horizontal :
        throughOfLine.get(piece.line()).touching(end.minus(near), end.plus(near))) {
      Length half = horizontal.profile().face().value().half();
      Length edge = lower ? horizontal.yLeft().plus(half) : horizontal.yLeft().minus(half);
      if (Math.abs(edge.minus(end).toMetres()) < RunSupport.SAME_HEIGHT) {
        return Optional.of(
            RunSupport.horizontal(end.toMetres(), horizontal.index(), horizontal.name()));
      }
    }
    return Optional.empty();
  }
}
