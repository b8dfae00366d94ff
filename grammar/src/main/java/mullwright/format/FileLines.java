package mullwright.format;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.TextRange;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;

/** Cuts a file into lines and each line into cells, and finds how far each is indented. */
final class FileLines {
  private static final int STEP = 2;
  private static final int CONTINUED = 4;

  private final ParsedFile file;
  private final LineTable table;
  private final List<Line> lines = new ArrayList<>();
  private final List<List<Token>> tokens = new ArrayList<>();

  private FileLines(ParsedFile file) {
    this.file = file;
    this.table = file.lines();
    for (int i = 0; i < table.count(); i++) {
      lines.add(new Line(file.text().substring(table.start(i), table.end(i))));
      tokens.add(new ArrayList<>());
    }
  }

  static List<Line> of(ParsedFile file) {
    FileLines reader = new FileLines(file);
    for (int i = 0; i < file.segments().size(); i++) {
      reader.segment(i);
    }
    return reader.lines;
  }

  private void segment(int index) {
    Segment segment = file.segments().get(index);
    int start = file.segmentStart(index);
    int firstLine = table.line(start);
    int lastLine = table.line(Math.max(start, start + segment.text().length() - 1));
    List<Token> absolute = new ArrayList<>();
    for (Token token : file.tokens(index)) {
      TextRange range = file.absolute(index, token.range());
      Token moved = new Token(token.kind(), range);
      absolute.add(moved);
      tokens.get(table.line(range.start())).add(moved);
      keepIfUnreadable(moved);
    }
    StatementCells cells = new StatementCells(segment, start, absolute);
    keepBroken(segment, start, cells);
    Indents indents = new Indents(segment, start, absolute, this::text);
    keepWhole(firstLine, lastLine, indents);
    for (int line = firstLine; line <= lastLine; line++) {
      read(line, cells, indents);
    }
  }

  /** Where one line of a statement is kept, all lines it goes on over are. */
  private void keepWhole(int firstLine, int lastLine, Indents indents) {
    List<Line> statement = new ArrayList<>();
    boolean kept = false;
    for (int number = firstLine; number <= lastLine; number++) {
      if (tokens.get(number).isEmpty()) {
        continue;
      }
      Line line = lines.get(number);
      if (!indents.isContinuation(tokens.get(number).get(0))) {
        statement.clear();
        kept = false;
      }
      statement.add(line);
      if (kept) {
        line.keep();
      } else if (line.isKept()) {
        kept = true;
        statement.forEach(Line::keep);
      }
    }
  }

  /** What is not understood, and what spans lines, stays as it is. */
  private void keepIfUnreadable(Token token) {
    int first = table.line(token.range().start());
    int last = table.line(token.range().end() - 1);
    if (first != last) {
      boolean alone = tokens.get(first).size() == 1;
      for (int line = alone ? first + 1 : first; line <= last; line++) {
        lines.get(line).keep();
      }
    } else if (token.kind() == TokenKind.FAULT || token.kind() == TokenKind.UNKNOWN) {
      lines.get(first).keep();
    }
  }

  private void keepBroken(Segment segment, int start, StatementCells cells) {
    for (SyntaxProblem problem : segment.problems()) {
      // with a brace missing or too many, how deep a line stands is a guess
      boolean all =
          problem instanceof SyntaxProblem.TooMuch
              || problem instanceof SyntaxProblem.BraceMissing
              || problem instanceof SyntaxProblem.BraceExtra
              || problem instanceof SyntaxProblem.BlockNotClosed;
      int from = all ? 0 : problem.range().start();
      int to = all ? segment.text().length() : problem.range().end();
      keep(start + from, start + to);
      for (TextRange head : cells.heads()) {
        if (head.start() < start + to && start + from < head.end()) {
          keep(head.start(), head.end());
        }
      }
    }
  }

  private void keep(int from, int to) {
    for (int line = table.line(from); line <= table.line(Math.max(from, to - 1)); line++) {
      lines.get(line).keep();
    }
  }

  private void read(int number, StatementCells cells, Indents indents) {
    Line line = lines.get(number);
    List<Token> all = tokens.get(number);
    if (all.isEmpty()) {
      return;
    }
    Token first = all.get(0);
    Token last = all.get(all.size() - 1);
    boolean commented = isComment(last);
    List<Token> words = commented ? all.subList(0, all.size() - 1) : all;
    line.indent(STEP * indents.depthOf(first) + (indents.isContinuation(first) ? CONTINUED : 0));
    if (commented) {
      int end = Math.min(last.range().end(), table.end(number));
      boolean whole = end == last.range().end();
      String text = file.text().substring(last.range().start(), end);
      line.comment(whole ? Spelling.of(last, text) : text);
    }
    if (words.isEmpty()) {
      return;
    }
    Token firstWord = words.get(0);
    Token lastWord = words.get(words.size() - 1);
    if (text(lastWord).equals("{") && lastWord.kind() == TokenKind.BRACE) {
      line.opensBlock();
    }
    if (text(firstWord).equals("}") && firstWord.kind() == TokenKind.BRACE) {
      line.closesBlock();
    }
    List<StatementCells.Start> starts = cells.of(firstWord, lastWord);
    boolean columns = !starts.isEmpty() && words.stream().noneMatch(this::isComment);
    if (columns) {
      line.alignAs(text(firstWord));
      for (int i = 0; i < starts.size(); i++) {
        int from = starts.get(i).offset();
        int to = i + 1 < starts.size() ? starts.get(i + 1).offset() : Integer.MAX_VALUE;
        line.add(starts.get(i).key(), joined(words, from, to));
      }
    } else {
      line.keyword(text(firstWord));
      line.add("", joined(words, 0, Integer.MAX_VALUE));
    }
  }

  private boolean isComment(Token token) {
    return token.kind() == TokenKind.COMMENT || token.kind() == TokenKind.DOCUMENTATION;
  }

  private String joined(List<Token> words, int from, int to) {
    StringBuilder text = new StringBuilder();
    Token before = null;
    for (Token token : words) {
      if (token.range().start() < from || token.range().start() >= to) {
        continue;
      }
      if (before != null && Spelling.spaceBetween(before, text(before), token, text(token))) {
        text.append(' ');
      }
      text.append(Spelling.of(token, text(token)));
      before = token;
    }
    return text.toString();
  }

  private String text(Token token) {
    return file.text().substring(token.range().start(), token.range().end());
  }
}
