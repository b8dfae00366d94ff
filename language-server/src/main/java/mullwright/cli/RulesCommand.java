package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.concurrent.Callable;
import mullwright.check.Rules;
import mullwright.report.RulePages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists every rule by group. */
@Command(
    name = "rules",
    description = "List all rules: name, severity, what each says.",
    mixinStandardHelpOptions = true)
final class RulesCommand implements Callable<Integer> {
  private final Shell shell;

  @Mixin private Looks looks = new Looks();

  RulesCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    RulePages pages = new RulePages(Rules.find());
    shell.out().print(pages.list(looks.width(shell), looks.paint(shell)));
    return Exit.CLEAN;
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new RulesCommand(shell);
    }
  }
}
