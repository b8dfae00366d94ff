package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.movement.SpliceBand;
import mullwright.derivation.Derivation;
import mullwright.layout.SpliceJoint;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;

/**
 * Where a splice stands between what holds its vertical in and out.
 *
 * @param joint the splice
 * @param below the nearest support under it
 * @param above the nearest support over it
 */
public record JointPlace(SpliceJoint joint, RunSupport below, RunSupport above) {
  /** Keeps binary images of exact heights from deciding [m]. */
  private static final double HAIR = 1e-7;

  /** The place of a splice; empty where nothing holds the vertical on one side of it. */
  public static Optional<JointPlace> of(WallAnalysis analysis, SpliceJoint joint) {
    double y = joint.y().toMetres();
    VerticalRun run = analysis.runOf(analysis.layout().verticals().get(joint.below()));
    List<RunSupport> supports = run.supports();
    int above = Ascending.leading(supports.size(), i -> supports.get(i).y() <= y);
    return above == 0 || above == supports.size()
        ? Optional.empty()
        : Optional.of(new JointPlace(joint, supports.get(above - 1), supports.get(above)));
  }

  /** Distance between the two supports [m]. */
  public double span() {
    return above.y() - below.y();
  }

  /** The nearer of the two supports; the lower one where both are as near. */
  public RunSupport nearest() {
    double y = joint.y().toMetres();
    return y - below.y() <= above.y() - y ? below : above;
  }

  /** Distance from the joint to the nearer support [m]. */
  public double distance() {
    return Math.abs(joint.y().toMetres() - nearest().y());
  }

  /** Share of the span that {@link #distance} is. */
  public double share() {
    return distance() / span();
  }

  /** The band in which the moment is small. */
  public SpliceBand.Result band() {
    return SpliceBand.solve(span()).solved().orElseThrow();
  }

  /** Height in the band nearest to the joint's share {@code at} of the span from a support [m]. */
  double heightAt(RunSupport support, double at) {
    return support == below ? support.y() + at * span() : support.y() - at * span();
  }

  /** True if the joint stands in the band, a hair beside it included. */
  public boolean inBand() {
    return holds(joint.y().toMetres());
  }

  /** True if a height [m] is in the band of the support nearest to the joint. */
  public boolean holds(double height) {
    double distance = Math.abs(height - nearest().y());
    return distance >= band().near() - HAIR && distance <= band().far() + HAIR;
  }

  /** The lower and upper height of the band on the side of the nearer support [m]. */
  public double[] bandHeights() {
    double near = heightAt(nearest(), SpliceBand.NEAR);
    double far = heightAt(nearest(), SpliceBand.FAR);
    return new double[] {Math.min(near, far), Math.max(near, far)};
  }

  /** Height at which a long run under uniform load has no moment, beside the nearer support [m]. */
  public double bestHeight() {
    return heightAt(nearest(), SpliceBand.CONTRAFLEXURE);
  }

  /** {@link #distance} with how it came about. */
  public Derivation measured() {
    return Derivation.computed(
        "distance from the nearest support",
        Length.nearest(distance()),
        "height of the splice − height of " + nearest().name(),
        "conventions of measure",
        Derivation.stated("height of the splice", joint.y(), joint.splice().at().origin()));
  }

  /** The span with how it came about. */
  public Derivation storeySpan() {
    return Derivation.computed(
        "storey span",
        Length.nearest(span()),
        "height of " + above.name() + " − height of " + below.name(),
        "conventions of measure");
  }

  /** The end of the band that is passed, or the far one if neither is. */
  public Derivation limit() {
    boolean near = distance() < band().near();
    return (near ? SpliceBand.NEAREST : SpliceBand.FARTHEST)
        .explain(
            near ? "least distance" : "greatest distance",
            near ? band().near() : band().far(),
            mullwright.quantity.Kind.LENGTH,
            storeySpan());
  }
}
