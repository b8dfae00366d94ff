package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import mullwright.check.Rules;
import mullwright.workspace.Cancel;
import mullwright.workspace.Files;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;

/**
 * Checks many files side by side, and takes what did not change from a cache. The answer is the
 * same, byte for byte, whatever the number of threads and whatever the cache holds.
 *
 * @param threads at least one
 * @param cache where results are kept, if anywhere
 */
public record ProjectCheck(Files files, Rules rules, int threads, Optional<KeptParts> cache) {
  /** Files that share one snapshot: what they use is read once, what they need is then let go. */
  private static final int TOGETHER = 16;

  /**
   * What came of it.
   *
   * @param taken how many parts came out of the cache
   * @param lasting true if the answer is the same as long as these files and those they use are
   */
  public record Done(CheckReport report, int taken, boolean lasting) {}

  private record Piece(CheckPart part, boolean taken, boolean lasting) {}

  /** Checks the files, in that order. */
  public Done check(List<String> paths, UnaryOperator<String> shown) {
    List<Piece> pieces = new ArrayList<>();
    if (threads == 1 || paths.size() <= TOGETHER) {
      for (int from = 0; from < paths.size(); from += TOGETHER) {
        pieces.addAll(some(paths.subList(from, Math.min(paths.size(), from + TOGETHER))));
      }
    } else {
      pieces.addAll(sideBySide(paths));
    }
    int taken = (int) pieces.stream().filter(Piece::taken).count();
    return new Done(
        CheckReport.together(pieces.stream().map(Piece::part).toList(), shown),
        taken,
        pieces.stream().allMatch(Piece::lasting));
  }

  private List<Piece> sideBySide(List<String> paths) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<List<Piece>>> asked = new ArrayList<>();
      for (int from = 0; from < paths.size(); from += TOGETHER) {
        List<String> together = paths.subList(from, Math.min(paths.size(), from + TOGETHER));
        asked.add(pool.submit(() -> some(together)));
      }
      List<Piece> pieces = new ArrayList<>();
      for (Future<List<Piece>> one : asked) {
        pieces.addAll(one.get());
      }
      return pieces;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while checking", stopped);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof Error error) {
        throw error;
      }
      throw failed.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(failed.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private List<Piece> some(List<String> paths) {
    Snapshot snapshot = null;
    List<Piece> pieces = new ArrayList<>();
    for (String path : paths) {
      Optional<CheckPart> known = cache.flatMap(kept -> kept.get(path));
      if (known.isEmpty()) {
        snapshot = snapshot == null ? new Workspace(files, rules).snapshot() : snapshot;
        CheckPart part = CheckPart.of(snapshot, path, Cancel.NEVER);
        // whether a part is unused hangs on files that use this one, too
        boolean lasting =
            snapshot.reading(path).stream().allMatch(it -> it.unnamedParts().isEmpty());
        if (lasting) {
          cache.ifPresent(kept -> kept.put(part));
        }
        pieces.add(new Piece(part, false, lasting));
      } else {
        pieces.add(new Piece(known.get(), true, true));
      }
    }
    return pieces;
  }
}
