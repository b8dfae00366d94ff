package mullwright.check;

/** A rule about the text: names, units, patterns, spelling. */
public interface TextRule extends Rule {
  /** Looks at the text and tells what it found. */
  void check(TextFacts facts, Findings found);
}
