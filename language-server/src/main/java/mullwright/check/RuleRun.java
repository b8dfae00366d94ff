package mullwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import mullwright.analysis.wall.OnlyOfWhole;

/**
 * One run of every rule over the same facts, by one thread or by two: one takes the rules from the
 * heaviest on, the other from the lightest on, until they meet. What comes out stands in the order
 * of the rules either way.
 */
final class RuleRun {
  private final List<Rule> rules;
  private final BiConsumer<Rule, Findings> check;
  private final BooleanSupplier cancelled;
  private final int[] order;
  private final AtomicIntegerArray begun;
  private final AtomicReferenceArray<Answer> answers;

  /** What one rule found, or what broke it. */
  private record Answer(List<Finding> found, FoundOn foundOn, RuntimeException broken) {}

  /**
   * A run not yet begun.
   *
   * @param cancelled asked between rules
   */
  RuleRun(List<Rule> rules, BiConsumer<Rule, Findings> check, BooleanSupplier cancelled) {
    this.rules = rules;
    this.check = check;
    this.cancelled = cancelled;
    this.order = heaviestFirst(rules);
    this.begun = new AtomicIntegerArray(rules.size());
    this.answers = new AtomicReferenceArray<>(rules.size());
  }

  private static int[] heaviestFirst(List<Rule> rules) {
    int[] order = new int[rules.size()];
    int count = 0;
    for (int lightness = 0; count < order.length; lightness++) {
      for (int at = 0; at < order.length; at++) {
        if (rules.get(at).about().group().lightness() == lightness) {
          order[count++] = at;
        }
      }
    }
    return order;
  }

  /**
   * Runs the rules on this thread.
   *
   * @throws CancellationException as soon as the answer is no longer wanted
   */
  Checker.Checked alone() {
    work(true);
    return checked();
  }

  /**
   * Runs the rules on this thread and one more, if one is idle.
   *
   * @param first done on this thread before its first rule: what the heavy rules lean on
   * @throws CancellationException as soon as the answer is no longer wanted
   */
  Checker.Checked shared(Runnable first) {
    ForkJoinTask<?> other = ForkJoinPool.commonPool().submit(() -> work(false));
    try {
      first.run();
      work(true);
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

  private void work(boolean fromTheHeaviest) {
    for (int i = 0; i < order.length; i++) {
      int at = order[fromTheHeaviest ? i : order.length - 1 - i];
      if (begun.compareAndSet(at, 0, 1)) {
        ask(cancelled);
        answers.set(at, answer(rules.get(at)));
      }
    }
  }

  private Answer answer(Rule rule) {
    Findings found = new Findings(rule);
    RuntimeException failure = null;
    try {
      check.accept(rule, found);
    } catch (CancellationException stopped) {
      throw stopped;
    } catch (OnlyOfWhole beyond) {
      found.onlyOfWhole();
    } catch (RuntimeException broken) {
      failure = broken;
    }
    return new Answer(found.all(), found.foundOn(), failure);
  }

  private Checker.Checked checked() {
    List<Finding> findings = new ArrayList<>();
    List<Checker.Failure> failures = new ArrayList<>();
    FoundOn foundOn = FoundOn.nothing();
    for (int at = 0; at < rules.size(); at++) {
      Answer answer = answers.get(at);
      if (!answer.found().isEmpty() || answer.foundOn().anywhere()) {
        findings.addAll(answer.found());
        foundOn = foundOn.and(answer.foundOn());
      }
      if (answer.broken() != null) {
        failures.add(new Checker.Failure(rules.get(at).name(), answer.broken()));
      }
    }
    return new Checker.Checked(findings, failures, foundOn);
  }

  static void ask(BooleanSupplier cancelled) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("the text has moved on");
    }
  }
}
