package mullwright.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * What the project asks of a wall.
 *
 * @param windBasis {@code service} or {@code ultimate}; empty if the text does not say
 * @param wind the pressure zones in the order written; the one named {@code field} is everywhere
 *     else
 * @param temperature of the metal: least, most, and when set
 * @param slabDeflection live-load deflection: by floor name, {@code ""} for all others
 * @param storyDrift a length, or empty with {@code storyDriftRatio}
 * @param exposure {@code outdoor}, {@code indoor}, {@code sheltered}, {@code coastal} …
 * @param deflectionLimit a stricter span ratio than the default, e.g. 240 for L/240
 * @param glass what is asked of the glass
 * @param site data from which the wind follows, where no pressures are given
 */
public record Criteria(
    Optional<Given<String>> windBasis,
    List<WindZone> wind,
    Optional<Given<Temperature>> temperature,
    Map<String, Given<Length>> slabDeflection,
    Optional<Given<Length>> storyDrift,
    Optional<Given<Double>> storyDriftRatio,
    Given<String> exposure,
    Optional<Given<Double>> deflectionLimit,
    GlassCriteria glass,
    Optional<WindSite> site) {
  public Criteria {
    wind = List.copyOf(wind);
    slabDeflection = Map.copyOf(slabDeflection);
  }

  /**
   * Pressures of a zone, both as positive numbers.
   *
   * @param in pressure that pushes inward
   * @param out suction that pulls outward
   * @param withinEnds the zone reaches so far from each end of a face, if it is an end zone
   * @param from lowest place the zone covers, if it is a zone of heights; {@code to} the highest:
   *     names of floors or rows of the wall, or lengths
   */
  public record WindZone(
      String name,
      Given<Quantity> in,
      Given<Quantity> out,
      Optional<Given<Length>> withinEnds,
      Optional<Height> from,
      Optional<Height> to,
      Origin origin) {}

  /** Surface temperature of the metal, as thermodynamic temperatures. */
  public record Temperature(Quantity least, Quantity most, Quantity set) {}
}
