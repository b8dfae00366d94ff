package mullwright.analysis.beam;

import java.util.Arrays;
import java.util.List;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/** Says what makes a problem no beam: ends reversed, a place outside, supports on one another. */
final class BeamCheck {
  private final Beam beam;
  private final Guard guard = Guard.range();

  private BeamCheck(Beam beam) {
    this.beam = beam;
  }

  static Outcome<BeamMesh> mesh(BeamProblem problem) {
    BeamCheck check = new BeamCheck(problem.beam());
    check.ends();
    check.stretches();
    check.supports();
    check.hinges();
    return check.guard.then(() -> BeamMesh.of(problem.beam())).then(mesh -> loads(problem, mesh));
  }

  private void ends() {
    guard.finite("start of the beam", beam.start(), "m").finite("end of the beam", beam.end(), "m");
    double length = beam.end() - beam.start();
    guard.that(
        length > HingedBeam.COINCIDENT, "length of the beam", length, "m", "greater than 0.0001");
  }

  private void stretches() {
    for (Beam.Stretch stretch : beam.stretches()) {
      guard.notNegative("flexural rigidity of a stretch", stretch.rigidity(), "N·m²");
      inside("start of a stretch", stretch.from());
      inside("end of a stretch", stretch.to());
      double length = stretch.to() - stretch.from();
      guard.that(length > 0, "length of a stretch", length, "m", "greater than 0");
    }
  }

  private void supports() {
    double[] places = new double[beam.supports().size()];
    for (int i = 0; i < places.length; i++) {
      Beam.Support support = beam.supports().get(i);
      places[i] = support.at();
      inside("place of a support", support.at());
      guard.that(
          support.stiffness() > 0,
          "stiffness of a support",
          support.stiffness(),
          "N/m",
          "greater than 0");
    }
    apart("a support", places);
  }

  private void hinges() {
    double[] places = new double[beam.hinges().size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = beam.hinges().get(i).at();
      inside("place of a hinge", places[i]);
    }
    apart("a hinge", places);
  }

  private void apart(String thing, double[] places) {
    Arrays.sort(places);
    for (int i = 1; i < places.length; i++) {
      guard.that(
          places[i] - places[i - 1] > HingedBeam.COINCIDENT,
          "place of " + thing,
          places[i],
          "m",
          "more than 0.0001 m from the next one");
    }
  }

  private void inside(String what, double place) {
    guard.that(place >= beam.start() && place <= beam.end(), what, place, "m", "on the beam");
  }

  private static Outcome<BeamMesh> loads(BeamProblem problem, BeamMesh mesh) {
    BeamCheck check = new BeamCheck(problem.beam());
    for (int e = 0; e < mesh.elements(); e++) {
      double rigidity = mesh.rigidity(e);
      if (!(rigidity > 0 && rigidity < Double.POSITIVE_INFINITY)) {
        String where = "flexural rigidity from " + mesh.node(e) + " to " + mesh.node(e + 1) + " m";
        check.guard.positive(where, rigidity, "N·m²");
      }
    }
    for (LoadCase each : problem.cases()) {
      check.loads(each.loads(), mesh);
    }
    return check.guard.then(() -> mesh);
  }

  private void loads(List<BeamLoad> loads, BeamMesh mesh) {
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Distributed d) {
        inside("start of a line load", d.from());
        inside("end of a line load", d.to());
        double length = d.to() - d.from();
        guard.that(length >= 0, "length of a line load", length, "m", "0 or more");
        guard.finite("line load", d.atFrom(), "N/m").finite("line load", d.atTo(), "N/m");
      } else if (load instanceof BeamLoad.PointForce p) {
        inside("place of a force", p.at());
        guard.finite("force", p.force(), "N");
      } else if (load instanceof BeamLoad.Couple c) {
        inside("place of a couple", c.at());
        guard.finite("couple", c.moment(), "N·m");
        guard.that(!mesh.hingeAt(c.at()), "place of a couple", c.at(), "m", "clear of every hinge");
      }
    }
  }
}
