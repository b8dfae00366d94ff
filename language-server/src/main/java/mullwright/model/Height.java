package mullwright.model;

import java.util.Optional;
import mullwright.quantity.Length;

/**
 * A height above the project datum, with what it was measured from.
 *
 * @param elevation y, up from the datum
 * @param base the floor or row it was measured from; empty for the datum
 * @param offset above {@code base}; negative for below; zero right at it
 */
public record Height(Length elevation, Optional<String> base, Length offset, Origin origin) {}
