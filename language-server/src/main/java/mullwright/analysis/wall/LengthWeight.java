package mullwright.analysis.wall;

/**
 * What a length of vertical carries down, by where it comes from. All in [N], 0 or more but for
 * brackets, which may lift.
 *
 * @param own the vertical itself
 * @param reinforcement bars in it
 * @param horizontals what horizontals bring that end on it or lie on it, with all they carry
 * @param fillings half of each filling beside it that stands on no horizontal
 * @param above lengths over it that nothing else holds: they slide down until their joint closes
 * @param brackets what brackets bring
 */
public record LengthWeight(
    double own,
    double reinforcement,
    double horizontals,
    double fillings,
    double above,
    double brackets) {

  /** All of it [N]. */
  public double total() {
    return own + reinforcement + horizontals + fillings + above + brackets;
  }
}
