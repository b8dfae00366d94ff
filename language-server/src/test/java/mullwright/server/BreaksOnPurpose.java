package mullwright.server;

import mullwright.check.About;
import mullwright.check.Findings;
import mullwright.check.Group;
import mullwright.check.Severity;
import mullwright.check.TextFacts;
import mullwright.check.TextRule;

/**
 * A rule with a fault. Known only to a server that has {@code breaking-rule} of the test resources
 * on its class path.
 */
public final class BreaksOnPurpose implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    throw new IllegalStateException("broken on purpose");
  }
}
