package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import mullwright.syntax.SyntaxProblem.NotClosed;
import mullwright.syntax.SyntaxProblem.StrayCharacter;
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
  private final List<Comment> comments = new ArrayList<>();
  private final Deque<OpenBrace> open = new ArrayDeque<>();
  private final boolean balanced;
  private int at;

  /** True if a comment took the closing braces along. */
  private boolean commentOpen;

  /**
   * A brace that waits for its other half.
   *
   * @param inside the kind of block, or null inside braces that hold clauses or nothing of use
   * @param clausesOf the statement whose clauses the braces hold, or null
   */
  private record OpenBrace(WallToken brace, BlockKind inside, StatementKind clausesOf) {
    boolean holdsClauses() {
      return clausesOf != null;
    }

    boolean skipped() {
      return inside == null && clausesOf == null;
    }
  }

  TokenStep(SegmentCutter.Cut cut) {
    this.balanced = cut.balanced();
    this.tokens = significant(cut.tokens());
    Parentheses.check(tokens, out);
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
    int end = end();
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
    return comments;
  }

  /** All but comments and strays, which are set aside. */
  private List<WallToken> significant(List<WallToken> raw) {
    List<WallToken> kept = new ArrayList<>(raw.size());
    for (int i = 0; i < raw.size(); i++) {
      WallToken token = raw.get(i);
      switch (token.getType()) {
        case LINE_COMMENT, BLOCK_COMMENT -> comment(token);
        case OPEN_COMMENT -> {
          comment(token);
          TextRange mark = new TextRange(token.start(), token.start() + 2);
          out.report(new NotClosed(NotClosed.What.COMMENT, mark));
          commentOpen = true;
        }
        case STRAY -> i = strays(raw, i, kept);
        default -> kept.add(token);
      }
    }
    return kept;
  }

  /**
   * Strays in one piece are one mistake. Those that touch a word or value make it unclear what was
   * meant and stay as a fault; those that stand apart are passed over, and so the line is read.
   */
  private int strays(List<WallToken> raw, int first, List<WallToken> kept) {
    int last = first;
    while (last + 1 < raw.size()
        && raw.get(last + 1).getType() == STRAY
        && raw.get(last + 1).start() == raw.get(last).end()) {
      last++;
    }
    WallToken start = raw.get(first);
    WallToken all = start.part(FAULT, start.start(), raw.get(last).end());
    if (all.getText().startsWith("#")) {
      return hash(raw, first);
    }
    boolean begins = kept.isEmpty() || kept.get(kept.size() - 1).getType() == NL;
    boolean touches =
        first > 0 && isWord(raw.get(first - 1)) && raw.get(first - 1).end() == all.start()
            || last + 1 < raw.size()
                && isWord(raw.get(last + 1))
                && raw.get(last + 1).start() == all.end();
    StrayCharacter problem = new StrayCharacter(all.getText(), all.range());
    if (touches && !begins) {
      out.report(problem);
      kept.add(all);
    } else {
      out.drop(all, problem);
    }
    return last;
  }

  /** Elsewhere a comment begins so: the rest of the line is none of the drafter's mistakes. */
  private int hash(List<WallToken> raw, int first) {
    WallToken mark = raw.get(first);
    out.drop(mark, new StrayCharacter("#", new TextRange(mark.start(), mark.start() + 1)));
    int last = first;
    while (last + 1 < raw.size() && raw.get(last + 1).getType() != NL) {
      last++;
      out.drop(raw.get(last));
    }
    return last;
  }

  private static boolean isWord(WallToken token) {
    return token.getType() >= LENGTH && token.getType() <= MARKED_NAME;
  }

  private void comment(WallToken token) {
    String text = token.getText();
    comments.add(new Comment(text, text.startsWith("///"), token.range()));
  }

  private int end() {
    for (int i = tokens.size() - 1; i >= 0; i--) {
      if (tokens.get(i).getType() != NL) {
        return tokens.get(i).end();
      }
    }
    return 0;
  }

  /** One line from its first word to its end or to a brace. */
  private void line() {
    WallToken first = tokens.get(at);
    if (!balanced) {
      closeBlocksLeftOpenBefore(first);
    }
    OpenBrace here = open.peek();
    BlockKind block = here == null ? BlockKind.FILE : here.inside();
    List<WallToken> line = takeLine(block);
    if (here != null && here.skipped()) {
      skip(line);
    } else if (here != null && here.holdsClauses()) {
      new StatementTyper(here.clausesOf(), line, out).typeClauses();
    } else if (first.getType() != NAME) {
      line.forEach(out::add);
    } else {
      statement(block, line);
      return;
    }
    if (nextIs(LBRACE)) {
      openBrace(null, null);
    } else {
      endLine();
    }
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
        out.report(
            new UnknownKeyword(
                new Word(word, false, first.range()),
                block,
                Keywords.nearest(block, word),
                first.range()));
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
      openBrace(opens, clausesOf);
    } else {
      endLine();
    }
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
          if (!goesOn(line.get(line.size() - 1), parentheses, block)) {
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

  private boolean goesOn(WallToken last, int parentheses, BlockKind block) {
    int next = at;
    while (next < tokens.size() && tokens.get(next).getType() == NL) {
      next++;
    }
    if (next == tokens.size() || tokens.get(next).getType() == RBRACE) {
      return false;
    }
    WallToken following = tokens.get(next);
    if (following.getType() == LBRACE) {
      return true;
    }
    boolean continued = parentheses > 0 || LineEnds.continueAfter(last.getType());
    return continued
        && !(block != null
            && following.getType() == NAME
            && Keywords.isStatementWord(block, following.getText()));
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
    openBrace(null, null);
  }

  private void openBrace(BlockKind inside, StatementKind clausesOf) {
    WallToken brace = tokens.get(at++);
    if (open.size() < SyntaxLimits.NESTING) {
      out.addBrace(brace, inside == null ? block() : inside);
      open.push(new OpenBrace(brace, inside, clausesOf));
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

  private void closeBrace() {
    WallToken brace = tokens.get(at++);
    if (open.isEmpty()) {
      out.drop(
          brace, new Unexpected("}", List.of("a statement"), BlockKind.FILE.name(), brace.range()));
      return;
    }
    OpenBrace closed = open.pop();
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
      int end = tokens.get(at - 1).start();
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
    return !Keywords.isOpen(innermost.inside()) || braceFollows;
  }

  private int typeAt(int index) {
    return index < tokens.size() ? tokens.get(index).getType() : 0;
  }

  private void closeUnclosed(int end) {
    WallToken brace = open.pop().brace();
    if (!commentOpen) {
      out.report(new NotClosed(NotClosed.What.BLOCK, brace.range()));
    }
    if (out.lastType() != NL && out.lastType() != LBRACE) {
      out.add(brace.part(NL, end, end));
    }
    out.add(brace.part(RBRACE, end, end));
    out.add(brace.part(NL, end, end));
  }
}
