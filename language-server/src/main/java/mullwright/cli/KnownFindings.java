package mullwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Rules;
import mullwright.report.Baseline;
import mullwright.report.CheckReport;
import mullwright.report.ProjectCheck;
import mullwright.workspace.GitRepository;
import picocli.CommandLine.Option;

/** Options that leave out findings a project already has. */
final class KnownFindings {
  @Option(
      names = "--base",
      paramLabel = "REVISION",
      description = "Tell only findings that the files did not have at that git revision.")
  private String base;

  @Option(
      names = "--baseline",
      paramLabel = "FILE",
      description = "Tell only findings that do not stand in that file.")
  private String baseline;

  @Option(
      names = "--write-baseline",
      paramLabel = "FILE",
      description = "Write all findings into a baseline file, and end with 0.")
  private String written;

  /** True if nothing but the files themselves says what is told. */
  boolean none() {
    return base == null && baseline == null && written == null;
  }

  /** True if a baseline is to be written instead of an answer. */
  boolean writes() {
    return written != null;
  }

  /** The root the check must have so that its paths are those of the repository. */
  Optional<String> root(Shell shell) throws CannotException {
    if (base == null) {
      return Optional.empty();
    }
    try (GitRepository repository = repository(shell)) {
      return repository.top().map(Path::toString);
    }
  }

  void write(Shell shell, CheckReport report) throws CannotException {
    Path file = WallFinder.path(shell.directory(), written);
    try {
      Files.writeString(file, Baseline.write(report), StandardCharsets.UTF_8);
    } catch (IOException failed) {
      throw new CannotException("“" + written + "” cannot be written: " + failed.getMessage());
    }
    int count = report.fingerprints().size();
    shell.out().println(written + ": " + count + (count == 1 ? " finding" : " findings") + " kept");
  }

  /** The report without what was there before. */
  CheckReport left(Shell shell, CheckReport report, List<String> paths) throws CannotException {
    Set<String> known = new HashSet<>();
    if (baseline != null) {
      Path file = WallFinder.path(shell.directory(), baseline);
      Baseline read;
      try {
        read =
            Baseline.read(Files.readString(file, StandardCharsets.UTF_8))
                .orElseThrow(() -> new CannotException("“" + baseline + "” is no baseline."));
      } catch (IOException failed) {
        throw CannotException.unreadable(String.valueOf(baseline), failed);
      }
      int stale = read.stale(report);
      if (stale > 0) {
        Say.wrong(
            shell,
            stale
                + (stale == 1 ? " finding" : " findings")
                + " of “"
                + baseline
                + "” no longer stand; write it anew with --write-baseline.");
      }
      known.addAll(read.known());
    }
    if (base != null) {
      known.addAll(before(shell, paths));
    }
    return known.isEmpty() ? report : report.without(known);
  }

  private Set<String> before(Shell shell, List<String> paths) throws CannotException {
    try (GitRepository repository = repository(shell)) {
      mullwright.workspace.Files files =
          repository
              .at(base)
              .orElseThrow(
                  () -> new CannotException("“" + base + "” is no revision of this repository."));
      Set<String> then = new HashSet<>(files.walls());
      List<String> both = paths.stream().filter(then::contains).toList();
      ProjectCheck check =
          new ProjectCheck(
              files, Rules.find(), Runtime.getRuntime().availableProcessors(), Optional.empty());
      return new HashSet<>(check.check(both, path -> path).report().fingerprints());
    } catch (IOException failed) {
      throw new CannotException("The git repository cannot be read: " + failed.getMessage() + ".");
    }
  }

  private static GitRepository repository(Shell shell) throws CannotException {
    try {
      return GitRepository.around(shell.directory())
          .orElseThrow(
              () -> new CannotException("--base needs a git repository, and here is none."));
    } catch (IOException failed) {
      throw new CannotException("The git repository cannot be read: " + failed.getMessage() + ".");
    }
  }
}
