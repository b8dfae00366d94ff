package mullwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;

/**
 * One run of every rule over the same facts, by one thread or by two: each takes the next rule that
 * nobody has begun. What comes out stands in the order of the rules either way.
 */
final class RuleRun {
  private final List<Rule> rules;
  private final BiConsumer<Rule, Findings> check;
  private final BooleanSupplier cancelled;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicReferenceArray<Answer> answers;

  /** What one rule found, or what broke it. */
  private record Answer(List<Finding> found, RuntimeException broken) {}

  /**
   * A run not yet begun.
   *
   * @param cancelled asked between rules
   */
  RuleRun(List<Rule> rules, BiConsumer<Rule, Findings> check, BooleanSupplier cancelled) {
    this.rules = rules;
    this.check = check;
    this.cancelled = cancelled;
    this.answers = new AtomicReferenceArray<>(rules.size());
  }

  /**
   * Runs the rules on this thread.
   *
   * @throws CancellationException as soon as the answer is no longer wanted
   */
  Checker.Checked alone() {
    work();
    return checked();
  }

  /**
   * Runs the rules on this thread and one more, if one is idle.
   *
   * @throws CancellationException as soon as the answer is no longer wanted
   */
  Checker.Checked shared() {
    ForkJoinTask<?> other = ForkJoinPool.commonPool().submit(this::work);
    try {
      work();
    } finally {
      // a task nobody has begun is taken back; one that runs ends with its rule
      other.quietlyJoin();
    }
    if (other.isCompletedAbnormally()) {
      ask(cancelled);
      if (other.getException() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException("a shared run of rules broke", other.getException());
    }
    return checked();
  }

  private void work() {
    for (int at = next.getAndIncrement(); at < rules.size(); at = next.getAndIncrement()) {
      ask(cancelled);
      Findings found = new Findings(rules.get(at));
      RuntimeException failure = null;
      try {
        check.accept(rules.get(at), found);
      } catch (CancellationException stopped) {
        throw stopped;
      } catch (RuntimeException broken) {
        failure = broken;
      }
      answers.set(at, new Answer(found.all(), failure));
    }
  }

  private Checker.Checked checked() {
    List<Finding> findings = new ArrayList<>();
    List<Checker.Failure> failures = new ArrayList<>();
    for (int at = 0; at < rules.size(); at++) {
      Answer answer = answers.get(at);
      findings.addAll(answer.found());
      if (answer.broken() != null) {
        failures.add(new Checker.Failure(rules.get(at).name(), answer.broken()));
      }
    }
    return new Checker.Checked(findings, failures);
  }

  static void ask(BooleanSupplier cancelled) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("the text has moved on");
    }
  }
}
