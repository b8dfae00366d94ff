package mullwright.report;

import java.util.List;
import java.util.function.Function;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.FileReview;
import mullwright.workspace.State;

/**
 * A comparison as a report takes it.
 *
 * @param from what the older state is called, {@code to} the newer
 * @param growth share by which a reaction must grow to be told
 */
public record ReviewInput(
    String from, String to, State old, State now, List<FileReview> files, double growth) {
  public ReviewInput {
    files = List.copyOf(files);
  }

  /** The system of units a file is told in. */
  UnitSystem units(FileReview file) {
    Function<State, java.util.Optional<ParsedFile>> at =
        state -> (state == now ? file.now() : file.old()).flatMap(state.snapshot()::file);
    return FileUnits.of(file.now().isPresent() ? at.apply(now) : at.apply(old));
  }

  /** What a file is called: its newer path, or its older if it is gone. */
  static String name(FileReview file) {
    return file.now().or(file::old).orElseThrow();
  }
}
