package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Part;

/**
 * Which facts a profile does not state that a check of its pieces needs, by the catalog's words.
 */
public final class Unstated {
  private Unstated() {}

  /**
   * What the check of a piece's bending by wind and by weight needs, buckling sideways apart; none
   * if all is stated.
   *
   * @param lies true of a horizontal, which bends in the plane of the wall too
   */
  public static List<String> ofBending(Part.Profile profile, boolean lies) {
    List<String> lacks = new ArrayList<>(ofWind(profile));
    if (lies) {
      lacks.addAll(ofWeight(profile));
    }
    lacks.addAll(ofStress(profile));
    add(profile.massPerLength(), "mass", lacks);
    return lacks;
  }

  /** What its deflection under wind needs. */
  static List<String> ofWind(Part.Profile profile) {
    return profile.ix().isPresent() ? List.of() : List.of("Ix");
  }

  /** What the sag of a horizontal under weight needs. */
  static List<String> ofWeight(Part.Profile profile) {
    return profile.iy().isPresent() ? List.of() : List.of("Iy");
  }

  /** What its stress by wind needs. */
  static List<String> ofStress(Part.Profile profile) {
    List<String> lacks = new ArrayList<>(0);
    add(profile.sxOutside().or(profile::sxInside), "Sx", lacks);
    add(profile.alloy(), "its alloy", lacks);
    return lacks;
  }

  /** What the stress of a horizontal by weight needs. */
  static List<String> ofStressByWeight(Part.Profile profile) {
    return profile.sy().isPresent() ? List.of() : List.of("Sy");
  }

  /** What its buckling sideways needs. */
  static List<String> ofBuckling(Part.Profile profile) {
    List<String> lacks = new ArrayList<>(0);
    add(profile.iy(), "Iy", lacks);
    add(profile.j(), "J", lacks);
    return lacks;
  }

  private static void add(Optional<?> stated, String word, List<String> lacks) {
    if (stated.isEmpty()) {
      lacks.add(word);
    }
  }
}
