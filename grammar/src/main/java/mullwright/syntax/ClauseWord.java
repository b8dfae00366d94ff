package mullwright.syntax;

import java.util.Locale;

/** The closed set of words that open a clause, with the form of what follows each. */
public enum ClauseWord {
  AT(Form.AT, "where it sits"),
  FROM(Form.EXTENT, "from a place to a place"),
  SPACED(Form.SPACED, "distances between neighbours, in order"),
  SKIP(Form.SELECTION, "letters left out of a range of names"),
  ONLY(Form.SELECTION, "the bays it runs through"),
  BAYS(Form.SELECTION, "the bays between the named lines"),
  ROWS(Form.SELECTION, "the spaces between the named rows"),
  LINES(Form.SELECTION, "the grid lines of the face"),
  AS(Form.NAME, "the profile or role it is made of"),
  WITH(Form.NAME, "the part it is made with"),
  PART(Form.NAME, "the catalog part"),
  SLEEVE(Form.NAME, "the splice sleeve"),
  LIKE(Form.NAME, "the wall it repeats"),
  ISOLATED_BY(Form.NAME, "what parts the metals at the member's face"),
  BEDDED_ON(Form.NAME, "what parts the metals at the slab"),
  SPREAD_BY(Form.NAME, "the plates that spread a one-sided bolt's load"),
  BOLTED(Form.COUNTED, "how many of which fastener"),
  GAP(Form.VALUE, "the open joint of a splice"),
  SLAB(Form.VALUE, "the slab's depth"),
  EDGE(Form.VALUE_OR_FLAG, "the slab edge in plan; alone: the place is the member's outer edge"),
  CLEAR(Form.VALUE, "clearance round what others fill in"),
  MASS(Form.VALUE, "mass by area of what fills it"),
  OFFSET(Form.VALUE, "how far aside, and which way"),
  THROUGH(Form.SELECTION, "the lines a horizontal runs through"),
  MARK(Form.TEXT, "the mark to print"),
  START(Form.NAME, "the side the work starts from"),
  BY_OTHERS(Form.FLAG, "supplied and set by another trade"),
  OPERABLE(Form.FLAG, "a leaf that opens"),
  MIRRORED(Form.FLAG, "left and right exchanged"),
  LOADS(Form.LOADS, "the forces a bracket brings");

  /** What follows a clause word. */
  public enum Form {
    AT,
    EXTENT,
    SPACED,
    SELECTION,
    NAME,
    COUNTED,
    VALUE,
    VALUE_OR_FLAG,
    TEXT,
    FLAG,
    LOADS
  }

  private final Form form;
  private final String meaning;

  ClauseWord(Form form, String meaning) {
    this.form = form;
    this.meaning = meaning;
  }

  /** The form of what follows. */
  public Form form() {
    return form;
  }

  /** What the clause tells, for hovers and completion. */
  public String meaning() {
    return meaning;
  }

  /** As it is written: {@code isolated by}. {@link #LOADS} has no word of its own. */
  public String spelling() {
    return this == LOADS ? "" : name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
