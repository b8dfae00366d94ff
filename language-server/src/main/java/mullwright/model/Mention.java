package mullwright.model;

import java.util.List;

/**
 * A name of a part where one is used; found once all catalogs are known.
 *
 * @param kinds the kinds of part it may be, best first
 * @param name as written, without quotes
 * @param origin where it stands
 */
record Mention(List<PartKind> kinds, String name, Origin origin) {}
