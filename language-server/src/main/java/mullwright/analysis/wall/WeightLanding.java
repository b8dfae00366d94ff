package mullwright.analysis.wall;

import java.util.List;
import java.util.stream.Collectors;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;

/** Where the weight of a length of vertical goes. */
public sealed interface WeightLanding {
  /** What takes it, as the shop names it, after a word for how: {@code stands on horizontal R2}. */
  String words();

  /**
   * It hangs from its dead-load anchors, which share it.
   *
   * @param anchors from below, one or more
   */
  record HangsFromAnchors(List<PlacedAnchor> anchors) implements WeightLanding {
    public HangsFromAnchors {
      anchors = List.copyOf(anchors);
    }

    @Override
    public String words() {
      return "hangs from "
          + anchors.stream().map(PlacedAnchor::name).collect(Collectors.joining(" and "));
    }
  }

  /**
   * Its end butts a horizontal that runs through and takes its weight.
   *
   * @param standing true if the horizontal is under it, false if it hangs from one over it
   * @param support the horizontal
   */
  record OnHorizontal(boolean standing, RunSupport support) implements WeightLanding {
    @Override
    public String words() {
      return (standing ? "stands on " : "hangs from ") + support.name();
    }
  }

  /**
   * Nothing holds it up: it slides down until the joint under it closes, and stands on the length
   * below.
   *
   * @param below the length below
   */
  record OnClosedJoint(VerticalPiece below) implements WeightLanding {
    @Override
    public String words() {
      return "slides down and stands on " + below.name() + ", with the joint closed";
    }
  }

  /**
   * Nothing holds it up: it slides down until the lowest of its sliding anchors and clips is at the
   * end of its slot.
   *
   * @param anchor the lowest
   */
  record OnSlotEnd(PlacedAnchor anchor) implements WeightLanding {
    @Override
    public String words() {
      return "slides down to the end of the slot of " + anchor.name();
    }
  }

  /** Nothing holds it at all. */
  record Nowhere() implements WeightLanding {
    @Override
    public String words() {
      return "rests on nothing";
    }
  }
}
