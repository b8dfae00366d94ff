package mullwright.model;

import java.util.List;
import java.util.Optional;

/**
 * Something the text says that cannot be, as raw facts; the rule of the same group in {@code check}
 * puts it into words.
 */
public sealed interface ModelProblem {
  /** Where the finding is shown. */
  Origin origin();

  /** A name nothing has; nearest known names first, and all the names that would fit. */
  record UnknownName(String what, String name, List<String> candidates, Origin origin)
      implements ModelProblem {}

  /**
   * Names that show what was left out between or before them: {@code vision V1 rail..top} for
   * {@code rows rail..top}, {@code L1..L12Roof} for {@code L1..L12, Roof}.
   *
   * @param found the names as they stand
   * @param lacks the clause word that is missing or runs into a name, or a comma
   * @param meant the text as it should stand
   */
  record Garbled(String found, String lacks, String meant, Origin origin) implements ModelProblem {}

  /** A name given twice. */
  record Duplicate(String what, String name, Origin first, Origin origin) implements ModelProblem {}

  /** Two statements of equal or crossing reach that disagree; shown at both. */
  record Conflict(
      String what,
      String where,
      String clause,
      String one,
      String other,
      Origin first,
      Origin origin)
      implements ModelProblem {
    /** In place of a clause: they put different things there. */
    public static final String KIND = "kind";
  }

  /** Spacings or positions that do not fit the names. */
  record CountMismatch(String what, long names, long given, String hint, Origin origin)
      implements ModelProblem {}

  /** A quantity of the wrong kind. */
  record WrongUnit(String what, String expected, String found, Origin origin)
      implements ModelProblem {}

  /**
   * A bare number where no {@code units} says what it is, or a needed unit is missing.
   *
   * @param expected the kind of quantity, in words
   */
  record UnitMissing(String what, String expected, String number, Origin origin)
      implements ModelProblem {}

  /** A value that cannot be computed: division by zero, inexact division, out of range. */
  record BadValue(Reason reason, String text, Optional<String> offer, Origin origin)
      implements ModelProblem {
    /** Why. */
    public enum Reason {
      DIVISION_BY_ZERO,
      DIVISION_NOT_EXACT,
      OUT_OF_RANGE,
      NOT_A_WHOLE_NUMBER,
      NOT_READABLE,
      CIRCULAR
    }
  }

  /** A {@code use} that cannot be followed. */
  record BadUse(Reason reason, String path, List<String> chain, Origin origin)
      implements ModelProblem {
    /** Why. */
    public enum Reason {
      NOT_FOUND,
      /** The text is not saved yet: paths start nowhere. */
      NO_PLACE,
      CIRCLE,
      ABSOLUTE,
      ABOVE_ROOT,
      NOT_TEXT
    }
  }

  /** One name from two catalogs. */
  record NameFromTwo(String what, String name, String fileOne, String fileTwo, Origin origin)
      implements ModelProblem {}

  /** Something a statement needs is not there. */
  record Missing(String what, String where, Optional<String> offer, Origin origin)
      implements ModelProblem {}

  /** Something stands where it may not. */
  record OutOfPlace(String what, String why, Origin origin) implements ModelProblem {}

  /** Floors, rows or lines not in ascending order. */
  record OutOfOrder(String what, String name, String previous, Origin previousOrigin, Origin origin)
      implements ModelProblem {}

  /** A statement of the lites whose rows reach into an opening and do not fill it. */
  record PartFilled(String statement, String opening, Origin origin) implements ModelProblem {}

  /** A wider statement that narrower ones override everywhere. */
  record Shadowed(String what, List<Origin> by, Origin origin) implements ModelProblem {}

  /** A part's property the kind does not know, or a phrase that does not fit its pattern. */
  record BadProperty(
      String kind, String property, String pattern, List<String> known, Origin origin)
      implements ModelProblem {}

  /**
   * A comma at the end of a property's line, so that the property of the next line is read as more
   * of it.
   *
   * @param next the property that the next line begins with
   * @param origin of the comma
   */
  record CommaAtEnd(String property, String next, Origin origin) implements ModelProblem {}

  /** A named limit was passed. */
  record TooMany(String limit, long allowed, long asked, Origin origin) implements ModelProblem {}
}
