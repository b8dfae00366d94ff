package mullwright.syntax;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the token step collects while it goes through a segment: typed tokens and mistakes. */
final class TypedTokens {
  private final List<WallToken> tokens = new ArrayList<>();
  private final List<WallToken> dropped = new ArrayList<>();
  private final List<SyntaxProblem> problems = new ArrayList<>();

  private final Map<Integer, BlockKind> blocks = new HashMap<>();

  void add(WallToken token) {
    tokens.add(token);
  }

  /** Keeps a token from the parser, since what is wrong with it is told. */
  void drop(WallToken token, SyntaxProblem problem) {
    dropped.add(token);
    report(problem);
  }

  /** Keeps a token from the parser for a reason told elsewhere. */
  void drop(WallToken token) {
    dropped.add(token);
  }

  void report(SyntaxProblem problem) {
    problems.add(problem);
  }

  /** Adds an opening brace and what it opens. */
  void addBrace(WallToken brace, BlockKind inside) {
    blocks.put(brace.start(), inside);
    add(brace);
  }

  /** What kind of block the brace that starts there opens. */
  BlockKind blockAt(int start) {
    return blocks.get(start);
  }

  SyntaxProblem lastProblem() {
    return problems.isEmpty() ? null : problems.get(problems.size() - 1);
  }

  void forgetLastProblem() {
    problems.remove(problems.size() - 1);
  }

  int lastType() {
    return tokens.isEmpty() ? 0 : tokens.get(tokens.size() - 1).getType();
  }

  List<WallToken> tokens() {
    return tokens;
  }

  /** Tokens the parser does not see. */
  List<WallToken> dropped() {
    return dropped;
  }

  List<SyntaxProblem> problems() {
    return problems;
  }
}
