package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.List;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Unexpected;

/**
 * Types the line of a statement about the wall: its clause words open slots, and a slot tells
 * whether a number is a grid line's name, whether a name stands for a value and what joins them.
 */
final class StatementTyper extends LineTyper {
  private enum Slot {
    /** Names of lines, which may begin with a digit. */
    LINE_NAMES,
    /** All other names. */
    NAMES,
    PLACES,
    VALUES,
    /** A value, then names: slab 14" L13, L14. */
    VALUE_THEN_NAMES,
    /** A line's name, then a value: corner 5 90 deg. */
    NAME_THEN_VALUE,
    COUNTED,
    LOADS
  }

  private final StatementKind kind;
  private Slot slot;

  /** In a place: true after right of and left of, where numbers are names of lines. */
  private boolean lineNames;

  /** In the place of a row: true after except, where bays may follow. */
  private boolean excepting;

  private boolean floorWordBefore;

  /** The clause that is being typed; null before the first. */
  private ClauseWord within;

  /** True where names are chosen of several: the lines of a vertical, the bays of an opening. */
  private boolean selecting;

  StatementTyper(StatementKind kind, List<WallToken> line, TypedTokens out) {
    super(line, out);
    this.kind = kind;
    this.slot = argumentSlot(kind);
    this.selecting = kind.form().selects();
  }

  /** True of a statement whose first word is followed by a name with a letter, or by nothing. */
  static boolean beginsWithName(StatementKind kind) {
    return argumentSlot(kind) == Slot.NAMES;
  }

  private static Slot argumentSlot(StatementKind kind) {
    return switch (kind.form()) {
      case LINE_NAME, LINE_NAMES, JOINED_LINES, LINES, BAYS, GLASS -> Slot.LINE_NAMES;
      case LINE_AND_ANGLE -> Slot.NAME_THEN_VALUE;
      case DEPTH_OF_FLOORS -> Slot.VALUE_THEN_NAMES;
      case OWN, FLOOR_NAMES, ROWS -> Slot.NAMES;
    };
  }

  private static Slot slot(ClauseWord clause) {
    return switch (clause.form()) {
      case AT, EXTENT -> Slot.PLACES;
      case SELECTION -> clause == ClauseWord.ROWS ? Slot.NAMES : Slot.LINE_NAMES;
      case SPACED, VALUE, VALUE_OR_FLAG -> Slot.VALUES;
      case COUNTED -> Slot.COUNTED;
      case LOADS -> Slot.LOADS;
      case NAME, TEXT, FLAG -> Slot.NAMES;
    };
  }

  @Override
  void word(WallToken token) {
    String text = token.getText();
    if (RangeInWords.isWord(text) && (rangeMeant(token) || leadsNowhere(token))) {
      return;
    }
    if (text.equals("from") && slot == Slot.LINE_NAMES && selecting && chosenFromTo(token)) {
      return;
    }
    int join = join(text);
    if (join > 0) {
      floorWordBefore = join == BELOW && previousIs(FLOOR_WORD);
      emit(token.as(join));
      lineNames |= join == RIGHT_OF || join == LEFT_OF;
      return;
    }
    if (Remarks.type(text) > 0) {
      slot = Slot.NAMES;
      selecting = false;
      emit(token.as(Remarks.type(text)));
      return;
    }
    ClauseWord clause = Keywords.clause(text);
    if (clause != null) {
      slot = slot(clause);
      within = clause;
      selecting = clause.form() == ClauseWord.Form.SELECTION;
      lineNames = false;
      excepting = false;
      emit(token.as(Keywords.type(clause)));
      return;
    }
    boolean touches = raw(1) != null && raw(1).start() == token.end();
    boolean goesOn = touches && (rawIs(1, STRAY) || rawIs(1, DIVIDE) && wholeBefore());
    if (!goesOn || !glued(token)) {
      name(token);
    }
  }

  /** True if what was read before is whole, so that no value is wanted. */
  private boolean wholeBefore() {
    return operandBefore() || previousIs(STRING, ALL, OTHERS, DIRECTION, GLASS, SPLICES, OPERABLE);
  }

  /** Tells of a word or dash in place of the dots of a range, and reads on as if they stood. */
  @Override
  boolean rangeMeant(WallToken token) {
    boolean places = slot == Slot.PLACES && within == ClauseWord.AT;
    boolean word = token.getType() == NAME;
    boolean joins = word && token.getText().equals("to") && kind == StatementKind.ROW;
    boolean clause =
        kind.clauses().contains(ClauseWord.THROUGH) && token.getText().equals("through");
    boolean named = within == null && kind.form() == StatementKind.Form.GLASS && at < 3;
    if (!previousIs(NAME, STRING)
        || named
        || clause
        || !(selecting && isNames() || places && !joins)
        || isOffset(1)) {
      return false;
    }
    boolean numbers = slot == Slot.LINE_NAMES || places && (lineNames || excepting);
    Garbled slip = RangeInWords.find(line, at, kind, numbers);
    if (slip == null) {
      return false;
    }
    out.report(slip);
    emit(token.as(RANGE));
    return true;
  }

  /** Tells of {@code bays from 9 to 12}, and leaves the first word out. */
  private boolean chosenFromTo(WallToken token) {
    int opener = within == null ? Keywords.type(kind) : Keywords.type(within);
    Garbled slip = previousIs(opener) ? RangeInWords.fromTo(line, at, kind) : null;
    if (slip == null) {
      return false;
    }
    out.drop(token, slip);
    return true;
  }

  private boolean isNames() {
    return slot == Slot.LINE_NAMES || slot == Slot.NAMES;
  }

  /** Tells of a place that goes on to another where only a row's does. */
  private boolean leadsNowhere(WallToken token) {
    boolean reaches = kind == StatementKind.ROW || within != ClauseWord.AT;
    if (reaches || slot != Slot.PLACES || !token.getText().equals("to")) {
      return false;
    }
    out.report(new Unexpected("to", List.of(",", ".."), kind.spelling(), token.range()));
    emit(token.as(FAULT));
    return true;
  }

  @Override
  boolean glued(WallToken token) {
    Garbled slip = GluedClause.find(line, at, kind);
    if (slip == null) {
      return false;
    }
    out.report(slip);
    emit(token.part(FAULT, slip.range().start(), slip.range().end()));
    while (raw(1) != null && raw(1).start() < slip.range().end()) {
      at++;
    }
    return true;
  }

  /** The type of a word that joins others, given what stands round it; 0 for none. */
  private int join(String text) {
    boolean value = slot == Slot.VALUES || slot == Slot.LOADS;
    return switch (text) {
      case "all" -> ALL;
      case "except" -> {
        excepting = kind == StatementKind.ROW;
        yield EXCEPT;
      }
      case "every" -> EVERY;
      case "above" -> ABOVE;
      case "below" -> BELOW;
      case "to" -> {
        lineNames = false;
        yield TO;
      }
      case "by" -> previousIs(ISOLATED_BY, SPREAD_BY) ? BY : 0;
      case "on" -> previousIs(BEDDED_ON) ? ON : 0;
      case "others" -> previousIs(BY_OTHERS) ? OTHERS : 0;
      case "of" -> previousIs(RIGHT_OF, LEFT_OF) ? OF : 0;
      case "at" -> slot == Slot.LOADS && previousIs(DIRECTION) && isArm() ? ARM : 0;
      case "equal" -> slot == Slot.VALUES && previousIs(COUNT) ? EQUAL : 0;
      case "x" -> slot == Slot.COUNTED && previousIs(COUNT) ? TIMES : 0;
      case "glass" -> previousIs(DIRECTION) ? GLASS : 0;
      case "floor" -> slot == Slot.PLACES && rawWord(1, "below") ? FLOOR_WORD : 0;
      case "splices" -> previousIs(BELOW) && floorWordBefore ? SPLICES : 0;
      case "right", "left" -> {
        if (slot == Slot.PLACES && rawWord(1, "of")) {
          yield text.equals("right") ? RIGHT_OF : LEFT_OF;
        }
        yield value && operandBefore() ? DIRECTION : 0;
      }
      default -> {
        if (text.equals("in") && previousIs(EQUAL)) {
          yield IN;
        }
        yield value && operandBefore() && Keywords.isDirection(text) ? DIRECTION : 0;
      }
    };
  }

  /** True if a direction follows before any other word: the arm of a load and no place. */
  private boolean isArm() {
    for (int i = 1; raw(i) != null && !rawIs(i, COMMA); i++) {
      if (rawIs(i, NAME)) {
        String word = raw(i).getText();
        if (Keywords.isDirection(word)) {
          return !rawWord(i + 1, "of");
        }
        if (bearing(i) || Keywords.clause(word) != null) {
          return false;
        }
      }
    }
    return false;
  }

  @Override
  void quoted(WallToken token) {
    if (previousIs(NOTE, VERIFY, HOLD)) {
      emit(token);
    } else {
      name(token);
    }
  }

  private void name(WallToken token) {
    switch (slot) {
      case VALUES, LOADS -> emit(token.as(REFERENCE));
      case VALUE_THEN_NAMES -> {
        boolean alone = raw(1) == null || rawIs(1, COMMA) || rawIs(1, RANGE);
        if (operandBefore() || alone) {
          slot = Slot.NAMES;
          emit(token);
        } else {
          emit(token.as(REFERENCE));
        }
      }
      case PLACES -> {
        boolean named = previousIs(ABOVE, BELOW, OF);
        emit(!named && isValueName(0) ? token.as(REFERENCE) : token);
      }
      case NAME_THEN_VALUE -> {
        slot = Slot.VALUES;
        emit(token);
      }
      default -> emit(token);
    }
  }

  /**
   * True if the name that far on stands in arithmetic or before above, below, right of, left of.
   */
  private boolean isValueName(int distance) {
    if (distance == 0 && previousIs(PLUS, MINUS, STAR, DIVIDE, SIGN, LPAREN)) {
      return true;
    }
    WallToken next = raw(distance + 1);
    if (next == null) {
      return false;
    }
    return switch (next.getType()) {
      case PLUS, MINUS, STAR, DIVIDE, RPAREN, PER_DEGREE -> true;
      case NAME -> bearing(distance + 1);
      default -> false;
    };
  }

  private boolean bearing(int distance) {
    return rawWord(distance, "above")
        || rawWord(distance, "below")
        || (rawWord(distance, "right") || rawWord(distance, "left")) && rawWord(distance + 1, "of");
  }

  @Override
  void number(WallToken token) {
    if (isCount(token)) {
      emit(token.as(COUNT));
    } else if (!lineName(token)) {
      beforeValue(token);
      emit(token);
    }
  }

  private boolean isCount(WallToken token) {
    boolean counts =
        rawIs(1, EACH)
            || previousIs(EVERY)
            || slot == Slot.COUNTED
            || slot == Slot.VALUES && rawWord(1, "equal");
    return counts && isNumber(token.getText());
  }

  private static boolean isNumber(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!Character.isDigit(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  @Override
  boolean digitName(WallToken token) {
    if (slot == Slot.COUNTED && token.getType() == DIGIT_WORD && token.getText().endsWith("x")) {
      String count = token.getText().substring(0, token.getText().length() - 1);
      if (isNumber(count)) {
        emit(token.part(COUNT, token.start(), token.end() - 1));
        emit(token.part(TIMES, token.end() - 1, token.end()));
        return true;
      }
    }
    return lineName(token);
  }

  /** Hands the digits on as the name of a line if one may stand here. */
  private boolean lineName(WallToken token) {
    boolean named =
        switch (slot) {
          case LINE_NAMES -> !startsLoads();
          // with a unit it is the value, and the name is missing
          case NAME_THEN_VALUE ->
              !rawIs(1, UNIT_MARK) && !(rawIs(1, NAME) && UnitWords.isUnit(raw(1).getText()));
          case PLACES -> (lineNames || excepting) && mayBeName() && !isOffset(0);
          default -> false;
        };
    if (named) {
      if (slot == Slot.NAME_THEN_VALUE) {
        slot = Slot.VALUES;
      }
      emit(token.as(NAME));
    }
    return named;
  }

  private boolean mayBeName() {
    return previousIs(OF, ITEM_COMMA, RANGE, EXCEPT, AT, COMMA);
  }

  /** True if the number that far on is the offset of a place and no name. */
  private boolean isOffset(int distance) {
    WallToken next = raw(distance + 1);
    if (next == null) {
      return false;
    }
    return switch (next.getType()) {
      case PLUS, MINUS, STAR, DIVIDE, SLASHED, UNIT_MARK -> true;
      case NAME -> bearing(distance + 1) || UnitWords.isUnit(next.getText());
      default -> false;
    };
  }

  @Override
  void comma(WallToken token) {
    boolean item =
        switch (slot) {
          case LINE_NAMES, NAMES, COUNTED -> true;
          case VALUE_THEN_NAMES, NAME_THEN_VALUE, VALUES, LOADS -> false;
          case PLACES -> previousIs(NAME, STRING) && itemFollows();
        };
    emit(item ? token.as(ITEM_COMMA) : token);
  }

  private boolean itemFollows() {
    WallToken next = raw(1);
    if (next == null) {
      return true;
    }
    return switch (next.getType()) {
      case NAME, STRING -> !isValueName(1) && !(rawWord(1, "floor") && rawWord(2, "below"));
      case NUMBER, DIGIT_WORD, DASHED -> (lineNames || excepting) && !isOffset(1);
      default -> false;
    };
  }

  /** Between names of lines the comma is clear enough to read on. */
  @Override
  void commaInNumber(WallToken token) {
    if (slot == Slot.LINE_NAMES) {
      comma(token);
    } else {
      super.commaInNumber(token);
    }
  }

  private boolean startsLoads() {
    return kind == StatementKind.BRACKET
        && slot != Slot.LOADS
        && (operandBefore() || previousIs(STRING, SPLICES));
  }

  /** Point loads have no word of their own: they begin with a value right after a name. */
  @Override
  void beforeValue(WallToken token) {
    if (startsLoads()) {
      slot = Slot.LOADS;
      emit(token.part(LOADS, token.start(), token.start()));
    }
  }

  @Override
  boolean operandBefore() {
    return previousIs(NUMBER, LENGTH, UNIT, REFERENCE, RPAREN, NAME, COUNT);
  }

  /** For lines inside braces that hold clauses, and for what follows such braces. */
  void typeClauses() {
    slot = Slot.NAMES;
    typeFrom(0);
  }

  /** For a whole line: its first word is the keyword. */
  void typeStatement() {
    emit(line.get(0).as(Keywords.type(kind)));
    typeFrom(1);
  }

  /** What follows is the value of a let. */
  @Override
  void afterAssign() {
    slot = Slot.VALUES;
  }
}
