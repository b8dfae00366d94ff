package mullwright.analysis.lite;

import java.util.List;
import mullwright.analysis.glass.HeatTreatment;

/**
 * A lite as its strength depends on it: equal units bear alike.
 *
 * @param width width of the glass [m]
 * @param height height of the glass [m]
 * @param panes one, or the two of a sealed unit
 */
record GlassUnit(double width, double height, List<Pane> panes) {
  GlassUnit {
    panes = List.copyOf(panes);
  }

  /**
   * A pane.
   *
   * @param plies one, or the two of a laminate
   * @param interlayer thickness of the interlayer [m], 0 for one ply
   * @param shearModulus of the interlayer [Pa], 0 for one ply
   */
  record Pane(List<Ply> plies, double interlayer, double shearModulus) {
    Pane {
      plies = List.copyOf(plies);
    }
  }

  /**
   * A ply.
   *
   * @param thickness minimum thickness [m]
   */
  record Ply(double thickness, HeatTreatment treatment) {}
}
