package mullwright.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.ModelProblem.BadValue;
import mullwright.syntax.Expression;

/**
 * Computes {@code let}s in the order they lean on each other, however long the chain; a circle is
 * reported once, with its names.
 */
final class LetReader {
  private final Collector collector;
  private final Map<Let, Boolean> underWay = new IdentityHashMap<>();

  LetReader(Collector collector) {
    this.collector = collector;
  }

  void compute(Collection<Let> lets) {
    lets.forEach(this::compute);
  }

  private void compute(Let asked) {
    Deque<Let> waiting = new ArrayDeque<>();
    waiting.push(asked);
    while (!waiting.isEmpty()) {
      Let let = waiting.peek();
      if (let.computed) {
        waiting.pop();
        continue;
      }
      boolean again = underWay.put(let, true) != null;
      List<Let> open = again ? List.of() : openNames(let);
      Optional<Let> circular = open.stream().filter(underWay::containsKey).findFirst();
      if (circular.isPresent()) {
        circle(circular.get(), waiting);
      } else if (open.isEmpty()) {
        evaluate(let);
        waiting.pop();
      } else {
        open.forEach(waiting::push);
      }
    }
  }

  private void evaluate(Let let) {
    let.value = new ExpressionReader(let.scope, let.spot, collector).value(let.expression, null);
    let.computed = true;
    underWay.remove(let);
  }

  /** All lets from the one that is named again to the one that names it have no value. */
  private void circle(Let start, Deque<Let> waiting) {
    Deque<Let> members = new ArrayDeque<>();
    for (Let let : waiting) {
      // what waits without being under way is a neighbour on the path, not a step of it
      if (underWay.remove(let) != null) {
        members.push(let);
      }
      if (let == start) {
        break;
      }
    }
    StringBuilder names = new StringBuilder();
    for (Let let : members) {
      if (names.length() < 200) {
        names.append(let.name.text()).append(" = ");
      }
      let.computed = true;
    }
    collector.problem(
        new BadValue(
            BadValue.Reason.CIRCULAR,
            names + start.name.text(),
            Optional.empty(),
            start.spot.at(start.name)));
  }

  /** The lets its expression names that are not computed yet. */
  private static List<Let> openNames(Let let) {
    List<Let> open = new ArrayList<>();
    Deque<Expression> parts = new ArrayDeque<>();
    parts.push(let.expression);
    while (!parts.isEmpty()) {
      Expression part = parts.pop();
      if (part instanceof Expression.Reference reference) {
        Let named = let.scope.find(reference.name().text());
        if (named != null && !named.computed) {
          open.add(named);
        }
      } else if (part instanceof Expression.Binary binary) {
        parts.push(binary.left());
        parts.push(binary.right());
      } else if (part instanceof Expression.Group group) {
        parts.push(group.inner());
      } else if (part instanceof Expression.Negation negation) {
        parts.push(negation.operand());
      }
    }
    return open;
  }
}
