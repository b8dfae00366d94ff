package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.List;

/**
 * Tells of a segment's braces which opening one is missing and which closing one is too many, by
 * the words that follow, by how many there are of both, and by how far lines are indented.
 */
final class Braces {
  private final List<WallToken> tokens;

  /** How many closing braces there are beyond those that close something; less than 0: too few. */
  private int surplus;

  /**
   * @param tokens of the segment, without comments
   */
  Braces(List<WallToken> tokens) {
    this.tokens = tokens;
    for (WallToken token : tokens) {
      surplus += token.getType() == RBRACE ? 1 : token.getType() == LBRACE ? -1 : 0;
    }
  }

  /** Takes account of an opening brace put in. */
  void opened() {
    surplus--;
  }

  /** Takes account of a closing brace passed over. */
  void passedOver() {
    surplus--;
  }

  /** True if more braces open than close. */
  boolean tooFewClose() {
    return surplus < 0;
  }

  /** Takes account of a closing brace put in, or of an opening one passed over. */
  void closed() {
    surplus++;
  }

  /**
   * True if the line just read lacks an opening brace: what follows can only be meant to stand
   * inside.
   *
   * @param first the first token of the line
   * @param end the index of the token after the line
   * @param block the kind of block it opens, or null
   * @param clausesOf the statement whose clauses it may open braces for, or null
   * @param around the block it stands in
   */
  boolean isMissing(
      WallToken first, int end, BlockKind block, StatementKind clausesOf, BlockKind around) {
    if (block == null && clausesOf == null) {
      return false;
    }
    int following = following(end);
    if (following == tokens.size()) {
      return false;
    }
    WallToken next = tokens.get(following);
    boolean mayDoWithout = block == null || block == BlockKind.CATALOG_ITEM;
    if (next.getType() == RBRACE) {
      return surplus > 0 && !mayDoWithout && column(next) == column(first);
    }
    if (next.getType() != NAME) {
      return false;
    }
    boolean deeper = isDeeper(next, first);
    boolean inside =
        fits(next.getText(), block, clausesOf)
            && !(Keywords.opensBlock(around, next.getText()) && opensBraces(following))
            && (deeper || !standsIn(around, following, first));
    return inside && (surplus > 0 || !mayDoWithout) || surplus > 0 && deeper && !mayDoWithout;
  }

  /**
   * True if a closing brace is one too many: what follows still belongs in the block it would
   * close.
   *
   * @param brace its index
   * @param closing the block it would close
   * @param around the block that one stands in
   */
  boolean isExtra(int brace, OpenBrace closing, BlockKind around) {
    int following = following(brace + 1);
    if (surplus <= 0 || following == tokens.size()) {
      return false;
    }
    WallToken next = tokens.get(following);
    if (next.getType() == RBRACE) {
      int column = column(closing.first());
      int own = column(tokens.get(brace));
      return own >= 0 && own != column && column(next) == column;
    }
    return next.getType() == NAME
        && fits(next.getText(), closing.inside(), closing.clausesOf())
        && (isDeeper(next, closing.first()) || !standsIn(around, following, closing.first()));
  }

  /**
   * True if the innermost block ended before a closing brace, which is that of a block further out.
   *
   * @param open all open blocks, innermost first
   */
  boolean isOfOuter(WallToken closing, Iterable<OpenBrace> open) {
    int column = surplus < 0 ? column(closing) : -1;
    boolean innermost = true;
    for (OpenBrace block : open) {
      int own = column(block.first());
      if (innermost && (column < 0 || column >= own)) {
        return false;
      }
      if (innermost && block.missing() || own == column) {
        return true;
      }
      innermost = false;
    }
    return false;
  }

  /**
   * The statement that an opening brace without a word was evidently meant for: the one block of
   * those that may stand there in which the first word after the brace may; else null.
   *
   * @param brace its index
   * @param around the block it stands in, or null
   */
  StatementKind wordMissing(int brace, BlockKind around) {
    int following = following(brace + 1);
    if (around != BlockKind.WALL || following == tokens.size()) {
      return null;
    }
    String word = tokens.get(following).getText();
    StatementKind meant = null;
    for (String known : Keywords.words(around)) {
      StatementKind kind = Keywords.statement(around, known);
      BlockKind opens = kind.opens().orElse(BlockKind.CATALOG_ITEM);
      if (!Keywords.isOpen(opens) && Keywords.isStatementWord(opens, word)) {
        if (meant != null) {
          return null;
        }
        meant = kind;
      }
    }
    return meant;
  }

  private static boolean fits(String word, BlockKind block, StatementKind clausesOf) {
    if (block == null) {
      ClauseWord clause = Keywords.clause(word);
      boolean takes = clause != null && clausesOf != null && clausesOf.clauses().contains(clause);
      return takes || clausesOf != null && Remarks.type(word) > 0;
    }
    if (block == BlockKind.CATALOG) {
      return Keywords.belongsIn(block, word);
    }
    return Keywords.isOpen(block) || Keywords.isStatementWord(block, word);
  }

  /** True if the line may stand in that block, not further in than the given one. */
  private boolean standsIn(BlockKind block, int line, WallToken first) {
    String word = tokens.get(line).getText();
    if (block == BlockKind.CATALOG) {
      return Keywords.belongsIn(block, word) && !isDeeper(tokens.get(line), first)
          || opensBraces(line);
    }
    return Keywords.isOpen(block) || Keywords.isStatementWord(block, word);
  }

  private boolean opensBraces(int line) {
    for (int i = line; i < tokens.size() && tokens.get(i).getType() != NL; i++) {
      if (tokens.get(i).getType() == LBRACE) {
        return true;
      }
    }
    return false;
  }

  /** The index of the first token from there on that is no line end. */
  private int following(int from) {
    int index = from;
    while (index < tokens.size() && tokens.get(index).getType() == NL) {
      index++;
    }
    return index;
  }

  /** True if a token begins a line that is indented more than that of another. */
  static boolean isDeeper(WallToken token, WallToken than) {
    int column = column(than);
    return column >= 0 && column(token) > column;
  }

  /** How far a token is indented; -1 if it is not the first of its line. */
  static int column(WallToken token) {
    int start = token.start();
    int at = start;
    while (at > 0) {
      char before = token.charAt(at - 1);
      if (before == '\n' || before == '\r') {
        break;
      }
      if (before != ' ' && before != '\t') {
        return -1;
      }
      at--;
    }
    return start - at;
  }
}
