package mullwright.server.completion;

import java.util.List;
import java.util.stream.Collectors;

/** Writes a text with tab stops as the protocol's snippet syntax wants it. */
final class Stops {
  /** So many are offered in one stop; more is no choice but a list. */
  private static final int MOST = 24;

  private final StringBuilder snippet = new StringBuilder();
  private int stops;

  /** Adds text as it is. */
  Stops text(String text) {
    snippet.append(text.replace("\\", "\\\\").replace("$", "\\$").replace("}", "\\}"));
    return this;
  }

  /** Adds a stop with that text in it. */
  Stops stop(String inIt) {
    snippet.append("${").append(++stops).append(':');
    text(inIt);
    snippet.append('}');
    return this;
  }

  /** Adds a stop that offers those; with none, a stop with the other text in it. */
  Stops choice(List<String> choices, String otherwise) {
    if (choices.isEmpty()) {
      return stop(otherwise);
    }
    if (choices.size() == 1) {
      return stop(choices.get(0));
    }
    snippet.append("${").append(++stops).append('|');
    snippet.append(
        choices.stream()
            .limit(MOST)
            .map(it -> it.replace("\\", "\\\\").replace(",", "\\,").replace("|", "\\|"))
            .collect(Collectors.joining(",")));
    snippet.append("|}");
    return this;
  }

  /** How many stops there are already. */
  int count() {
    return stops;
  }

  /** Adds where the cursor ends up. */
  Stops end() {
    snippet.append("$0");
    return this;
  }

  @Override
  public String toString() {
    return snippet.toString();
  }
}
