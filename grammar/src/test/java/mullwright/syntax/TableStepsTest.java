package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Every step of the table is taken and is that of ANTLR's lexer: each state is gone to, then left
 * by every class of characters, and after that come endings that tell any state from any other.
 *
 * <p>Source: the literature on the testing of automata: such texts find any wrong step, if what is
 * tested has no more states than it should.
 */
class TableStepsTest {
  private static final int STATES = LexerTable.ACCEPTS.length;

  /** A character of each class. */
  private final Map<Integer, Character> classes = new TreeMap<>();

  TableStepsTest() {
    for (int character = Character.MAX_VALUE; character >= 0; character--) {
      classes.put(TableLexer.classOf((char) character), (char) character);
    }
  }

  @Test
  void everyStepIsThatOfTheGeneratedLexer() {
    List<String> endings = endings();
    for (String way : ways()) {
      for (char step : classes.values()) {
        for (String ending : endings) {
          String text = way + step + ending;
          TableLexerTest.hold(text);
          TableLexerTest.hold(text + "*/");
        }
      }
    }
  }

  /** A shortest way to each state. */
  private Iterable<String> ways() {
    Map<Integer, String> ways = new LinkedHashMap<>();
    ways.put(1, "");
    ways.put(2, "");
    Deque<Integer> left = new ArrayDeque<>(ways.keySet());
    while (!left.isEmpty()) {
      int state = left.remove();
      for (char step : classes.values()) {
        int next = next(state, step);
        if (next != 0 && ways.putIfAbsent(next, ways.get(state) + step) == null) {
          left.add(next);
        }
      }
    }
    assertThat(ways).hasSize(STATES - 1);
    return ways.values();
  }

  /** After some one of them, any two states differ in what has been matched. */
  private List<String> endings() {
    List<String> endings = new ArrayList<>(List.of(""));
    int told = told(endings);
    for (int i = 0; told < STATES; i++) {
      for (char step : classes.values()) {
        endings.add(step + endings.get(i));
        int now = told(endings);
        if (now == told) {
          endings.remove(endings.size() - 1);
        }
        told = now;
      }
    }
    return endings;
  }

  /** How many states they tell apart. */
  private static int told(List<String> endings) {
    Set<List<Integer>> told = new HashSet<>();
    for (int state = 0; state < STATES; state++) {
      List<Integer> matched = new ArrayList<>();
      for (String ending : endings) {
        int at = state;
        for (char step : ending.toCharArray()) {
          at = next(at, step);
        }
        matched.add((int) LexerTable.ACCEPTS[at]);
      }
      told.add(matched);
    }
    return told.size();
  }

  private static int next(int state, char step) {
    int width = LexerTable.NEXT.length / STATES;
    return LexerTable.NEXT[state * width + TableLexer.classOf(step)];
  }
}
