package mullwright.syntax;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import mullwright.syntax.SyntaxProblem.NotClosed;
import mullwright.syntax.antlr.WallParser;

/** Reads one cut segment: token step, parser, tree. */
final class SegmentReader {
  private SegmentReader() {}

  static Segment read(String text, SegmentCutter.Cut cut) {
    if (cut.tooLong()) {
      return tooLong(text.substring(cut.start(), cut.end()));
    }
    TokenStep step = new TokenStep(cut);
    TypedTokens typed = step.run();
    List<SyntaxProblem> problems = new ArrayList<>(typed.problems());
    List<Statement> statements = List.of();
    if (!typed.tokens().isEmpty()) {
      WallParser parser = new WallParser(new TokenList(typed.tokens()));
      LineRecovery recovery = new LineRecovery();
      parser.removeErrorListeners();
      parser.setErrorHandler(recovery);
      WallParser.SegmentContext tree = parser.segment();
      problems.addAll(recovery.problems());
      statements = new StatementBuilder(step.comments(), typed, problems).build(tree);
    }
    problems.sort((one, other) -> Integer.compare(one.range().start(), other.range().start()));
    String own = text.substring(cut.start(), cut.end());
    List<SyntaxProblem> told = limited(oncePerLine(problems, own));
    return new Segment(own, statements, step.comments(), told);
  }

  /** What cannot stand where it does is mostly a consequence of what could not before it. */
  private static List<SyntaxProblem> oncePerLine(List<SyntaxProblem> problems, String text) {
    List<SyntaxProblem> kept = new ArrayList<>(problems.size());
    int from = -1;
    for (SyntaxProblem problem : problems) {
      boolean misfit =
          problem instanceof SyntaxProblem.Unexpected
              || problem instanceof SyntaxProblem.ClauseNotTaken
              || problem instanceof SyntaxProblem.BareNumber
              || problem instanceof SyntaxProblem.Garbled
              || problem instanceof SyntaxProblem.BlockWordMissing
              || isOpen(problem, NotClosed.What.STRING);
      int start = problem.range().start();
      boolean again = same(problem, kept);
      if ((misfit || again) && from >= 0 && isOneLine(text.substring(from, start))) {
        continue;
      }
      kept.add(problem);
      if (misfit
          || problem instanceof SyntaxProblem.StrayCharacter
          || isOpen(problem, NotClosed.What.COMMENT)) {
        from = start;
      }
    }
    return kept;
  }

  private static boolean isOpen(SyntaxProblem problem, NotClosed.What what) {
    return problem instanceof NotClosed open && open.what() == what;
  }

  private static boolean isOneLine(String text) {
    return text.indexOf('\n') < 0 && text.indexOf('\r') < 0;
  }

  /** True for the second of a pair: quotes of the wrong form. */
  private static boolean same(SyntaxProblem problem, List<SyntaxProblem> before) {
    SyntaxProblem last = before.isEmpty() ? null : before.get(before.size() - 1);
    return last instanceof SyntaxProblem.StrayCharacter first
        && problem instanceof SyntaxProblem.StrayCharacter second
        && first.character().equals(second.character());
  }

  private static Segment tooLong(String text) {
    int limit = SyntaxLimits.TOKENS_PER_SEGMENT;
    SyntaxProblem problem = new SyntaxProblem.TooMuch("tokens", limit, new TextRange(0, 1));
    return new Segment(text, List.of(), List.of(), List.of(problem));
  }

  /** All tokens of a segment's text; none if there are too many. */
  static List<Token> tokens(String text) {
    SegmentCutter.Cut cut = new SegmentCutter(text, 0).next();
    if (cut.tooLong()) {
      return List.of();
    }
    TokenStep step = new TokenStep(cut);
    TypedTokens typed = step.run();
    List<Token> tokens = new ArrayList<>();
    for (Comment comment : step.comments()) {
      TokenKind kind = comment.documents() ? TokenKind.DOCUMENTATION : TokenKind.COMMENT;
      tokens.add(new Token(kind, comment.range()));
    }
    for (WallToken token : typed.tokens()) {
      if (token.end() > token.start() && token.getType() != WallParser.NL) {
        tokens.add(new Token(TokenKind.of(token.getType()), token.range()));
      }
    }
    for (WallToken token : typed.dropped()) {
      if (token.getType() != WallParser.NL) {
        tokens.add(new Token(TokenKind.FAULT, token.range()));
      }
    }
    tokens.sort(Comparator.comparingInt(token -> token.range().start()));
    return List.copyOf(tokens);
  }

  private static List<SyntaxProblem> limited(List<SyntaxProblem> problems) {
    int limit = SyntaxLimits.PROBLEMS_PER_SEGMENT;
    if (problems.size() <= limit) {
      return problems;
    }
    List<SyntaxProblem> first = new ArrayList<>(problems.subList(0, limit));
    first.add(new SyntaxProblem.TooMuch("problems", limit, problems.get(limit).range()));
    return first;
  }
}
