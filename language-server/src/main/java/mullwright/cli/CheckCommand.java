package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.check.Checker;
import mullwright.check.Severity;
import mullwright.report.CheckJson;
import mullwright.report.CheckReport;
import mullwright.report.CheckText;
import mullwright.workspace.Cancel;
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
    JSON
  }

  private final Shell shell;

  @Mixin private Targets targets = new Targets();
  @Mixin private Looks looks = new Looks();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description = "text for people, json for programs (by the schema check.schema.json).")
  private Output output = Output.TEXT;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      description = "error, warning (as usual) or information: what makes the exit code 1.")
  private Severity failOn = Severity.WARNING;

  CheckCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    int width = looks.width(shell);
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    CheckReport report =
        CheckReport.of(
            opened.workspace().snapshot(), readable.paths(), opened::shown, Cancel.NEVER);
    shell
        .out()
        .print(
            output == Output.JSON
                ? CheckJson.write(report)
                : new CheckText(width, looks.paint(shell)).write(report));
    for (Checker.Failure failure : report.failures()) {
      Say.wrong(
          shell,
          "The rule "
              + failure.rule()
              + " broke, so its answer is missing: "
              + failure.cause()
              + ". That is a fault of Mullwright, not of your wall.");
    }
    if (!readable.all() || !report.failures().isEmpty()) {
      return Exit.COULD_NOT;
    }
    return report.hasAtLeast(failOn) ? Exit.FINDINGS : Exit.CLEAN;
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
