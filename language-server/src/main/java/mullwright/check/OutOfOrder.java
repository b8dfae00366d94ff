package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.syntax.TextRange;

/** Floors, rows or lines that do not ascend. */
@AutoService(Rule.class)
public final class OutOfOrder implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.OutOfOrder order) {
        Optional<Fix> turned = turned(order, facts);
        Findings.Draft draft =
            found
                .at(order.origin())
                .text()
                .what(
                    "The "
                        + order.what()
                        + " "
                        + Words.quoted(order.name())
                        + (order.what().equals("line") ? " is not right of " : " is not above ")
                        + Words.quoted(order.previous())
                        + ".")
                .mend(
                    turned.isPresent()
                        ? "Write the range the other way round."
                        : "Mend its place, or change the order.")
                .related(order.previousOrigin(), "stands here");
        turned.ifPresent(draft::fix);
      }
    }
  }

  /** The two ends of a range change places; anything else must be decided by the drafter. */
  private static Optional<Fix> turned(ModelProblem.OutOfOrder order, TextFacts facts) {
    Origin first = order.previousOrigin();
    Origin last = order.origin();
    if (!first.file().equals(last.file())
        || first.segment() != last.segment()
        || first.range().end() > last.range().start()) {
      return Optional.empty();
    }
    TextRange between = new TextRange(first.range().end(), last.range().start());
    boolean range =
        facts
            .textAt(new Origin(first.file(), first.segment(), between))
            .filter(text -> text.strip().equals(".."))
            .isPresent();
    Optional<String> one = facts.textAt(first);
    Optional<String> other = facts.textAt(last);
    if (!range || one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Fix(
            "Write " + other.get() + ".." + one.get(),
            List.of(new Fix.Edit(first, other.get()), new Fix.Edit(last, one.get()))));
  }
}
