/**
 * Cutting layouts: cut lengths nested on stock lengths at least cost, proved where proof is within
 * reach.
 *
 * <p>Start at {@link mullwright.takeoff.nesting.Nesting}. A {@link
 * mullwright.takeoff.nesting.NestingProblem} says what is to be cut from what; the answer holds a
 * plan, a lower bound and a {@link mullwright.takeoff.nesting.Certificate} that {@link
 * mullwright.takeoff.nesting.CertificateCheck} can verify without trusting the solver. Lengths are
 * integers in any one unit, costs are integers in any other.
 *
 * <p>Knows nothing of walls, finishes or alloys: whoever calls it pools the parts that may share a
 * bar. Does not print, does not read files, and reads the clock only when a time limit is given.
 */
package mullwright.takeoff.nesting;
