package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.SyntaxProblem.CommaBetweenDigits;
import mullwright.syntax.SyntaxProblem.InchMarkMissing;
import mullwright.syntax.SyntaxProblem.MinusUnclear;
import mullwright.syntax.SyntaxProblem.NotClosed;
import mullwright.syntax.SyntaxProblem.StrayCharacter;
import mullwright.syntax.SyntaxProblem.Unexpected;

/**
 * Gives the tokens of one line the types their place asks for; here what all lines share: numbers
 * with units, minus, commas between digits, marks astray.
 */
abstract class LineTyper {
  final List<WallToken> line;
  final TypedTokens out;
  int at;
  WallToken previous;

  /**
   * @param line raw tokens of the line, without comments and line ends
   * @param out where typed tokens and mistakes go
   */
  LineTyper(List<WallToken> line, TypedTokens out) {
    this.line = new ArrayList<>(line);
    this.out = out;
  }

  /** A word that is no unit. */
  abstract void word(WallToken token);

  /** A number, before its unit. */
  abstract void number(WallToken token);

  /** Digits with letters or dashes that may be a name here; false if a name may not begin so. */
  abstract boolean digitName(WallToken token);

  /** Text in quotes: a text, or a name. */
  abstract void quoted(WallToken token);

  abstract void comma(WallToken token);

  /** Called before a token that begins a value is handed on. */
  void beforeValue(WallToken token) {}

  /** Called after {@code =}. */
  void afterAssign() {}

  /** True if a minus after the previous token would take something away from it. */
  abstract boolean operandBefore();

  /** Types the tokens from the given one on. */
  final void typeFrom(int first) {
    for (at = first; at < line.size(); at++) {
      token(line.get(at));
    }
  }

  final void emit(WallToken token) {
    out.add(token);
    previous = token;
  }

  final boolean previousIs(int... types) {
    if (previous != null) {
      for (int type : types) {
        if (previous.getType() == type) {
          return true;
        }
      }
    }
    return false;
  }

  /** The raw token so many places on, or null. */
  final WallToken raw(int distance) {
    int wanted = at + distance;
    return wanted >= 0 && wanted < line.size() ? line.get(wanted) : null;
  }

  final boolean rawIs(int distance, int type) {
    WallToken token = raw(distance);
    return token != null && token.getType() == type;
  }

  final boolean rawWord(int distance, String word) {
    return rawIs(distance, NAME) && raw(distance).getText().equals(word);
  }

  private void token(WallToken token) {
    switch (token.getType()) {
      case NAME -> {
        if (previousIs(NUMBER) && UnitWords.readsAsUnit(token.getText())) {
          emit(token.as(UNIT));
        } else {
          word(token);
        }
      }
      case NUMBER -> number(token);
      case LENGTH -> {
        beforeValue(token);
        emit(token);
      }
      case UNMARKED_LENGTH -> unmarked(token);
      case FEET_TWICE, MARKED_DASHED -> wrongMark(token);
      case DASHED, DIGIT_WORD -> {
        if (!digitName(token)) {
          beforeValue(token);
          digits(token);
        }
      }
      case SLASHED, PER_DEGREE, DOTTED, UNIT_MARK -> compound(token);
      case MARKED_NAME -> markedName(token);
      case COMMA -> commaToken(token);
      case PLUS -> emit(operandBefore() ? token : token.as(SIGN));
      case MINUS -> minus(token);
      case LPAREN -> {
        beforeValue(token);
        emit(token);
      }
      case ASSIGN -> {
        emit(token);
        afterAssign();
      }
      case STRING -> string(token);
      case OPEN_STRING -> openString(token);
      case STRAY -> {
        out.report(new StrayCharacter(token.getText(), token.range()));
        emit(token.as(FAULT));
      }
      default -> emit(token);
    }
  }

  /** A quote that nothing closes; after a number and before no word it is an inch mark. */
  private void openString(WallToken token) {
    if (previousIs(NUMBER) && !opensWords(token)) {
      TextRange whole = new TextRange(previous.start(), token.start() + 1);
      out.report(new InchMarkMissing(previous.getText(), whole));
    } else if (!rawIs(-1, UNMARKED_LENGTH) || opensWords(token)) {
      // else it is told with the length before it
      out.report(new NotClosed(NotClosed.What.STRING, token.range()));
    }
    emit(token.as(previousIs(NOTE, VERIFY, HOLD) ? STRING : FAULT));
  }

  private void unmarked(WallToken token) {
    WallToken next = raw(1);
    boolean apart = rawIs(1, OPEN_STRING) && !opensWords(next);
    int end = apart ? next.start() + 1 : token.end();
    out.report(new InchMarkMissing(token.getText(), new TextRange(token.start(), end)));
    beforeValue(token);
    emit(token.as(LENGTH));
  }

  /** True if words begin right behind an opening quote. */
  private static boolean opensWords(WallToken quote) {
    String quoted = quote.getText().substring(1);
    return !quoted.isEmpty() && !Character.isWhitespace(quoted.charAt(0));
  }

  /** {@code 5'-6'} and {@code 5-6"}: a wrong mark, or a minus without its spaces. */
  private void wrongMark(WallToken token) {
    String text = token.getText();
    String meant =
        token.getType() == FEET_TWICE
            ? text.substring(0, text.length() - 1) + "\""
            : text.replaceFirst("-", "'-");
    out.report(new MinusUnclear(meant, spaced(text), token.range()));
    emit(token.as(FAULT));
  }

  /** Digits with letters or dashes where a value is wanted. */
  private void digits(WallToken token) {
    String text = token.getText();
    int unit = unitIn(text);
    if (unit == 0) {
      // of 6-2.75 the rest comes as a token of its own
      boolean goesOn = raw(1) != null && raw(1).start() == token.end();
      String meant = goesOn ? "" : joined(text);
      out.report(new MinusUnclear(meant, spaced(text), token.range()));
      emit(token.as(FAULT));
      return;
    }
    WallToken word = token.part(UNIT, token.start() + unit, token.end());
    if (UnitWords.readsAsUnit(word.getText())) {
      emit(token.part(NUMBER, token.start(), word.start()));
      emit(word);
    } else {
      out.report(
          new Unexpected(word.getText(), List.of("a unit"), line.get(0).getText(), word.range()));
      emit(token.as(FAULT));
    }
  }

  /** What a dashed number may have been meant as in one piece: 5-6 as 5'-6". */
  private static String joined(String text) {
    int dash = text.indexOf('-');
    boolean twoNumbers = text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '-');
    if (twoNumbers && dash == text.lastIndexOf('-')) {
      return text.replace("-", "'-") + "\"";
    }
    return text.indexOf('/') > dash && Character.isDigit(text.charAt(dash + 1))
        ? text.replace('-', ' ') + "\""
        : "";
  }

  private static String spaced(String text) {
    return text.replaceFirst("-", " - ");
  }

  /** Where the unit starts in {@code 10F} or {@code 4.1e6mm4}; 0 if it is none. */
  static int unitIn(String text) {
    int last = 0;
    int digits = 0;
    while (digits < text.length()
        && (Character.isDigit(text.charAt(digits)) || text.charAt(digits) == '.')) {
      digits++;
    }
    if (text.indexOf('-') < 0) {
      last = digits;
    }
    int exponent = digits + 1;
    if (digits < text.length() && Character.toLowerCase(text.charAt(digits)) == 'e') {
      if (exponent < text.length() && text.charAt(exponent) == '-') {
        exponent++;
      }
      int from = exponent;
      while (exponent < text.length() && Character.isDigit(text.charAt(exponent))) {
        exponent++;
      }
      if (exponent > from && UnitWords.readsAsUnit(text.substring(exponent))) {
        return exponent;
      }
    }
    return last;
  }

  private void compound(WallToken token) {
    String text = token.getText();
    if (previousIs(NUMBER) && UnitWords.readsAsUnit(text)) {
      emit(token.as(UNIT));
      return;
    }
    int slash = text.indexOf('/');
    if (slash < 0) {
      out.report(new StrayCharacter(text, token.range()));
      emit(token.as(FAULT));
      return;
    } else {
      line.remove(at);
      int cut = token.start() + slash;
      line.add(at, token.part(NAME, cut + 1, token.end()));
      line.add(at, token.part(DIVIDE, cut, cut + 1));
      if (slash > 0) {
        line.add(at, token.part(NAME, token.start(), cut));
      }
    }
    at--;
  }

  /** Tells of a dash that stands in place of the dots of a range; false if it is none such. */
  boolean rangeMeant(WallToken token) {
    return false;
  }

  /** Tells of a word that runs into the value after it; false if it is none such. */
  boolean glued(WallToken token) {
    return false;
  }

  private void markedName(WallToken token) {
    String text = token.getText();
    if (glued(token)) {
      return;
    }
    if (text.indexOf('-') >= 0) {
      out.report(new MinusUnclear("", spaced(text), token.range()));
      emit(token.as(FAULT));
      return;
    }
    WallToken mark = token.part(FAULT, token.end() - 1, token.end());
    out.report(new StrayCharacter(mark.getText(), mark.range()));
    word(token.part(NAME, token.start(), token.end() - 1));
    emit(mark);
  }

  private void string(WallToken token) {
    boolean afterDigit =
        at > 0
            && raw(-1).end() == token.start()
            && Character.isDigit(token.charAt(token.start() - 1));
    if (afterDigit) {
      WallToken mark = token.part(FAULT, token.start(), token.start() + 1);
      out.report(new StrayCharacter(mark.getText(), mark.range()));
    }
    if (afterDigit) {
      emit(token.as(FAULT));
    } else {
      quoted(token);
    }
  }

  private void minus(WallToken token) {
    if (rangeMeant(token)) {
      return;
    }
    WallToken before = raw(-1);
    WallToken after = raw(1);
    boolean tight = before != null && before.end() == token.start();
    if (!operandBefore() && !(tight && previousIs(NAME))) {
      beforeValue(token);
      emit(token.as(SIGN));
    } else if (before.end() < token.start() && (after == null || token.end() < after.start())) {
      emit(token);
    } else if (dangles(before, after)) {
      String feet = before.getText();
      TextRange range = new TextRange(before.start(), token.end());
      out.report(new MinusUnclear(feet + "-0\"", feet, range));
      emit(token.as(FAULT));
    } else {
      String left = before.getText();
      String right = after == null ? "" : after.getText();
      int end = after == null ? token.end() : after.end();
      TextRange range = new TextRange(before.start(), end);
      out.report(new MinusUnclear(oneLiteral(before, after), left + " - " + right, range));
      emit(token.as(FAULT));
    }
  }

  /** True for feet and a dash before a word that is no value: {@code 2'- above L1}. */
  private static boolean dangles(WallToken before, WallToken after) {
    boolean feet = before.getType() == LENGTH && Literals.isFeet(before.getText());
    return feet
        && (after == null
            || after.getType() == NAME
                && (after.getText().equals("above")
                    || after.getText().equals("below")
                    || Keywords.clause(after.getText()) != null));
  }

  /** What the two make without spaces, if that can be read at all. */
  private static String oneLiteral(WallToken before, WallToken after) {
    if (after == null) {
      return "";
    }
    boolean names = before.getType() == NAME && after.getType() == NAME;
    boolean feetAndInches =
        before.getType() == LENGTH
            && after.getType() == LENGTH
            && Literals.isFeet(before.getText())
            && Literals.isInches(after.getText());
    return names || feetAndInches ? before.getText() + "-" + after.getText() : "";
  }

  private void commaToken(WallToken token) {
    WallToken before = raw(-1);
    WallToken after = raw(1);
    boolean tight =
        before != null
            && after != null
            && before.end() == token.start()
            && after.start() == token.end();
    if (!tight
        || !Character.isDigit(token.charAt(token.start() - 1))
        || !Character.isDigit(token.charAt(token.end()))) {
      comma(token);
      return;
    }
    String left = before.getText();
    int start = before.start();
    String two = left;
    if (out.lastProblem() instanceof CommaBetweenDigits earlier
        && earlier.range().end() == before.end()) {
      // 1,200,000 is one mistake
      out.forgetLastProblem();
      left = earlier.asOne();
      two = earlier.asTwo();
      start = earlier.range().start();
    }
    String right = after.getText();
    String one = groupsThousands(right) ? left + right : left + "." + right;
    out.report(new CommaBetweenDigits(one, two + ", " + right, new TextRange(start, after.end())));
    commaInNumber(token);
  }

  /** Three digits after a comma are thousands; any other number of them is a decimal fraction. */
  private static boolean groupsThousands(String right) {
    return right.chars().takeWhile(Character::isDigit).count() == 3;
  }

  /** A comma between digits, already reported. */
  void commaInNumber(WallToken token) {
    emit(token.as(FAULT));
  }
}
