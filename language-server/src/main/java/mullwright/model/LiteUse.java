package mullwright.model;

import java.util.Optional;

/**
 * What fills one cell: the space in one bay between two neighbouring rows of that bay.
 *
 * @param bay by index
 * @param below the row under it, by index
 * @param above the row over it, by index
 * @param glass the catalog's glass
 * @param operable true for a leaf that opens
 */
public record LiteUse(
    int bay,
    int below,
    int above,
    boolean vision,
    Given<String> glass,
    boolean operable,
    Optional<String> mark,
    Origin origin) {}
