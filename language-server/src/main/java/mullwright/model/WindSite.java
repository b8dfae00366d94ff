package mullwright.model;

import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * Site and building data from which ASCE 7 components-and-cladding pressures follow.
 *
 * @param speed basic wind speed, strength level
 * @param exposure {@code B}, {@code C} or {@code D}
 * @param roof mean roof height above ground
 * @param width least horizontal dimension of the building
 * @param ground height of the ground on the wall's datum
 * @param topographic K_zt
 * @param directionality K_d
 * @param altitude of the ground above sea level, if it is to count
 * @param enclosure {@code enclosed} or {@code partially-enclosed}
 * @param roofSlope if stated: pressures on low walls are less under flat roofs
 * @param edition of ASCE 7: 2016 or 2022
 * @param corners which ends of the wall are corners of the building: {@code both}, {@code left},
 *     {@code right} or {@code none}
 * @param origin where the speed is stated
 */
public record WindSite(
    Given<Quantity> speed,
    Given<String> exposure,
    Given<Length> roof,
    Given<Length> width,
    Given<Length> ground,
    Given<Double> topographic,
    Given<Double> directionality,
    Optional<Given<Length>> altitude,
    Given<String> enclosure,
    Optional<Given<Quantity>> roofSlope,
    Given<Integer> edition,
    Given<String> corners,
    Origin origin) {}
