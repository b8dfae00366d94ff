package mullwright.automaton;

import java.util.Set;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.ActionTransition;
import org.antlr.v4.runtime.atn.PredicateTransition;
import org.antlr.v4.runtime.atn.RuleStopState;
import org.antlr.v4.runtime.atn.RuleTransition;
import org.antlr.v4.runtime.atn.Transition;

/**
 * A place in the rules of a lexer that a text may have led to.
 *
 * @param lexer answers the predicates on the way
 * @param state the place in the innermost rule
 * @param caller where the rule goes on that called it; null in the rule of a token
 * @param skips true if what is matched is no token
 */
record Place(Lexer lexer, ATNState state, Caller caller, boolean skips) {

  /** Where a rule goes on after another that it called. */
  private record Caller(ATNState follow, Caller caller) {
    boolean includes(ATNState other) {
      return follow.equals(other) || caller != null && caller.includes(other);
    }
  }

  static Place start(Lexer lexer) {
    return new Place(lexer, lexer.getATN().modeToStartState.get(0), null, false);
  }

  /** Adds the place and all that are reached from it without a character, in ANTLR's order. */
  void close(Set<Place> reached) {
    if (!reached.add(this)) {
      return;
    }
    if (state instanceof RuleStopState) {
      if (caller != null) {
        new Place(lexer, caller.follow, caller.caller, skips).close(reached);
      }
      return;
    }
    for (Transition way : state.getTransitions()) {
      if (way instanceof RuleTransition call) {
        if (caller != null && caller.includes(call.followState)) {
          throw new IllegalArgumentException("no table can be made: a rule calls itself");
        }
        Caller inner = new Caller(call.followState, caller);
        new Place(lexer, call.target, inner, skips).close(reached);
      } else if (way instanceof ActionTransition) {
        // the command of a rule that was called does nothing
        new Place(lexer, way.target, caller, skips || caller == null).close(reached);
      } else if (way instanceof PredicateTransition asked) {
        if (lexer.sempred(null, asked.ruleIndex, asked.predIndex)) {
          new Place(lexer, way.target, caller, skips).close(reached);
        }
      } else if (way.isEpsilon()) {
        new Place(lexer, way.target, caller, skips).close(reached);
      }
    }
  }

  /** Adds all places that a character leads to from here. */
  void step(int character, Set<Place> reached) {
    for (Transition way : state.getTransitions()) {
      if (way.matches(character, Lexer.MIN_CHAR_VALUE, Lexer.MAX_CHAR_VALUE)) {
        new Place(lexer, way.target, caller, skips).close(reached);
      }
    }
  }

  /** What has been matched here: a type of token, {@link Lexer#SKIP}, or 0 for nothing yet. */
  int accepts() {
    if (caller != null || !(state instanceof RuleStopState)) {
      return Token.INVALID_TYPE;
    }
    ATN atn = lexer.getATN();
    return skips ? Lexer.SKIP : atn.ruleToTokenType[state.ruleIndex];
  }
}
