package mullwright.workspace;

import java.util.List;
import java.util.Optional;
import mullwright.review.FindingPairs;
import mullwright.review.WallReview;

/**
 * What changed in one file between two states.
 *
 * @param old path in the older state, empty if the file is new
 * @param now path in the newer state, empty if the file is gone
 * @param renamed true if it is called otherwise than before
 * @param textDiffers true if the text of the file itself differs, false if only a file it uses does
 * @param errors errors in the newer text, outside all walls or about names and numbers
 * @param walls those that differ, in the order of the newer text, then those that are gone
 * @param text findings that came and went outside all walls
 */
public record FileReview(
    Optional<String> old,
    Optional<String> now,
    boolean renamed,
    boolean textDiffers,
    int errors,
    List<WallReview> walls,
    FindingPairs text) {
  public FileReview {
    walls = List.copyOf(walls);
  }

  /** True if nothing at all differs. */
  public boolean nothing() {
    return empty() && !textDiffers && !renamed;
  }

  /** True if neither a wall nor a finding differs. */
  public boolean empty() {
    return walls.isEmpty() && text.tripped().isEmpty() && text.mended().isEmpty();
  }
}
