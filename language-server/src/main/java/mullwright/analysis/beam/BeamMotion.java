package mullwright.analysis.beam;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the parts of a run that can move without bending.
 *
 * <p>Every length from hinge to hinge is taken for a rigid bar. A bar is fixed once two different
 * places of it stay put; its ends then stay put too, and so hold the next bar. What is not fixed
 * when nothing more follows can move. This is exact: it compares nodes, not numbers.
 */
final class BeamMotion {
  private final BeamMesh mesh;

  /** Nodes of the two ends and the hinges, in order; bar k runs from joint k to joint k + 1. */
  private final int[] joints;

  private final boolean[] still;
  private final int[] supportsInside;

  private BeamMotion(BeamMesh mesh) {
    this.mesh = mesh;
    int hinges = 0;
    for (int node = 0; node < mesh.size(); node++) {
      hinges += mesh.hinge(node) ? 1 : 0;
    }
    joints = new int[hinges + 2];
    int at = 1;
    for (int node = 1; node < mesh.elements(); node++) {
      if (mesh.hinge(node)) {
        joints[at++] = node;
      }
    }
    joints[at] = mesh.elements();
    still = new boolean[joints.length];
    supportsInside = new int[bars()];
    for (int joint = 0; joint < joints.length; joint++) {
      still[joint] = mesh.supported(joints[joint]);
    }
    for (int bar = 0; bar < bars(); bar++) {
      for (int node = joints[bar] + 1; node < joints[bar + 1]; node++) {
        supportsInside[bar] += mesh.supported(node) ? 1 : 0;
      }
    }
  }

  /** The moving parts from the start on; empty when the run stands. */
  static List<MovingStretch> of(BeamMesh mesh) {
    BeamMotion motion = new BeamMotion(mesh);
    motion.spreadStillness();
    return motion.moving();
  }

  private int bars() {
    return joints.length - 1;
  }

  private int placesHeld(int bar) {
    return supportsInside[bar] + (still[bar] ? 1 : 0) + (still[bar + 1] ? 1 : 0);
  }

  private void spreadStillness() {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int bar = 0; bar < bars(); bar++) {
        changed |= fix(bar);
      }
      for (int bar = bars() - 1; bar >= 0; bar--) {
        changed |= fix(bar);
      }
    }
  }

  private boolean fix(int bar) {
    if (placesHeld(bar) < 2 || still[bar] && still[bar + 1]) {
      return false;
    }
    still[bar] = true;
    still[bar + 1] = true;
    return true;
  }

  private List<MovingStretch> moving() {
    List<MovingStretch> moving = new ArrayList<>();
    for (int bar = 0; bar < bars(); bar++) {
      if (placesHeld(bar) >= 2) {
        continue;
      }
      int last = bar;
      while (last + 1 < bars() && !still[last + 1]) {
        last++;
      }
      moving.add(stretch(bar, last));
      bar = last;
    }
    return moving;
  }

  private MovingStretch stretch(int first, int last) {
    List<Double> loose = new ArrayList<>();
    for (int joint = first + 1; joint <= last; joint++) {
      loose.add(mesh.node(joints[joint]));
    }
    List<Double> held = new ArrayList<>();
    for (int node = joints[first]; node <= joints[last + 1]; node++) {
      boolean heldEnd = node == joints[first] && still[first];
      boolean heldFarEnd = node == joints[last + 1] && still[last + 1];
      if (mesh.supported(node) || heldEnd || heldFarEnd) {
        held.add(mesh.node(node));
      }
    }
    // One value for every joint, less one condition for every place held.
    int degrees = last - first + 2 - held.size();
    return new MovingStretch(
        mesh.node(joints[first]),
        mesh.node(joints[last + 1]),
        first + 1,
        last + 1,
        loose,
        held,
        degrees);
  }
}
