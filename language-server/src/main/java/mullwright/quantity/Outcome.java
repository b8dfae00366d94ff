package mullwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What reading or computing gives: a value, perhaps with remarks, or a refusal with its reason;
 * never an exception.
 *
 * @param <T> what was asked for
 */
public sealed interface Outcome<T> {
  /** The value, unless it was refused. */
  Optional<T> value();

  /** The warnings beside a value, or the one reason of a refusal. */
  List<Remark> remarks();

  /** The value itself, with what is odd about how it was written. */
  record Given<T>(T given, List<Remark> remarks) implements Outcome<T> {
    public Given {
      remarks = List.copyOf(remarks);
    }

    @Override
    public Optional<T> value() {
      return Optional.of(given);
    }
  }

  /** No value, and why. */
  record Refused<T>(Remark reason) implements Outcome<T> {
    @Override
    public Optional<T> value() {
      return Optional.empty();
    }

    @Override
    public List<Remark> remarks() {
      return List.of(reason);
    }
  }

  /**
   * A problem and where in the text that was read it sits.
   *
   * @param start offset of the first character concerned, in chars of the text read
   * @param end offset after the last one; equal to start for a place where something is missing,
   *     and both zero where no text was read
   */
  record Remark(QuantityProblem problem, int start, int end) {
    Remark at(int newStart, int newEnd) {
      return new Remark(problem, newStart, newEnd);
    }
  }

  static <T> Outcome<T> of(T value) {
    return new Given<>(value, List.of());
  }

  static <T> Outcome<T> refused(QuantityProblem problem) {
    return refused(problem, 0, 0);
  }

  static <T> Outcome<T> refused(QuantityProblem problem, int start, int end) {
    return new Refused<>(new Remark(problem, start, end));
  }

  /** The same outcome for what is made of the value; remarks stay. */
  default <R> Outcome<R> map(Function<? super T, ? extends R> function) {
    return this instanceof Given<T> given
        ? new Given<>(function.apply(given.given()), given.remarks())
        : new Refused<>(remarks().get(0));
  }

  /** The outcome of a second step on the value; remarks of both steps are kept. */
  default <R> Outcome<R> then(Function<? super T, Outcome<R>> step) {
    if (!(this instanceof Given<T> given)) {
      return new Refused<>(remarks().get(0));
    }
    Outcome<R> next = step.apply(given.given());
    if (next instanceof Given<R> last && !given.remarks().isEmpty()) {
      List<Remark> all = new ArrayList<>(given.remarks());
      all.addAll(last.remarks());
      return new Given<>(last.given(), all);
    }
    return next;
  }

  /** The same outcome with its remarks at another place, for a step that saw no text. */
  default Outcome<T> at(int start, int end) {
    return this instanceof Given<T> given
        ? new Given<>(
            given.given(), given.remarks().stream().map(remark -> remark.at(start, end)).toList())
        : new Refused<>(remarks().get(0).at(start, end));
  }
}
