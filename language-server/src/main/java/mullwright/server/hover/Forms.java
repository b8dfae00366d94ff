package mullwright.server.hover;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;

/** How statements and clauses are written: their words, and in capitals what stands for a value. */
public final class Forms {
  private Forms() {}

  /**
   * A piece of a form.
   *
   * @param clause the clause it is, or null for what stands before the clauses
   * @param text as written, in brackets where it may be left out
   * @param meaning what it tells
   */
  public record Slot(ClauseWord clause, String text, String meaning) {}

  /** The pieces of a statement after its keyword, in the order of the reference. */
  public static List<Slot> of(StatementKind kind) {
    List<Slot> slots = new ArrayList<>();
    String arguments = arguments(kind);
    if (!arguments.isEmpty()) {
      slots.add(new Slot(null, arguments, kind.meaning()));
    }
    Set<ClauseWord> needed = needed(kind);
    for (ClauseWord clause : needed) {
      slots.add(new Slot(clause, of(kind, clause), clause.meaning()));
    }
    for (ClauseWord clause : kind.clauses()) {
      if (!needed.contains(clause)) {
        slots.add(new Slot(clause, "[" + of(kind, clause) + "]", clause.meaning()));
      }
    }
    return slots;
  }

  /** The whole of a statement's form: {@code splice LINES at PLACE gap LENGTH [sleeve SLEEVE]}. */
  public static String line(StatementKind kind) {
    StringBuilder line = new StringBuilder(kind.spelling());
    of(kind).forEach(slot -> line.append(' ').append(slot.text()));
    return line.append(kind.opens().isPresent() ? " { … }" : "").toString();
  }

  /** A clause with what follows it: {@code bolted NUMBER x FASTENER}. */
  public static String of(StatementKind kind, ClauseWord clause) {
    return (clause.spelling() + " " + operand(kind, clause)).strip();
  }

  private static Set<ClauseWord> needed(StatementKind kind) {
    return switch (kind) {
      case LINE, FLOOR, ROW, DEAD_LOAD, WIND_LOAD, CLIP, END_DAM -> EnumSet.of(ClauseWord.AT);
      case LINES_STATEMENT, FLOORS -> EnumSet.of(ClauseWord.SPACED);
      case FACE -> EnumSet.of(ClauseWord.LINES, ClauseWord.SPACED);
      case VERTICAL -> EnumSet.of(ClauseWord.AS);
      case SPLICE -> EnumSet.of(ClauseWord.AT, ClauseWord.GAP);
      case REINFORCE -> EnumSet.of(ClauseWord.WITH);
      case BRACKET -> EnumSet.of(ClauseWord.AT, ClauseWord.LOADS);
      default -> EnumSet.noneOf(ClauseWord.class);
    };
  }

  private static String arguments(StatementKind kind) {
    return switch (kind.form()) {
      case LINE_NAME -> "NAME";
      case LINE_NAMES, FLOOR_NAMES -> "NAMES";
      case DEPTH_OF_FLOORS -> "LENGTH FLOORS";
      case LINE_AND_ANGLE -> "LINE ANGLE";
      case JOINED_LINES, BAYS -> "LINE..LINE";
      case LINES -> "LINES";
      case ROWS -> "ROWS";
      case GLASS -> "GLASS [all]";
      case OWN -> own(kind);
    };
  }

  private static String own(StatementKind kind) {
    return switch (kind) {
      case USE -> "\"PATH\"";
      case LET -> "NAME = VALUE";
      case UNITS -> "inches|feet|millimetres|metres";
      case PROJECT_BLOCK, CATALOG_BLOCK -> "\"NAME\"";
      case WALL_BLOCK, FLOOR, ROW, FACE, CATALOG_PART -> "NAME";
      case OPENING -> "door|void|louvre|vent NAME";
      default -> "";
    };
  }

  private static String operand(StatementKind kind, ClauseWord clause) {
    return switch (clause) {
      case AT -> kind == StatementKind.ROW ? "PLACE [to PLACE] [except LINE..LINE]" : "PLACE";
      case FROM -> "PLACE to PLACE";
      case SPACED -> "[NUMBER @] LENGTH, …";
      case SKIP -> "LETTERS";
      case ONLY, BAYS -> "LINE..LINE";
      case ROWS -> "ROW..ROW";
      case LINES, THROUGH -> "LINES";
      case AS -> "ROLE or PROFILE";
      case WITH -> "REINFORCEMENT";
      case PART ->
          switch (kind) {
            case CLIP -> "CLIP";
            case DEAD_LOAD, WIND_LOAD -> "ANCHOR";
            default -> "PART";
          };
      case SLEEVE -> "SLEEVE";
      case LIKE -> "WALL";
      case ISOLATED_BY, BEDDED_ON -> "ISOLATION";
      case SPREAD_BY -> "SPREAD-PLATE";
      case BOLTED -> "NUMBER x FASTENER";
      case GAP, SLAB, CLEAR -> "LENGTH";
      case EDGE -> isOfSlab(kind) ? "LENGTH behind|before glass" : "";
      case MASS -> "MASS-BY-AREA";
      case OFFSET -> "LENGTH left|right";
      case MARK -> "\"TEXT\"";
      case START -> "left|right";
      case BY_OTHERS, OPERABLE, MIRRORED -> "";
      case LOADS -> "FORCE down|up|in|out [at LENGTH out], …";
    };
  }

  private static boolean isOfSlab(StatementKind kind) {
    return kind == StatementKind.FLOOR
        || kind == StatementKind.FLOORS
        || kind == StatementKind.SLAB_STATEMENT;
  }
}
