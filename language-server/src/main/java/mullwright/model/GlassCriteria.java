package mullwright.model;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;

/**
 * What the project asks of the glass.
 *
 * @param floorLines walking surfaces that safety glazing is measured from, in place of the floors;
 *     empty where the floors are meant
 * @param importance importance factor of the building in earthquakes
 * @param deflectionRatio short side over the largest deflection of the centre, e.g. 60 for L/60
 * @param mostDeflection largest deflection of the centre, as a length
 * @param leastBite least bite that may be left when everything is against it
 */
public record GlassCriteria(
    List<Height> floorLines,
    Given<Double> importance,
    Optional<Given<Double>> deflectionRatio,
    Optional<Given<Length>> mostDeflection,
    Given<Length> leastBite) {
  public GlassCriteria {
    floorLines = List.copyOf(floorLines);
  }

  /** What is taken where a project says nothing of its glass. */
  public static GlassCriteria assumed(Origin takenFor) {
    return new GlassCriteriaReader().criteria(takenFor);
  }
}
