package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.SyntaxProblem.InchMarkMissing;
import mullwright.syntax.SyntaxProblem.NotClosed;
import mullwright.syntax.SyntaxProblem.StrayCharacter;

/** Takes comments, and characters the language has no use for, out of a segment's raw tokens. */
final class SetAside {
  private static final String FOOT_MARKS = "'\u2032\u2019";

  private final List<Comment> comments = new ArrayList<>();
  private final TypedTokens out;

  /**
   * @param out where mistakes go, and tokens the parser does not see
   */
  SetAside(TypedTokens out) {
    this.out = out;
  }

  /** All comments met so far. */
  List<Comment> comments() {
    return comments;
  }

  /** All but comments and strays, which are set aside. */
  List<WallToken> significant(List<WallToken> raw) {
    List<WallToken> kept = new ArrayList<>(raw.size());
    for (int i = 0; i < raw.size(); i++) {
      WallToken token = raw.get(i);
      switch (token.getType()) {
        case LINE_COMMENT, BLOCK_COMMENT -> comment(token);
        case OPEN_COMMENT -> {
          comment(token);
          TextRange mark = new TextRange(token.start(), token.start() + 2);
          out.report(new NotClosed(NotClosed.What.COMMENT, mark));
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
    if (doublesFootMark(raw, first, all, kept)) {
      return last;
    }
    boolean begins = kept.isEmpty() || kept.get(kept.size() - 1).getType() == NL;
    boolean touches =
        first > 0 && isWord(raw.get(first - 1)) && raw.get(first - 1).end() == all.start()
            || last + 1 < raw.size()
                && isWord(raw.get(last + 1))
                && raw.get(last + 1).start() == all.end();
    StrayCharacter problem = new StrayCharacter(all.getText(), all.range());
    if (!begins && marksFeet(raw, first, all)) {
      kept.add(all.as(STRAY));
    } else if (touches && !begins) {
      out.report(problem);
      kept.add(all);
    } else {
      out.drop(all, problem);
    }
    return last;
  }

  /** Two foot marks are an inch mark to whoever types them: {@code 6''}, {@code 12'-6''}. */
  private boolean doublesFootMark(
      List<WallToken> raw, int first, WallToken all, List<WallToken> kept) {
    WallToken before = first > 0 ? raw.get(first - 1) : null;
    boolean feet =
        before != null
            && (before.getType() == FEET_TWICE
                || before.getType() == LENGTH && Literals.isFeet(before.getText()));
    if (!feet
        || before.end() != all.start()
        || all.end() - all.start() != 1
        || FOOT_MARKS.indexOf(all.getText()) < 0) {
      return false;
    }
    String text = before.getText();
    TextRange range = new TextRange(before.start(), all.end());
    out.report(new InchMarkMissing(text.substring(0, text.length() - 1), range));
    kept.set(kept.size() - 1, before.part(FAULT, range.start(), range.end()));
    return true;
  }

  /** True of a foot mark after a word with a number run into it: {@code at13'-0"}, told as that. */
  private static boolean marksFeet(List<WallToken> raw, int first, WallToken all) {
    WallToken before = first > 0 ? raw.get(first - 1) : null;
    return before != null
        && before.getType() == NAME
        && before.end() == all.start()
        && Character.isDigit(before.charAt(before.end() - 1))
        && all.end() - all.start() == 1
        && FOOT_MARKS.indexOf(all.getText()) >= 0;
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
}
