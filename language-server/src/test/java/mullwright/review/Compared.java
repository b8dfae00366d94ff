package mullwright.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import mullwright.check.Rules;
import mullwright.check.WallFacts;
import mullwright.quantity.UnitSystem;
import mullwright.workspace.Cancel;
import mullwright.workspace.MemoryFiles;
import mullwright.workspace.Reading;
import mullwright.workspace.Workspace;

/** Two texts of a wall compared, over the catalogs of the shipped examples. */
record Compared(WallReview review, Sides sides) {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Rules RULES = Rules.find();

  static String example(String path) {
    try {
      return Files.readString(EXAMPLES.resolve(path));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** The ferry terminal: seven lines A to G, 5'-0" apart, two floors, every rule passes. */
  static String ferry() {
    return example("ferry-terminal/east.wall");
  }

  static Reading read(String text) {
    return read(text, example("catalog/captured.wall"));
  }

  static Reading read(String text, String catalog) {
    MemoryFiles files =
        new MemoryFiles(
            Map.of(
                "walls/w.wall", text,
                "catalog/captured.wall", catalog,
                "catalog/captured-metric.wall", example("catalog/captured-metric.wall")));
    return new Workspace(files, RULES).snapshot().reading("walls/w.wall").orElseThrow();
  }

  static Compared of(String old, String now) {
    return of(read(old), read(now));
  }

  static Compared of(Reading old, Reading now) {
    WallFacts before = old.walls().get(0);
    WallFacts after = now.walls().get(0);
    return new Compared(
        WallReviewer.compare(
            before,
            old.findingsOf(before, Cancel.NEVER),
            after,
            now.findingsOf(after, Cancel.NEVER)),
        Sides.of(before, after));
  }

  /** The ferry terminal against itself with words replaced, pair by pair. */
  static Compared ferry(String... replaced) {
    return of(ferry(), replaced(replaced));
  }

  /** The ferry terminal with words replaced, pair by pair. */
  static String replaced(String... words) {
    String now = ferry();
    for (int i = 0; i < words.length; i += 2) {
      String next = now.replace(words[i], words[i + 1]);
      if (next.equals(now)) {
        throw new IllegalArgumentException("not in the wall: " + words[i]);
      }
      now = next;
    }
    return now;
  }

  /** Every change in words. */
  List<String> words() {
    return IntStream.range(0, review.changes().size())
        .mapToObj(at -> review.words(at, UnitSystem.US))
        .toList();
  }

  /** How many pieces of a kind became what. */
  long pieces(PieceChange.What what, mullwright.layout.PieceRef.Kind kind) {
    return review.pieces().stream()
        .filter(piece -> piece.what() == what && piece.key().kind() == kind)
        .count();
  }
}
