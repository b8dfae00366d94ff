package mullwright.syntax;

import static mullwright.syntax.antlr.WallParser.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import mullwright.syntax.SyntaxProblem.BareNumber;
import mullwright.syntax.SyntaxProblem.BlockNotTaken;
import mullwright.syntax.SyntaxProblem.BraceMissing;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Unexpected;
import mullwright.syntax.antlr.WallParser;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.IntervalSet;

/**
 * What the generated parser does at a mistake: tell it once, then go on at the next clause word of
 * the line or, failing that, at the next line.
 *
 * <p>Nothing is ever put in or left out to make a line fit: a statement that was made up would tell
 * the drafter of walls that were never drawn.
 */
final class LineRecovery extends DefaultErrorStrategy {
  private final List<SyntaxProblem> problems = new ArrayList<>();

  List<SyntaxProblem> problems() {
    return problems;
  }

  @Override
  public void sync(Parser parser) {
    IntervalSet next = parser.getATN().nextTokens(parser.getATN().states.get(parser.getState()));
    int type = parser.getInputStream().LA(1);
    if (next.contains(type)) {
      return;
    }
    ParserRuleContext rule = parser.getContext();
    if (rule instanceof SegmentContext
        || rule instanceof BlockContext
        || rule instanceof ClauseLinesContext) {
      skipLinesUntil(parser, next);
    } else if (rule instanceof TailContext || rule instanceof HeadingContext) {
      skipWordsUntil(parser, next);
    } else if (!next.contains(Token.EPSILON) && !inErrorRecoveryMode(parser)) {
      throw new InputMismatchException(parser);
    }
  }

  private void skipLinesUntil(Parser parser, IntervalSet next) {
    while (!next.contains(parser.getInputStream().LA(1))) {
      if (!inErrorRecoveryMode(parser)) {
        reportError(parser, new InputMismatchException(parser));
      }
      skipLine(parser.getInputStream());
      endErrorCondition(parser);
    }
  }

  private void skipWordsUntil(Parser parser, IntervalSet next) {
    TokenStream tokens = parser.getInputStream();
    if (endsWords(tokens.LA(1))) {
      return;
    }
    if (!inErrorRecoveryMode(parser)) {
      InputMismatchException mistake = new InputMismatchException(parser);
      reportError(parser, mistake);
      spoil(parser.getContext(), mistake);
    }
    while (!next.contains(tokens.LA(1)) && !endsWords(tokens.LA(1))) {
      tokens.consume();
    }
  }

  private static boolean endsWords(int type) {
    return type == NL || type == LBRACE || type == RBRACE || type == Token.EOF;
  }

  @Override
  public void recover(Parser parser, RecognitionException mistake) {
    TokenStream tokens = parser.getInputStream();
    ParserRuleContext rule = parser.getContext();
    if (rule instanceof StatementContext || rule instanceof ClauseLineContext) {
      if (tokens.LA(1) != LBRACE) {
        spoil(rule, mistake);
      }
      skipLine(tokens);
      endErrorCondition(parser);
      return;
    }
    while (!endsWords(tokens.LA(1)) && !opensClauseOrRemark(tokens.LA(1))) {
      tokens.consume();
    }
  }

  /**
   * Marks what was read right before a mistake as not read: {@code at 5' -6"} is no place at 5'.
   * After an argument a stray word or number spoils nothing, since rather a clause word is missing.
   */
  private static void spoil(ParserRuleContext rule, RecognitionException mistake) {
    ParserRuleContext last =
        rule instanceof StatementContext
            ? lastPart((ParserRuleContext) rule.getChild(0), null)
            : rule;
    while (last instanceof TailContext || last instanceof HeadingContext || last == rule) {
      ParserRuleContext inner = lastPart(last, null);
      last = inner == null ? lastPart(last.getParent(), last) : inner;
    }
    int found = mistake.getOffendingToken().getType();
    boolean spoilt =
        last instanceof ClauseContext
            || last instanceof ExpressionContext && found != NAME
            || last instanceof PhraseContext
            || (last instanceof NameContext || last instanceof SelectionContext) && found == FAULT;
    if (spoilt) {
      last.exception = mistake;
    }
  }

  /** The last rule read inside another, before the given one. */
  private static ParserRuleContext lastPart(ParserRuleContext outer, ParserRuleContext before) {
    ParserRuleContext last = null;
    for (int i = 0; i < outer.getChildCount() && outer.getChild(i) != before; i++) {
      if (outer.getChild(i) instanceof ParserRuleContext part) {
        last = part;
      }
    }
    return last;
  }

  private static boolean opensClauseOrRemark(int type) {
    return type >= AT && type <= LOADS || type >= NOTE && type <= HOLD;
  }

  /** Past the end of the line, and past all blocks that open on it. */
  private static void skipLine(TokenStream tokens) {
    int depth = 0;
    while (true) {
      int type = tokens.LA(1);
      if (type == Token.EOF || type == RBRACE && depth == 0) {
        return;
      }
      tokens.consume();
      if (type == NL && depth == 0) {
        return;
      }
      depth += type == LBRACE ? 1 : type == RBRACE ? -1 : 0;
    }
  }

  @Override
  public Token recoverInline(Parser parser) {
    throw new InputMismatchException(parser);
  }

  @Override
  public void reportError(Parser parser, RecognitionException mistake) {
    if (inErrorRecoveryMode(parser)) {
      return;
    }
    beginErrorCondition(parser);
    WallToken found = (WallToken) mistake.getOffendingToken();
    if (found.getType() == FAULT) {
      return; // told when it was found
    }
    WallToken before = ((TokenList) parser.getInputStream()).LT(-1);
    problems.add(problem(parser, mistake, found, before));
  }

  /** True of a comma at the end of a line, where nothing of the next line goes on. */
  private static boolean joinsNextLine(WallToken before, WallToken found) {
    boolean comma = before != null && (before.getType() == COMMA || before.getType() == ITEM_COMMA);
    return comma && found.part(NAME, before.end(), found.start()).getText().indexOf('\n') >= 0;
  }

  private static SyntaxProblem problem(
      Parser parser, RecognitionException mistake, WallToken found, WallToken before) {
    Token keyword = Expectations.keyword(parser.getContext());
    int type = found.getType();
    if (type == LBRACE && parser.getContext() instanceof StatementContext) {
      WallToken word = (WallToken) keyword;
      return new BlockNotTaken(new Word(word.getText(), false, word.range()), found.range());
    }
    if (keyword != null && before == keyword && keyword.getType() == CATALOG_PART) {
      String apart = WordSlips.apart(before.getText(), List.copyOf(Keywords.PART_KINDS), Set.of());
      if (!apart.isEmpty()) {
        return new Garbled(
            Garbled.How.RUN_TOGETHER, before.getText(), List.of(apart), "", before.range());
      }
    }
    if (keyword != null) {
      SyntaxProblem slip =
          LineMends.find(parser.getInputStream(), Expectations.kind(parser.getContext()));
      if (slip != null) {
        return slip;
      }
    }
    boolean number = type == NUMBER || type == LENGTH || type == COUNT;
    boolean assigns = mistake.getExpectedTokens().contains(ASSIGN);
    if (number
        && !assigns
        && before != null
        && (before.getType() == NAME || before.getType() == STRING)) {
      return new BareNumber(found.getText(), found.range());
    }
    if (joinsNextLine(before, found)) {
      return new Unexpected(
          "end of line",
          Expectations.words((WallParser) parser, mistake),
          keyword == null ? "" : keyword.getText(),
          before.range());
    }
    boolean putIn = found.start() == found.end();
    boolean end = type == NL || type == Token.EOF || type == RBRACE || putIn;
    if (end && parser.getContext() instanceof BlockContext && before != null && keyword == null) {
      WallToken first = (WallToken) parser.getContext().getParent().getStart();
      WallToken heading = first.part(NAME, first.start(), before.end());
      return new BraceMissing(heading.getText(), true, heading.range());
    }
    TextRange range = end && before != null ? before.range() : found.range();
    return new Unexpected(
        end ? "end of line" : found.getText(),
        Expectations.words((WallParser) parser, mistake),
        keyword == null ? "" : keyword.getText(),
        range);
  }
}
