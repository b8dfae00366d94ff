package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import mullwright.syntax.SyntaxProblem.BlockNotClosed;
import mullwright.syntax.SyntaxProblem.BlockWordMissing;
import mullwright.syntax.SyntaxProblem.BraceExtra;
import mullwright.syntax.SyntaxProblem.BraceMissing;
import mullwright.syntax.SyntaxProblem.BraceTwice;
import mullwright.syntax.SyntaxProblem.TooMuch;
import mullwright.syntax.SyntaxProblem.Unexpected;
import mullwright.syntax.SyntaxProblem.UnknownKeyword;
import org.antlr.v4.runtime.Token;

/**
 * Turns a segment's raw tokens into those the generated parser reads: finds where lines end, which
 * block each stands in and so what its first word says, and hands the line to the typer of its
 * kind.
 *
 * <p>Braces always come out in pairs: one that is missing is reported here and put in, so that a
 * slip never costs more than its block.
 */
final class TokenStep {
  private final List<WallToken> tokens;
  private final TypedTokens out = new TypedTokens();
  private final SetAside aside = new SetAside(out);
  private final Deque<OpenBrace> open = new ArrayDeque<>();
  private final Braces braces;

  /** True if a block may end before its closing brace. */
  private boolean leftOpen;

  private int at;

  TokenStep(SegmentCutter.Cut cut) {
    this.leftOpen = !cut.balanced();
    this.tokens = aside.significant(cut.tokens());
    Parentheses.check(tokens, out);
    this.braces = new Braces(tokens);
  }

  /** Goes through all tokens once. */
  TypedTokens run() {
    while (at < tokens.size()) {
      WallToken token = tokens.get(at);
      switch (token.getType()) {
        case NL -> at++;
        case RBRACE -> closeBrace();
        case LBRACE -> braceWithoutWord();
        default -> line();
      }
    }
    int end = lastWordEnd();
    while (!open.isEmpty()) {
      closeUnclosed(end);
    }

    WallToken last = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
    if (last != null) {
      out.add(last.part(Token.EOF, last.end(), last.end()));
    }
    return out;
  }

  List<Comment> comments() {
    return aside.comments();
  }

  /** Where the last token ends that was read, line ends not counted. */
  private int lastWordEnd() {
    for (int i = at - 1; i >= 0; i--) {
      if (tokens.get(i).getType() != NL) {
        return tokens.get(i).end();
      }
    }
    return 0;
  }

  /** One line from its first word to its end or to a brace. */
  private void line() {
    WallToken first = tokens.get(at);
    if (leftOpen) {
      closeBlocksLeftOpenBefore(first);
    }
    OpenBrace here = open.peek();
    BlockKind block = here == null ? BlockKind.FILE : here.inside();
    List<WallToken> line = takeLine(block);
    if (here != null && here.skipped()) {
      skip(line);
    } else if (here != null && here.holdsClauses()) {
      new StatementTyper(here.clausesOf(), line, out).typeClauses();
    } else {
      if (mayBeGlued(block, line)) {
        line = GluedKeyword.part(line, block, out);
      }
      if (line.get(0).getType() == NAME) {
        statement(block, line);
        return;
      }
      line.forEach(out::add);
    }
    if (nextIs(LBRACE)) {
      openBrace(null, null, first);
    } else {
      endLine();
    }
  }

  /**
   * True if the first word may have another run into it; seldom, so that lines are read quickly.
   */
  private static boolean mayBeGlued(BlockKind block, List<WallToken> line) {
    WallToken first = line.get(0);
    if (first.getType() != NAME) {
      return first.getType() == MARKED_NAME;
    }
    return Keywords.isOpen(block)
        ? line.size() > 1
            && line.get(1).start() == first.end()
            && Character.isDigit(first.charAt(first.end() - 1))
        : Keywords.statement(block, first.getText()) == StatementKind.UNKNOWN;
  }

  /** The innermost block of statements. */
  private BlockKind block() {
    for (OpenBrace brace : open) {
      if (brace.inside() != null) {
        return brace.inside();
      }
    }
    return BlockKind.FILE;
  }

  private void statement(BlockKind block, List<WallToken> line) {
    WallToken first = line.get(0);
    String word = first.getText();
    StatementKind kind = Keywords.statement(block, word);
    BlockKind opens = kind.opens().orElse(null);
    StatementKind clausesOf = null;
    switch (kind) {
      case UNKNOWN -> {
        out.report(unknown(line, block));
        skip(line);
        opens = nextIs(LBRACE) ? Keywords.meantBlock(block, word) : null;
      }
      case PROPERTY, CATALOG_PART -> {
        new PropertyTyper(line, out).typeStatement(kind);
        opens = BlockKind.CATALOG_ITEM;
      }
      default -> {
        new StatementTyper(kind, line, out).typeStatement();
        boolean takesClauses =
            opens == null
                && kind != StatementKind.USE
                && kind != StatementKind.LET
                && kind != StatementKind.UNITS;
        clausesOf = takesClauses ? kind : null;
      }
    }
    if (nextIs(LBRACE)) {
      openBrace(opens, clausesOf, first);
    } else if (braces.isMissing(first, at, opens, clausesOf, block)) {
      openMissing(opens, clausesOf, first);
    } else {
      endLine();
    }
  }

  /** The first word, or the first two if the block knows them with a dash: {@code dead load}. */
  private static UnknownKeyword unknown(List<WallToken> line, BlockKind block) {
    WallToken first = line.get(0);
    String word = first.getText();
    TextRange range = first.range();
    if (line.size() > 1 && Keywords.isStatementWord(block, word + "-" + line.get(1).getText())) {
      range = new TextRange(first.start(), line.get(1).end());
      word = word + "-" + line.get(1).getText();
    }
    String written = first.part(NAME, range.start(), range.end()).getText();
    return new UnknownKeyword(
        new Word(written, false, range), block, Keywords.nearest(block, word), range);
  }

  /** Nothing of the line is read; its tokens stay so that they can be shown. */
  private void skip(List<WallToken> line) {
    for (int i = 0; i < line.size(); i++) {
      out.add(i == 0 ? line.get(i).as(UNKNOWN) : line.get(i));
    }
  }

  /** The raw tokens up to the end of the line, across line ends that do not end it. */
  private List<WallToken> takeLine(BlockKind block) {
    List<WallToken> line = new ArrayList<>();
    int parentheses = 0;
    for (; at < tokens.size(); at++) {
      WallToken token = tokens.get(at);
      switch (token.getType()) {
        case LBRACE, RBRACE -> {
          return line;
        }
        case NL -> {
          if (!goesOn(line, parentheses, block)) {
            return line;
          }
          continue;
        }
        case LPAREN -> parentheses++;
        case RPAREN -> parentheses = Math.max(0, parentheses - 1);
        default -> {
          // an ordinary token
        }
      }
      line.add(token);
    }
    return line;
  }

  private boolean goesOn(List<WallToken> line, int parentheses, BlockKind block) {
    int next = at;
    while (next < tokens.size() && tokens.get(next).getType() == NL) {
      next++;
    }
    if (next == tokens.size() || tokens.get(next).getType() == RBRACE) {
      return false;
    }
    WallToken following = tokens.get(next);
    if (following.getType() == LBRACE) {
      return takesBraces(line.get(0), next, block);
    }
    int last = line.get(line.size() - 1).getType();
    boolean continued = parentheses > 0 || LineEnds.continueAfter(last);
    return continued
        && !(block != null
            && following.getType() == NAME
            && Keywords.isStatementWord(block, following.getText()));
  }

  /** True unless braces on the next line can hardly be meant to belong to the line. */
  private boolean takesBraces(WallToken first, int brace, BlockKind block) {
    StatementKind kind =
        block == null ? StatementKind.UNKNOWN : Keywords.statement(block, first.getText());
    return switch (kind) {
      case USE, LET, UNITS -> false;
      case PROPERTY -> braces.wordMissing(brace, block) == null;
      default -> true;
    };
  }

  private boolean nextIs(int type) {
    return at < tokens.size() && tokens.get(at).getType() == type;
  }

  private void endLine() {
    if (nextIs(NL)) {
      out.add(tokens.get(at++));
    } else {
      WallToken last = tokens.get(at - 1);
      out.add(last.part(NL, last.end(), last.end()));
    }
  }

  /** A brace at the start of a line: the parser tells of it, unless nothing is read here. */
  private void braceWithoutWord() {
    WallToken brace = tokens.get(at);
    if (!open.isEmpty() && open.peek().skipped()) {
      out.add(brace.part(UNKNOWN, brace.start(), brace.start()));
    }
    StatementKind meant = braces.wordMissing(at, open.isEmpty() ? null : open.peek().inside());
    if (meant != null) {
      out.report(new BlockWordMissing(meant.spelling(), brace.range()));
      out.add(brace.part(Keywords.type(meant), brace.start(), brace.start()));
    }
    openBrace(meant == null ? null : meant.opens().orElse(null), null, brace);
  }

  private void openBrace(BlockKind inside, StatementKind clausesOf, WallToken first) {
    WallToken brace = tokens.get(at++);
    if (open.size() < SyntaxLimits.NESTING) {
      out.addBrace(brace, inside == null ? block() : inside);
      open.push(new OpenBrace(brace, inside, clausesOf, first, false));
      if (nextIs(LBRACE) && braces.tooFewClose()) {
        WallToken twice = tokens.get(at++);
        out.drop(twice, new BraceTwice(twice.range()));
        braces.closed();
      }
      return;
    }
    out.report(new TooMuch("nesting", SyntaxLimits.NESTING, brace.range()));
    out.drop(brace);
    for (int depth = 1; at < tokens.size() && depth > 0; at++) {
      WallToken token = tokens.get(at);
      depth += token.getType() == LBRACE ? 1 : token.getType() == RBRACE ? -1 : 0;
      out.drop(token);
    }
    endLine();
  }

  /** Puts in an opening brace that the text lacks, after the line just read. */
  private void openMissing(BlockKind inside, StatementKind clausesOf, WallToken first) {
    WallToken last = tokens.get(at - 1);
    WallToken heading = first.part(NAME, first.start(), last.end());
    out.report(new BraceMissing(heading.getText(), false, heading.range()));
    if (open.size() < SyntaxLimits.NESTING) {
      braces.opened();
      WallToken brace = last.part(LBRACE, last.end(), last.end());
      out.addBrace(brace, inside == null ? block() : inside);
      open.push(new OpenBrace(brace, inside, clausesOf, first, true));
      leftOpen = true;
    } else {
      endLine();
    }
  }

  private void closeBrace() {
    WallToken brace = tokens.get(at);
    while (braces.isOfOuter(brace, open)) {
      closeUnclosed(tokens.get(at - 1).end());
    }
    at++;
    if (open.isEmpty()) {
      braces.passedOver();
      out.drop(brace, new BraceExtra("", brace.range()));
      return;
    }
    OpenBrace closed = open.pop();
    if (braces.isExtra(at - 1, closed, block())) {
      open.push(closed);
      braces.passedOver();
      out.drop(brace, new BraceExtra(closed.word(), brace.range()));
      return;
    }
    out.add(brace);
    if (at < tokens.size() && !nextIs(NL) && !nextIs(RBRACE)) {
      afterBrace(closed);
    } else {
      endLine();
    }
  }

  /** Remarks may stand after a closing brace; anything else wants a line of its own. */
  private void afterBrace(OpenBrace closed) {
    WallToken next = tokens.get(at);
    if (Remarks.type(next.getText()) > 0) {
      new StatementTyper(StatementKind.UNKNOWN, takeLine(null), out).typeClauses();
    } else if (!closed.skipped()) {
      out.report(new Unexpected(next.getText(), List.of("a new line"), "after }", next.range()));
    }
    endLine();
  }

  /** In a segment with too few closing braces: a word of an outer block ends the inner ones. */
  private void closeBlocksLeftOpenBefore(WallToken first) {
    if (first.getType() != NAME || open.isEmpty() || at == 0) {
      return;
    }
    OpenBrace innermost = open.peek();
    String word = first.getText();
    if (innermost.skipped()
        || innermost.inside() != null && Keywords.isStatementWord(innermost.inside(), word)) {
      return;
    }
    int outwards = 0;
    for (OpenBrace outer : open) {
      if (outwards > 0 && outer.inside() != null && belongsTo(outer.inside(), word, innermost)) {
        break;
      }
      outwards++;
    }
    if (outwards < open.size() || belongsTo(BlockKind.FILE, word, innermost)) {
      int end = Math.max(tokens.get(at - 1).start(), lastWordEnd());
      for (int i = 0; i < outwards; i++) {
        closeUnclosed(end);
      }
    }
  }

  private boolean belongsTo(BlockKind outer, String word, OpenBrace innermost) {
    if (innermost.holdsClauses()) {
      return Keywords.clause(word) == null && Keywords.isStatementWord(outer, word);
    }
    if (!Keywords.opensBlock(outer, word)) {
      return false;
    }
    boolean braceFollows = typeAt(at + 1) == LBRACE || typeAt(at + 2) == LBRACE;
    return !Keywords.isOpen(innermost.inside())
        || braceFollows
        || Braces.column(innermost.first()) >= 0
            && !Braces.isDeeper(tokens.get(at), innermost.first());
  }

  private int typeAt(int index) {
    return index < tokens.size() ? tokens.get(index).getType() : 0;
  }

  private void closeUnclosed(int end) {
    OpenBrace left = open.pop();
    braces.closed();
    WallToken brace = left.brace();
    if (!left.missing()) {
      out.report(new BlockNotClosed(left.word(), lastWordEnd(), brace.range()));
    }
    if (out.lastType() != NL && out.lastType() != LBRACE) {
      out.add(brace.part(NL, end, end));
    }
    out.add(brace.part(RBRACE, end, end));
    out.add(brace.part(NL, end, end));
  }
}
