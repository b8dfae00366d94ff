package mullwright.syntax;

import java.util.ArrayList;
import java.util.List;

/** What the token step collects while it goes through a segment: typed tokens and mistakes. */
final class TypedTokens {
  private final List<WallToken> tokens = new ArrayList<>();
  private final List<WallToken> dropped = new ArrayList<>();
  private final List<SyntaxProblem> problems = new ArrayList<>();

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
