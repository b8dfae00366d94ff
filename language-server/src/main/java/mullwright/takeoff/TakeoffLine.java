package mullwright.takeoff;

import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * One line of what is bought for one face of a wall.
 *
 * @param sort what the project's waste and attic stock may name: {@code bar}, {@code glass}
 * @param face name of the face, or "" for a wall that names none
 * @param item what it is, in the trade's words
 * @param part its name in the catalog, or "" if the text names none
 * @param size what tells equal parts apart: {@code one leg}, {@code 4" long}
 * @param count how many
 * @param length net, of all together, if it is bought by length
 * @param area of all together, if it is bought by area
 * @param mass of all together [kg], if the catalog says enough
 * @param orderCount how many with waste and attic stock; {@code orderLength} likewise
 * @param remark a default taken, or what is missing
 */
public record TakeoffLine(
    Phase phase,
    String sort,
    String face,
    String item,
    String part,
    String size,
    long count,
    Optional<Length> length,
    Optional<Quantity> area,
    Optional<Quantity> mass,
    long orderCount,
    Optional<Length> orderLength,
    String remark) {}
