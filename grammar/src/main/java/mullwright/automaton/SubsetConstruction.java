package mullwright.automaton;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.DecisionState;
import org.antlr.v4.runtime.atn.LexerAction;
import org.antlr.v4.runtime.atn.LexerSkipAction;
import org.antlr.v4.runtime.atn.Transition;
import org.antlr.v4.runtime.misc.Interval;
import org.antlr.v4.runtime.misc.IntervalSet;

/**
 * Makes the automaton of a generated lexer: each of its states is a list of all places in the rules
 * that the text so far may have led to.
 *
 * <p>The places keep the order in which ANTLR comes to them, by rule and by alternative; the first
 * of them at the end of its rule tells what has been matched.
 *
 * <p>Source: the subset construction, as in any textbook on automata; which place leads to which is
 * that of {@link org.antlr.v4.runtime.atn.LexerATNSimulator}.
 */
final class SubsetConstruction {
  private final Map<List<Place>, Integer> numbers = new HashMap<>();
  private final List<List<Place>> states = new ArrayList<>();

  /**
   * The automaton of lexers of one grammar that answer its predicates each in its own way, wherever
   * they are asked; it has a start for each.
   *
   * @throws IllegalArgumentException if the grammar has what a table cannot hold: modes, commands
   *     other than {@code skip}, loops that are not greedy, rules that call themselves, tokens that
   *     are empty or end with the text
   */
  static Automaton of(Lexer... lexers) {
    refuse(lexers[0].getATN());
    return new SubsetConstruction().automaton(lexers);
  }

  private static void refuse(ATN atn) {
    refuse(atn.modeToStartState.size() > 1, "there are modes");
    for (LexerAction action : atn.lexerActions) {
      refuse(!(action instanceof LexerSkipAction), "a rule has a command other than skip");
    }
    for (DecisionState decision : atn.decisionToState) {
      refuse(decision.nonGreedy, "a loop is not greedy");
    }
  }

  private static void refuse(boolean refused, String why) {
    if (refused) {
      throw new IllegalArgumentException("no table can be made of the grammar: " + why);
    }
  }

  private Automaton automaton(Lexer... lexers) {
    number(Set.of());
    List<Integer> starts = new ArrayList<>();
    for (Lexer lexer : lexers) {
      Set<Place> start = new LinkedHashSet<>();
      Place.start(lexer).close(start);
      starts.add(number(start));
    }
    List<Integer> firsts = firsts(lexers[0].getATN());
    List<List<Integer>> next = new ArrayList<>();
    List<Integer> accepts = new ArrayList<>();
    for (int state = 0; state < states.size(); state++) {
      List<Place> places = states.get(state);
      next.add(firsts.stream().map(first -> number(after(places, first))).toList());
      accepts.add(accepted(places));
    }
    for (int start : starts) {
      refuse(accepts.get(start) != Token.INVALID_TYPE, "a token may be empty");
    }
    return new Automaton(firsts, next, accepts, starts);
  }

  /** The number of a state; one that is new is put at the end of all. */
  private int number(Set<Place> reached) {
    List<Place> state = List.copyOf(reached);
    Integer known = numbers.putIfAbsent(state, states.size());
    if (known == null) {
      states.add(state);
    }
    return numbers.get(state);
  }

  private static Set<Place> after(List<Place> places, int character) {
    Set<Place> reached = new LinkedHashSet<>();
    places.forEach(place -> place.step(character, reached));
    return reached;
  }

  private static int accepted(List<Place> places) {
    return places.stream()
        .mapToInt(Place::accepts)
        .filter(type -> type != Token.INVALID_TYPE)
        .findFirst()
        .orElse(Token.INVALID_TYPE);
  }

  /** The first of each range of UTF-16 code units that no rule tells apart. */
  private static List<Integer> firsts(ATN atn) {
    TreeSet<Integer> firsts = new TreeSet<>(Set.of(0));
    for (ATNState state : atn.states) {
      for (Transition way : state.getTransitions()) {
        IntervalSet label = way.label();
        if (label != null) {
          for (Interval range : label.getIntervals()) {
            refuse(range.a < 0, "a token ends with the text");
            firsts.add(range.a);
            firsts.add(range.b + 1);
          }
        }
      }
    }
    return List.copyOf(firsts.headSet((int) Character.MAX_VALUE, true));
  }
}
