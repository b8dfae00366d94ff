package mullwright.analysis.wall;

/**
 * What acts on a vertical at one place.
 *
 * @param at height [m]
 * @param in force in with wind in [N], {@code out} force with wind out; both positive inward
 * @param bracket force of a bracket [N], positive inward; 0 for what comes from a horizontal
 * @param couple moment of a bracket's weight [N·m], positive where it turns the upper side inward
 * @param down weight a bracket brings [N]
 * @param name of what brings it
 */
public record RunPoint(
    double at, double in, double out, double bracket, double couple, double down, String name) {
  static RunPoint ofBracket(double at, double in, double couple, double down, String name) {
    return new RunPoint(at, 0, 0, in, couple, down, name);
  }

  static RunPoint ofHorizontal(double at, double in, double out, String name) {
    return new RunPoint(at, in, out, 0, 0, 0, name);
  }

  boolean byBracket() {
    return bracket != 0 || couple != 0;
  }
}
