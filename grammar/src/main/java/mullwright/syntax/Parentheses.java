package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import mullwright.syntax.SyntaxProblem.NotClosed;
import mullwright.syntax.SyntaxProblem.TooMuch;

/**
 * Finds parentheses that are never closed or too deep, so that they cost no more than their line.
 */
final class Parentheses {
  private Parentheses() {}

  /** Replaces each opening one that has no other half before the next brace by a fault. */
  static void check(List<WallToken> tokens, TypedTokens out) {
    Deque<Integer> open = new ArrayDeque<>();
    boolean told = false;
    for (int i = 0; i < tokens.size(); i++) {
      switch (tokens.get(i).getType()) {
        case LPAREN -> {
          open.push(i);
          if (open.size() > SyntaxLimits.NESTING) {
            WallToken token = tokens.get(i);
            tokens.set(i, token.as(FAULT));
            if (!told) {
              out.report(new TooMuch("nesting", SyntaxLimits.NESTING, token.range()));
              told = true;
            }
          }
        }
        case RPAREN -> open.poll();
        case LBRACE, RBRACE -> {
          unclosed(tokens, open, out);
          told = false;
        }
        default -> {
          // no parenthesis
        }
      }
    }
    unclosed(tokens, open, out);
  }

  private static void unclosed(List<WallToken> tokens, Deque<Integer> open, TypedTokens out) {
    while (!open.isEmpty()) {
      int index = open.pollLast();
      WallToken token = tokens.get(index);
      if (token.getType() == LPAREN) {
        tokens.set(index, token.as(FAULT));
        out.report(new NotClosed(NotClosed.What.PARENTHESIS, token.range()));
      }
    }
  }
}
