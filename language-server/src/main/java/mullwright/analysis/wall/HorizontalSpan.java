package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.HorizontalPiece;

/**
 * A horizontal as a beam between the verticals that hold its ends, free to turn there, and over
 * those that end on it and hold it too.
 *
 * <p>Places are counted from the centre of the left vertical. A sloped horizontal has neither beam:
 * it is not checked.
 *
 * @param above indices of the cells that stand on it, from the left; {@code below} of those under
 *     it
 */
public record HorizontalSpan(
    HorizontalPiece piece,
    HorizontalLoads loads,
    List<Integer> above,
    List<Integer> below,
    HorizontalBeams beams) {
  public HorizontalSpan {
    above = List.copyOf(above);
    below = List.copyOf(below);
  }

  /** True if it does not slope; a sloped one is not checked. */
  public boolean level() {
    return piece.yLeft().equals(piece.yRight());
  }

  /** Centre to centre of the verticals that hold it [m]. */
  public double length() {
    return loads.span();
  }

  /** Its bending under wind, if it could be solved. */
  public Optional<SolvedBeam> wind() {
    return beams.wind();
  }

  /** Its bending under the weight it bears, positive down, if it could be solved. */
  public Optional<SolvedBeam> weight() {
    return beams.weight();
  }

  /** Weight of the lites that stand on it [N]. */
  public double glassWeight() {
    return loads.edges().stream().mapToDouble(HorizontalLoads.Edge::weight).sum();
  }

  /** Where wind makes it lean on something: its ends, and verticals that hold it between [m]. */
  public List<Double> holds() {
    return between(loads.held());
  }

  /** Where its weight rests: its ends, and verticals under it [m]. */
  public List<Double> rests() {
    return between(loads.propped());
  }

  private List<Double> between(List<Double> places) {
    List<Double> all = new ArrayList<>();
    all.add(0.0);
    all.addAll(places);
    all.add(loads.span());
    return all;
  }
}
