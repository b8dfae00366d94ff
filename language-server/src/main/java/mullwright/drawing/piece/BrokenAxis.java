package mullwright.drawing.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mullwright.drawing.Scale;

/**
 * Lays a long bar on paper to scale, but for stretches without anything to show: they are broken
 * where the room does not suffice.
 *
 * <p>Every stretch that is too long is shown equally long, as long as the room allows.
 */
final class BrokenAxis {
  /** A stretch shorter than this on paper has no room for the sign of a break [mm]. */
  static final double LEAST = 9;

  private final double[] places;
  private final double[] papers;
  private final List<Double> breaks = new ArrayList<>();

  /**
   * An axis.
   *
   * @param places what must be shown, ascending, ends included [mm of the bar]
   * @param room on paper [mm]; taken more if the places need it
   */
  BrokenAxis(double[] places, Scale scale, double room) {
    this.places = places.clone();
    this.papers = new double[places.length];
    double most = most(places, scale, room);
    for (int at = 1; at < places.length; at++) {
      double gap = scale.paper(places[at] - places[at - 1]);
      double shown = Math.min(gap, most);
      papers[at] = papers[at - 1] + shown;
      if (shown < gap) {
        breaks.add(papers[at - 1] + shown / 2);
      }
    }
  }

  // the longest a stretch may be so that all fit: the longer ones share what the shorter ones leave
  private static double most(double[] places, Scale scale, double room) {
    double left = room;
    double[] gaps = new double[places.length - 1];
    for (int at = 0; at < gaps.length; at++) {
      gaps[at] = scale.paper(places[at + 1] - places[at]);
    }
    Arrays.sort(gaps);
    for (int at = 0; at < gaps.length; at++) {
      double share = left / (gaps.length - at);
      if (gaps[at] > share) {
        return Math.max(LEAST, share);
      }
      left -= gaps[at];
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Where a place lies on paper, from the datum. */
  double at(double place) {
    for (int i = 1; i < places.length; i++) {
      if (place <= places[i] || i == places.length - 1) {
        double gap = places[i] - places[i - 1];
        double share = gap == 0 ? 0 : (place - places[i - 1]) / gap;
        return papers[i - 1] + share * (papers[i] - papers[i - 1]);
      }
    }
    return 0;
  }

  /** The paper the bar takes. */
  double length() {
    return papers[papers.length - 1];
  }

  /** Where it is broken, on paper. */
  List<Double> breaks() {
    return List.copyOf(breaks);
  }
}
