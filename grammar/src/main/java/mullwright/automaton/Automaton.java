package mullwright.automaton;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A deterministic automaton that tells tokens apart.
 *
 * @param firsts the first character of each range of characters, in order, the first of them 0; all
 *     characters of a range lead from a state to the same other
 * @param next the next state by state and range; from state 0, in which nothing matches any more,
 *     all lead back to it
 * @param accepts what has been matched in a state: the type of a token, {@link
 *     org.antlr.v4.runtime.Lexer#SKIP}, or 0 for nothing
 * @param starts the states before the first character
 */
record Automaton(
    List<Integer> firsts, List<List<Integer>> next, List<Integer> accepts, List<Integer> starts) {

  /**
   * The same with the fewest states, in the order in which each is first met.
   *
   * <p>Source: refinement of partitions, as in any textbook on automata: states stay together until
   * they accept otherwise, or some character leads them apart.
   */
  Automaton minimal() {
    List<Integer> blocks = numbered(accepts);
    int before;
    do {
      before = count(blocks);
      List<List<Integer>> signatures = new ArrayList<>();
      for (int state = 0; state < next.size(); state++) {
        List<Integer> signature = mapped(next.get(state), blocks);
        signature.add(blocks.get(state));
        signatures.add(signature);
      }
      blocks = numbered(signatures);
    } while (count(blocks) > before);
    List<List<Integer>> fewer = new ArrayList<>();
    List<Integer> accepted = new ArrayList<>();
    for (int block = 0; block < before; block++) {
      int state = blocks.indexOf(block);
      fewer.add(mapped(next.get(state), blocks));
      accepted.add(accepts.get(state));
    }
    return new Automaton(firsts, fewer, accepted, mapped(starts, blocks));
  }

  /** The class of each range: those that no state tells apart are of one, counted from 0. */
  List<Integer> classes() {
    List<List<Integer>> columns = new ArrayList<>();
    for (int range = 0; range < firsts.size(); range++) {
      List<Integer> column = new ArrayList<>();
      for (List<Integer> row : next) {
        column.add(row.get(range));
      }
      columns.add(column);
    }
    return numbered(columns);
  }

  /** Equal ones get the same number, in the order in which they come. */
  private static List<Integer> numbered(List<?> all) {
    Map<Object, Integer> numbers = new HashMap<>();
    List<Integer> numbered = new ArrayList<>();
    for (Object one : all) {
      numbers.putIfAbsent(one, numbers.size());
      numbered.add(numbers.get(one));
    }
    return numbered;
  }

  private static int count(List<Integer> numbered) {
    return numbered.stream().reduce(-1, Integer::max) + 1;
  }

  private static List<Integer> mapped(List<Integer> states, List<Integer> numbers) {
    List<Integer> mapped = new ArrayList<>();
    states.forEach(state -> mapped.add(numbers.get(state)));
    return mapped;
  }
}
