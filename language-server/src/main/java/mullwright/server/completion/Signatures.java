package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.model.PartSchema;
import mullwright.server.hover.Forms;
import mullwright.server.hover.Words;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import mullwright.workspace.Cursor;

/**
 * What the statement at a place takes, and what of it is due there.
 *
 * @param all one of a statement; of a property one for each way to write it
 * @param active which of them fits what is written so far
 */
public record Signatures(List<Signature> all, int active) {
  /**
   * One way to write a statement.
   *
   * @param due the part that is being written or comes next; empty once all is there
   */
  public record Signature(
      String keyword, List<Forms.Slot> parts, String meaning, Optional<Integer> due) {
    /** All of it on one line. */
    public String label() {
      StringBuilder label = new StringBuilder(keyword);
      parts.forEach(part -> label.append(' ').append(part.text()));
      return label.toString();
    }

    /** Where in the label a part begins. */
    public int start(int part) {
      int start = keyword.length() + 1;
      for (int i = 0; i < part; i++) {
        start += parts.get(i).text().length() + 1;
      }
      return start;
    }
  }

  /** What the statement at a cursor takes; empty where none is under way. */
  public static Optional<Signatures> at(Cursor cursor) {
    LineContext line = LineContext.of(cursor);
    boolean comment = line.closed() && !line.inString() && touchesComment(cursor);
    if (line.atStart() || comment) {
      return Optional.empty();
    }
    if (line.kind() == StatementKind.PROPERTY) {
      return Words.schema(cursor)
          .flatMap(schema -> schema.find(line.keyword()))
          .map(property -> ofProperty(property, line));
    }
    if (line.kind() == StatementKind.UNKNOWN || line.kind().spelling().isEmpty()) {
      return Optional.empty();
    }
    List<Forms.Slot> parts = Forms.of(line.kind());
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Signatures(
                List.of(
                    new Signature(line.keyword(), parts, line.kind().meaning(), due(parts, line))),
                0));
  }

  private static boolean touchesComment(Cursor cursor) {
    for (Token token : cursor.file().tokens(cursor.segment())) {
      boolean comment =
          token.kind() == TokenKind.COMMENT || token.kind() == TokenKind.DOCUMENTATION;
      if (comment
          && token.range().start() < cursor.offset()
          && cursor.offset() <= token.range().end()) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Integer> due(List<Forms.Slot> parts, LineContext line) {
    boolean whole = !line.wantsOperand() && line.prefix().length() == 0 && !line.closed();
    if (!whole) {
      return index(parts, line.clause().orElse(null));
    }
    for (int i = 0; i < parts.size(); i++) {
      ClauseWord clause = parts.get(i).clause();
      if (clause != null && !line.given().contains(clause)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static Optional<Integer> index(List<Forms.Slot> parts, ClauseWord clause) {
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).clause() == clause) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static Signatures ofProperty(PartSchema.Property property, LineContext line) {
    List<Signature> all = new ArrayList<>();
    List<String> written = phrase(line);
    int best = 0;
    int most = -1;
    for (String pattern : property.patterns()) {
      List<String> tokens = List.of(pattern.split(" "));
      List<Forms.Slot> parts = new ArrayList<>();
      tokens.forEach(token -> parts.add(new Forms.Slot(null, token, property.meaning())));
      int due = Math.min(written.size(), tokens.size() - 1);
      all.add(new Signature(property.word(), parts, property.meaning(), Optional.of(due)));
      int fits = fits(tokens, written);
      if (fits > most) {
        most = fits;
        best = all.size() - 1;
      }
    }
    return new Signatures(List.copyOf(all), best);
  }

  /** The words and values since the last comma; a number and its unit are one. */
  private static List<String> phrase(LineContext line) {
    List<String> written = new ArrayList<>();
    for (int i = 0; i < line.afterClause().size(); i++) {
      TokenKind kind = line.afterClause().get(i).kind();
      if (kind == TokenKind.COMMA) {
        written.clear();
      } else if (kind != TokenKind.UNIT && kind != TokenKind.SIGN) {
        written.add(line.words().get(i));
      }
    }
    return written;
  }

  /** How many of the words written stand in the pattern as they are. */
  private static int fits(List<String> pattern, List<String> written) {
    int fits = 0;
    for (int i = 0; i < Math.min(pattern.size(), written.size()); i++) {
      String token = pattern.get(i).replaceAll("[\\[\\]]", "");
      boolean word = !token.equals(token.toUpperCase(Locale.ROOT));
      if (word && List.of(token.split("\\|")).contains(written.get(i))) {
        fits += 2;
      } else if (word) {
        fits -= 1;
      }
    }
    return fits;
  }
}
