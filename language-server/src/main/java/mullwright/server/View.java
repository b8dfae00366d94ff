package mullwright.server;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import mullwright.model.Origin;
import mullwright.workspace.Snapshot;
import org.eclipse.lsp4j.Location;

/**
 * A workspace at one moment as the client sees it.
 *
 * @param addresses the client's spelling of a path's address
 * @param versions the version of a path that the client has open and has numbered, else null
 * @param paths the path of an address below the root, if it lies there
 */
public record View(
    Snapshot snapshot,
    UnaryOperator<String> addresses,
    Function<String, Integer> versions,
    Function<String, Optional<String>> paths,
    PositionEncoding encoding) {

  /** The path of an address below the root, whether or not there is such a file. */
  public Optional<String> path(String address) {
    return paths.apply(address);
  }

  /** The document of a path, empty if there is no such file. */
  public Optional<Document> document(String path) {
    return snapshot.file(path).map(file -> new Document(this, addresses.apply(path), path, file));
  }

  /** Where an origin stands, empty if its file or segment is gone. */
  public Optional<Location> location(Origin origin) {
    return document(origin.file())
        .flatMap(
            document ->
                document.range(origin).map(range -> new Location(document.address(), range)));
  }
}
