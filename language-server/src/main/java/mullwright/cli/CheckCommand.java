package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import mullwright.check.Checker;
import mullwright.check.Rules;
import mullwright.check.Severities;
import mullwright.check.Severity;
import mullwright.report.CheckAnnotations;
import mullwright.report.CheckCodeQuality;
import mullwright.report.CheckJson;
import mullwright.report.CheckJunit;
import mullwright.report.CheckReport;
import mullwright.report.CheckSarif;
import mullwright.report.CheckText;
import mullwright.report.KeptParts;
import mullwright.report.ProjectCheck;
import mullwright.report.kept.AnswerCache;
import mullwright.workspace.Files;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Checks walls and catalogs and tells what was found. */
@Command(
    name = "check",
    description = "Check walls and catalogs; a catalog alone is checked too.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  /** Forms the answer comes in. */
  enum Output {
    TEXT,
    JSON,
    SARIF,
    GITHUB,
    GITLAB,
    JUNIT
  }

  private static final int MOST_THREADS = 256;

  private final Shell shell;

  @Mixin private Targets targets = new Targets();
  @Mixin private Looks looks = new Looks();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description = {
        "text for people, json for programs (by the schema check.schema.json);",
        "sarif, github (workflow annotations), gitlab (code quality) and junit for code hosts."
      })
  private Output output = Output.TEXT;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      description = "error, warning (as usual) or information: what makes the exit code 1.")
  private Severity failOn = Severity.WARNING;

  @Option(
      names = "--cache",
      paramLabel = "DIR",
      description =
          "Keep what was found in that folder, so that the next run checks only what changed.")
  private String cache;

  @Option(
      names = "--shard",
      paramLabel = "I/N",
      description = "Check only the I-th of N parts of the files, for N machines side by side.")
  private String shard;

  @Option(
      names = "--threads",
      paramLabel = "COUNT",
      description = "Files checked at the same time; as many as there are processors unless said.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Mixin private KnownFindings known = new KnownFindings();

  CheckCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    int width = looks.width(shell);
    if (threads < 1 || threads > MOST_THREADS) {
      throw new CannotException(
          "--threads " + threads + " is not between 1 and " + MOST_THREADS + ".");
    }
    Opened opened = targets.open(shell, known.root(shell));
    Optional<KeptChecks> kept = kept(opened, width);
    Optional<AnswerCache.Answer> before =
        known.none() ? kept.flatMap(KeptChecks::answer) : Optional.empty();
    if (before.isPresent()) {
      print(before.get());
      kept.get().save();
      return before.get().code();
    }
    Opened.Readable readable =
        opened.readable(shell, path -> kept.filter(it -> it.sound(path)).isPresent());
    List<String> paths = Shard.of(shard).take(readable.paths());
    Rules rules = Rules.find();
    boolean settled = settings(opened, rules);
    Optional<KeptParts> parts = kept.map(KeptChecks::parts);
    ProjectCheck.Done done =
        new ProjectCheck(opened.disk(), rules, threads, parts).check(paths, opened::shown);
    CheckReport all = done.report();
    kept.ifPresent(KeptChecks::save);
    if (known.writes()) {
      known.write(shell, all);
      return readable.all() ? Exit.CLEAN : Exit.COULD_NOT;
    }
    CheckReport report = known.left(shell, all, paths);
    int code = report.hasAtLeast(failOn) ? Exit.FINDINGS : Exit.CLEAN;
    AnswerCache.Answer answer = AnswerCache.Answer.of(written(report, rules, width), code);
    print(answer);
    for (Checker.Failure failure : report.failures()) {
      Say.wrong(
          shell,
          "The rule "
              + failure.rule()
              + " broke, so its answer is missing: "
              + failure.cause()
              + ". That is a fault of Mullwright, not of your wall.");
    }
    if (!readable.all() || !settled || !report.failures().isEmpty()) {
      return Exit.COULD_NOT;
    }
    boolean lasting = known.none() && done.lasting();
    if (lasting && kept.isPresent() && paths.stream().allMatch(kept.get()::sound)) {
      kept.get().save(answer);
    }
    return code;
  }

  private void print(AnswerCache.Answer answer) throws CannotException {
    try {
      answer.print(shell.out());
    } catch (IOException closed) {
      throw new CannotException("The answer cannot be written: " + closed.getMessage() + ".");
    }
  }

  /** What earlier runs left, if it is to be kept anywhere. */
  private Optional<KeptChecks> kept(Opened opened, int width) throws CannotException {
    if (cache == null) {
      return Optional.empty();
    }
    Path folder = WallFinder.path(shell.directory(), cache);
    List<String> form =
        List.of(
            output.name(),
            failOn.name(),
            String.valueOf(width),
            String.valueOf(looks.paint(shell)),
            String.valueOf(shard));
    return Optional.of(new KeptChecks(folder, opened, opened.paths(), form));
  }

  /** Tells of lines of the project's file that set nothing; false if there are any. */
  private boolean settings(Opened opened, Rules rules) {
    boolean good = true;
    if (opened.disk().read(Severities.FILE) instanceof Files.Read.Text text) {
      for (String problem : Severities.read(text.text(), rules).problems()) {
        Say.wrong(shell, problem);
        good = false;
      }
    }
    return good;
  }

  private String written(CheckReport report, Rules rules, int width) {
    return switch (output) {
      case TEXT -> new CheckText(width, looks.paint(shell)).write(report);
      case JSON -> CheckJson.write(report);
      case SARIF -> CheckSarif.write(report, rules, Program.version());
      case GITHUB -> CheckAnnotations.write(report);
      case GITLAB -> CheckCodeQuality.write(report);
      case JUNIT -> CheckJunit.write(report);
    };
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new CheckCommand(shell);
    }
  }
}
