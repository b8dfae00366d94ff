package mullwright.review;

import java.util.List;
import mullwright.check.Finding;

/**
 * A finding that came or went.
 *
 * @param finding of the wall it stands in
 * @param causes the changes that explain it, by index in the wall's list; empty for a finding about
 *     the text itself
 */
public record FindingChange(Finding finding, List<Integer> causes) {
  public FindingChange {
    causes = List.copyOf(causes);
  }
}
