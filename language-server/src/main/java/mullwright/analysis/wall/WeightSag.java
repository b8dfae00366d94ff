package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.Formula;
import mullwright.analysis.deflection.DeadLoadLimit;
import mullwright.analysis.deflection.DeflectionLimit;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Given;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * How far a horizontal sags in the plane of the wall under the glass and the verticals on it,
 * beside how far it may.
 *
 * <p>It may sag by L/360 or 1/8", whichever is less; by no more than leaves 1/8" between it and the
 * edge of the lite under it; and by no more than a quarter of the bite at the head of the lite on
 * it (common practice). A clearance that is no more than 1/8" to begin with is left out: that is
 * not the sag's doing.
 *
 * @param span the horizontal
 * @param sag the greatest sag [m] and where it is
 * @param limit the limit that governs [m]
 * @param by what it is taken from, if not from the span: the clearance or the bite
 */
public record WeightSag(
    HorizontalSpan span, SolvedBeam.Peak sag, DeflectionLimit limit, Optional<Given<Length>> by) {
  private static final double LEAST_CLEARANCE = 0.125 * 0.0254;
  private static final double SHARE_OF_BITE = 0.25;

  /** Clearance less what must stay. */
  static final Formula CLEARANCE =
      new Formula("edge clearance of the lite under it − 1/8\"", "common practice");

  /** A quarter of the bite. */
  static final Formula BITE =
      new Formula("0.25 × bite at the head of the lite on it", "common practice");

  /**
   * The sag of a horizontal; empty if no lite and no vertical stands on it, it slopes, or its
   * profile does not state its second moment in the plane of the wall.
   */
  public static Optional<WeightSag> of(WallAnalysis analysis, HorizontalSpan span) {
    if (span.weight().isEmpty() || span.glassWeight() + span.borneWeight() <= 0) {
      return Optional.empty();
    }
    SolvedBeam.Peak sag = largest(span);
    DeflectionLimit limit = DeadLoadLimit.solve(span.length()).solved().orElseThrow();
    Optional<Given<Length>> by = Optional.empty();
    Given<Length> clearance = span.piece().profile().edgeClearance();
    double left = clearance.value().toMetres() - LEAST_CLEARANCE;
    List<Cell> cells = analysis.layout().cells();
    boolean glassUnder = false;
    for (int index : span.below()) {
      glassUnder |= glazed(cells.get(index));
    }
    if (glassUnder && left > 0 && left < limit.limit()) {
      limit = new DeflectionLimit(span.length(), left, CLEARANCE);
      by = Optional.of(clearance);
    }
    for (int index : span.above()) {
      Cell cell = cells.get(index);
      double bite = SHARE_OF_BITE * cell.biteTop().toMetres();
      if (glazed(cell) && bite > 0 && bite < limit.limit()) {
        limit = new DeflectionLimit(span.length(), bite, BITE);
        by = Optional.of(Given.stated(cell.biteTop(), span.piece().profile().origin()));
      }
    }
    return Optional.of(new WeightSag(span, sag, limit, by));
  }

  private static SolvedBeam.Peak largest(HorizontalSpan span) {
    List<Double> rests = span.rests();
    SolvedBeam.Peak sag = span.weight().get().sag(rests.get(0), rests.get(1));
    for (int i = 2; i < rests.size(); i++) {
      SolvedBeam.Peak next = span.weight().get().sag(rests.get(i - 1), rests.get(i));
      sag = next.size() > sag.size() ? next : sag;
    }
    return sag;
  }

  private static boolean glazed(Cell cell) {
    return cell.opening().isEmpty() && cell.glass().isPresent();
  }

  /** True if it sags further than it may; equal to the last digit is not. */
  public boolean passed() {
    return limit.utilisation(sag.value()) > 1 + 1e-9;
  }

  /** The sag with how it came about. */
  public Derivation measured() {
    return HorizontalTrace.sag(span, sag.size());
  }

  /** The limit with how it came about. */
  public Derivation explain() {
    Derivation of =
        by.map(
                given ->
                    limit.rule().equals(BITE)
                        ? Inputs.length("bite at the head of the lite on it", given)
                        : Inputs.length("edge clearance of the lite under it", given))
            .orElseGet(
                () ->
                    Derivation.computed(
                        "span",
                        Length.nearest(limit.span()),
                        "centre to centre of the verticals",
                        "conventions of measure"));
    return limit.rule().explain("limit", limit.limit(), Kind.LENGTH, of);
  }
}
