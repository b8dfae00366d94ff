package mullwright.model;

import java.util.Optional;
import mullwright.quantity.Length;

/**
 * An anchor or clip on a line, patterns and exceptions resolved.
 *
 * @param kind what it holds
 * @param line by index
 * @param place the named floor or row, or the stated height
 * @param floor the floor it belongs to, by index, if any
 * @param heightStated true if the wall gives the bolt height ({@code at 6" below L2}); else the
 *     part's bolt line decides
 * @param part the catalog's anchor or clip
 * @param offset sideways, positive to the right
 */
public record AnchorUse(
    Kind kind,
    int line,
    Height place,
    Optional<Integer> floor,
    boolean heightStated,
    Optional<Given<String>> part,
    Optional<Members.Fixing> bolted,
    Optional<Given<String>> isolation,
    Optional<Given<String>> bedding,
    Optional<Given<String>> spread,
    Optional<Given<Length>> offset,
    Origin origin) {
  /** What an anchor holds. */
  public enum Kind {
    /** Weight, and wind in and out. */
    DEAD_LOAD,
    /** Wind in and out; slides up and down. */
    WIND_LOAD,
    /** Wind in and out at sill or head; slides up and down. */
    CLIP;

    /** As written. */
    public String spelling() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }
}
