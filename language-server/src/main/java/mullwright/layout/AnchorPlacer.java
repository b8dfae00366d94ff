package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/**
 * Finds the height of each anchor and clip, and the length it holds.
 *
 * <p>A stated height wins; else an anchor at a floor sits where its part's bolt line says, and
 * whatever is at a row sits at that row's centre.
 */
final class AnchorPlacer {
  private final Frame frame;

  private AnchorPlacer(Frame frame) {
    this.frame = frame;
  }

  static List<PlacedAnchor> place(Frame frame, List<VerticalPiece> verticals) {
    AnchorPlacer placer = new AnchorPlacer(frame);
    VerticalsOnLine lines = new VerticalsOnLine(verticals, frame.lines.count());
    List<PlacedAnchor> placed = new ArrayList<>(frame.wall.anchors().size());
    for (AnchorUse use : frame.wall.anchors()) {
      String name = frame.names.anchor(use);
      Optional<Part.Anchor> part =
          use.part()
              .flatMap(
                  given -> frame.profiles.find(PartKind.ANCHOR, Part.Anchor.class, given.value()));
      Optional<Length> y = placer.height(use, part);
      if (y.isPresent()) {
        int vertical = lines.touching(use.line(), y.get());
        placed.add(new PlacedAnchor(placed.size(), use, y.get(), vertical, part, name));
      } else {
        frame.impossible.add(
            Impossible.because(
                Impossible.Reason.NO_SLAB_DEPTH, name, use.line(), use.line(), use.origin()));
      }
    }
    return placed;
  }

  private Optional<Length> height(AnchorUse use, Optional<Part.Anchor> part) {
    Optional<Length> row = row(use);
    if (row.isPresent()) {
      return row;
    }
    if (use.heightStated() || use.floor().isEmpty() || part.isEmpty()) {
      return Optional.of(use.place().elevation());
    }
    Grid.Floor floor = frame.grid.floors().get(use.floor().get());
    Part.BoltLine bolt = part.get().boltLine().value();
    Length distance = bolt.below() ? bolt.distance().negated() : bolt.distance();
    Length top = floor.elevation().value();
    if (bolt.fromTop()) {
      return Optional.of(top.plus(distance));
    }
    return floor.slab().map(Given::value).map(slab -> top.minus(slab).plus(distance));
  }

  // where the row steps at the line, the stretch nearer to the place that was chosen for it
  private Optional<Length> row(AnchorUse use) {
    Length chosen = use.place().elevation();
    Length nearest = null;
    for (Side side : Side.values()) {
      Optional<Bar> bar = frame.bars.named(use.place(), frame.lines.bay(use.line(), side));
      if (bar.isPresent()) {
        Length y = bar.get().yAt(frame.lines.x(use.line()));
        boolean nearer =
            nearest == null || y.minus(chosen).abs().isShorterThan(nearest.minus(chosen).abs());
        nearest = nearer ? y : nearest;
      }
    }
    return nearest == null
        ? frame.bars.elsewhere(use.place(), frame.lines.x(use.line()))
        : Optional.of(nearest);
  }
}
