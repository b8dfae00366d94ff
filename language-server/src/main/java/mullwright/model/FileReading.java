package mullwright.model;

import java.util.List;
import java.util.Map;
import mullwright.quantity.Unit;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Statement;
import mullwright.syntax.Word;

/**
 * What one file says by itself, walls not yet resolved; kept from one reading to the next while the
 * file stays the same.
 *
 * @param uses its {@code use} statements in order
 * @param unit of bare numbers, or null
 * @param scope lets of the file and its project
 * @param lets all lets of the file outside its walls, for what is unused
 * @param parts its catalogs' parts
 * @param mentions the names of parts its catalogs name
 * @param projects its projects; the first counts
 * @param walls by name, first of a name only
 * @param remarks in the order of the text
 * @param facts problems and references of all this
 */
record FileReading(
    String path,
    ParsedFile file,
    List<Use> uses,
    Unit unit,
    Scope scope,
    List<Symbol> lets,
    Map<PartKind, Map<String, Part>> parts,
    List<Mention> mentions,
    List<Block> projects,
    Map<String, Block> walls,
    List<Remarked> remarks,
    Collector facts) {
  /**
   * A file it uses.
   *
   * @param path as written, or empty if it could not be read
   */
  record Use(String path, Origin origin) {}

  /** A project or wall: its statement, its name and the segment it stands in. */
  record Block(Statement statement, Word name, Spot spot) {
    Origin origin() {
      return spot.at(name);
    }
  }
}
