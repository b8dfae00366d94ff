package mullwright.format;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import mullwright.syntax.Block;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;

/** How many braces each token of a segment stands in, and whether it goes on with a statement. */
final class Indents {
  private final Map<Token, Integer> depths = new HashMap<>();
  private final Set<Token> continuing = new HashSet<>();
  private final TreeMap<Integer, Integer> unclosed = new TreeMap<>();

  Indents(Segment segment, int start, List<Token> tokens, Function<Token, String> text) {
    segment.statements().forEach(statement -> findUnclosed(statement, start));
    int depth = 0;
    int parentheses = 0;
    Token before = null;
    for (Token token : tokens) {
      while (!unclosed.isEmpty() && unclosed.firstKey() <= token.range().start()) {
        depth = Math.max(0, depth - unclosed.pollFirstEntry().getValue());
      }
      boolean comment =
          token.kind() == TokenKind.COMMENT || token.kind() == TokenKind.DOCUMENTATION;
      String word = token.kind() == TokenKind.BRACE ? text.apply(token) : "";
      if (word.equals("}")) {
        depth = Math.max(0, depth - 1);
      }
      depths.put(token, depth);
      if (before != null && !comment && (parentheses > 0 || goesOn(before))) {
        boolean newStatement =
            token.kind() == TokenKind.KEYWORD || token.kind() == TokenKind.PROPERTY;
        if (!newStatement && token.kind() != TokenKind.BRACE) {
          continuing.add(token);
        }
      }
      if (word.equals("{")) {
        depth++;
      }
      if (token.kind() == TokenKind.PARENTHESIS) {
        parentheses = Math.max(0, parentheses + (text.apply(token).equals("(") ? 1 : -1));
      }
      if (!comment) {
        before = token;
      }
    }
  }

  private static boolean goesOn(Token before) {
    return switch (before.kind()) {
      case COMMA, OPERATOR, RANGE -> true;
      default -> false;
    };
  }

  private void findUnclosed(Statement statement, int start) {
    if (statement.block().isPresent()) {
      Block block = statement.block().get();
      if (!block.closed()) {
        unclosed.merge(start + block.range().end(), 1, Integer::sum);
      }
      block.statements().forEach(inner -> findUnclosed(inner, start));
    }
  }

  /** Braces round the token; a closing brace stands outside its own. */
  int depthOf(Token token) {
    return depths.getOrDefault(token, 0);
  }

  /**
   * True if the token goes on with a statement of an earlier line, should it be first on its own.
   */
  boolean isContinuation(Token token) {
    return continuing.contains(token);
  }
}
