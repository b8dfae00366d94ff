package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.layout.HorizontalPiece;

/**
 * A horizontal as a beam between the verticals that hold its ends, free to turn there, and over
 * those that end on it and hold it too.
 *
 * <p>Places are counted from the centre of the left vertical. A sloped horizontal has neither beam:
 * it is not checked.
 */
public final class HorizontalSpan {
  private final HorizontalPiece piece;
  private final double length;
  private final double glassWeight;
  private final double borneWeight;
  private final int[] above;
  private final int[] below;
  private final List<Double> held;
  private final List<Double> propped;
  private final HorizontalBeams beams;
  private final Supplier<HorizontalLoads> loads;

  HorizontalSpan(
      HorizontalPiece piece,
      double length,
      double glassWeight,
      double borneWeight,
      int[] above,
      int[] below,
      List<Double> held,
      List<Double> propped,
      HorizontalBeams beams,
      Supplier<HorizontalLoads> loads) {
    this.piece = piece;
    this.length = length;
    this.glassWeight = glassWeight;
    this.borneWeight = borneWeight;
    this.above = above;
    this.below = below;
    this.held = held;
    this.propped = propped;
    this.beams = beams;
    this.loads = loads;
  }

  /** The horizontal. */
  public HorizontalPiece piece() {
    return piece;
  }

  HorizontalBeams beams() {
    return beams;
  }

  /** What loads it, gathered when asked for. */
  HorizontalLoads loads() {
    return loads.get();
  }

  /** Indices of the cells that stand on it, from the left. */
  int[] above() {
    return above;
  }

  /** Indices of the cells under it, from the left. */
  int[] below() {
    return below;
  }

  /** True if no lite ends along it. */
  public boolean oneLiteASide() {
    return above.length <= 1 && below.length <= 1;
  }

  /** True if it does not slope; a sloped one is not checked. */
  public boolean level() {
    return piece.yLeft().equals(piece.yRight());
  }

  /** Centre to centre of the verticals that hold it [m]. */
  public double length() {
    return length;
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
    return glassWeight;
  }

  /** Weight of the verticals that stand on it or hang from it, with all they carry [N]. */
  public double borneWeight() {
    return borneWeight;
  }

  /** Where wind makes it lean on something: its ends, and verticals that hold it between [m]. */
  public List<Double> holds() {
    return between(held);
  }

  /** Where its weight rests: its ends, and verticals under it [m]. */
  public List<Double> rests() {
    return between(propped);
  }

  private List<Double> between(List<Double> places) {
    if (places.isEmpty()) {
      return List.of(0.0, length);
    }
    List<Double> all = new ArrayList<>();
    all.add(0.0);
    all.addAll(places);
    all.add(length);
    return all;
  }
}
