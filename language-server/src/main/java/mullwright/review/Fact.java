package mullwright.review;

/**
 * One thing the text says of a subject: {@code line C} its {@code at}.
 *
 * @param property as the text words it; "" for that the subject is there at all
 */
public record Fact(Subject subject, String property) implements Comparable<Fact> {
  /** The property that says a subject is there. */
  static final String THERE = "";

  @Override
  public int compareTo(Fact other) {
    int bySubject = subject.compareTo(other.subject);
    return bySubject != 0 ? bySubject : property.compareTo(other.property);
  }

  @Override
  public String toString() {
    return property.isEmpty() ? subject.toString() : subject + " " + property;
  }
}
