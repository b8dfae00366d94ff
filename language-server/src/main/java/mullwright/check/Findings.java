package mullwright.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.model.Origin;

/**
 * Collects what one rule finds. A finding is told in four steps that cannot be left out:
 *
 * <pre>{@code
 * found.at(origin).piece("vertical C, upper length").what("…").mend("…").measured(moved);
 * }</pre>
 */
public final class Findings {
  private final Rule rule;
  private final List<Draft> drafts = new ArrayList<>();
  private final BitSet lines = new BitSet();
  private boolean anywhere;
  private int first = -1;
  private int last = -1;

  Findings(Rule rule) {
    this.rule = rule;
  }

  /**
   * From here on, until the next call, what is told hangs on what stands between these lines and
   * beside them only. What is told before the first call may hang on the whole wall.
   */
  void near(int firstLine, int lastLine) {
    first = firstLine;
    last = lastLine;
  }

  /** Takes note that only the whole wall can tell. */
  void onlyOfWhole() {
    anywhere = true;
  }

  /** Where something was told of. */
  FoundOn foundOn() {
    return new FoundOn(anywhere, lines);
  }

  /** Begins a finding at that place in the text. */
  public At at(Origin origin) {
    return piece -> what -> mend -> draft(origin, piece, what, mend);
  }

  /** All that was told, in the order told. */
  List<Finding> all() {
    return drafts.stream().map(Draft::finish).toList();
  }

  private Draft draft(Origin origin, String piece, String what, String mend) {
    Draft draft = new Draft(rule.name(), rule.about().severity(), origin, piece, what, mend);
    drafts.add(draft);
    if (first < 0) {
      anywhere = true;
    } else {
      lines.set(first, last + 1);
    }
    return draft;
  }

  /** A finding that has its place. */
  public interface At {
    /** Names the piece as the shop names it. */
    What piece(String name);

    /** For a finding about the text itself. */
    default What text() {
      return piece("");
    }
  }

  /** A finding that has its piece. */
  public interface What {
    /** What is wrong, a sentence with the number that tripped it and its limit. */
    Mend what(String sentence);
  }

  /** A finding that says what is wrong. */
  public interface Mend {
    /** How to mend it, a sentence. */
    Draft mend(String sentence);
  }

  /** A finding that is complete and may say more. */
  public static final class Draft {
    private final String rule;
    private Severity severity;
    private final Origin origin;
    private final String piece;
    private final String what;
    private final String mend;
    private Optional<Derivation> measured = Optional.empty();
    private Optional<Derivation> limit = Optional.empty();
    private final List<Finding.Related> related = new ArrayList<>();
    private final List<Fix> fixes = new ArrayList<>();

    private Draft(
        String rule, Severity severity, Origin origin, String piece, String what, String mend) {
      this.rule = rule;
      this.severity = severity;
      this.origin = origin;
      this.piece = piece;
      this.what = what;
      this.mend = mend;
    }

    /** The number that tripped it. */
    public Draft measured(Derivation number) {
      measured = Optional.of(number);
      return this;
    }

    /** The limit it is held against. */
    public Draft limit(Derivation number) {
      limit = Optional.of(number);
      return this;
    }

    /** Another place that has a part in it, with a word on which. */
    public Draft related(Origin place, String word) {
      related.add(new Finding.Related(place, word));
      return this;
    }

    /** An edit that mends it; the first told is the best. */
    public Draft fix(Fix fix) {
      fixes.add(fix);
      return this;
    }

    /** Another severity than the rule's usual one. */
    public Draft severity(Severity other) {
      severity = other;
      return this;
    }

    private Finding finish() {
      return new Finding(
          rule, severity, origin, piece, what, mend, measured, limit, related, fixes);
    }
  }
}
