package mullwright.server.feature;

import java.util.ArrayList;
import java.util.List;
import mullwright.server.Document;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Token;
import mullwright.workspace.Cancel;

/** Writes the tokens of a document in the protocol's five numbers a token. */
final class TokenEncoder {
  private final Document document;
  private final LineTable lines;
  private final List<Integer> data = new ArrayList<>();
  private int line;
  private int column;

  private TokenEncoder(Document document) {
    this.document = document;
    this.lines = document.file().lines();
  }

  /** The tokens between two offsets of the file. */
  static List<Integer> encode(Document document, int from, int to, Cancel cancel) {
    TokenEncoder encoder = new TokenEncoder(document);
    ParsedFile file = document.file();
    int last = file.segmentAt(to);
    for (int i = file.segmentAt(from); i <= last; i++) {
      cancel.check();
      int start = file.segmentStart(i);
      for (Token token : file.tokens(i)) {
        int begins = start + token.range().start();
        int ends = start + token.range().end();
        if (ends > from && begins < to) {
          encoder.token(token, begins, ends);
        }
      }
    }
    return encoder.data;
  }

  /** One token; one that spans lines is told line by line, which every client can take. */
  private void token(Token token, int start, int end) {
    TokenLegend type = TokenLegend.of(token.kind());
    if (type == null) {
      return;
    }
    int lastLine = lines.line(Math.max(start, end - 1));
    for (int at = lines.line(start); at <= lastLine; at++) {
      int from = Math.max(start, lines.start(at));
      int to = Math.min(end, lines.end(at));
      if (to > from) {
        add(at, document.columns(lines.start(at), from), document.columns(from, to), type, token);
      }
    }
  }

  private void add(int atLine, int atColumn, int length, TokenLegend type, Token token) {
    data.add(atLine - line);
    data.add(atLine == line ? atColumn - column : atColumn);
    data.add(length);
    data.add(type.ordinal());
    data.add(TokenLegend.modifiers(token.kind()));
    line = atLine;
    column = atColumn;
  }
}
