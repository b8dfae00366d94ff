package mullwright.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * How the shop cuts.
 *
 * @param kerf lost at each cut
 * @param endTrim taken off each end of a bar
 * @param leastDrop shortest rest worth keeping
 * @param piecesPerBar most pieces cut from one bar; empty for any number
 * @param onHand bars on the rack
 * @param cutTolerance how far a cut may be off either way, if stated; {@code holeTolerance} how far
 *     a hole may be
 * @param perimeterJoint width of the sealed joint round the frame, if stated
 * @param waste bought more for loss, {@code attic} to keep in store
 * @param facts other properties by word, as written
 */
public record Fabrication(
    Given<Length> kerf,
    Given<Length> endTrim,
    Given<Length> leastDrop,
    Optional<Given<Integer>> piecesPerBar,
    List<OnHand> onHand,
    Optional<Given<Length>> cutTolerance,
    Optional<Given<Length>> holeTolerance,
    Optional<Given<Length>> perimeterJoint,
    List<Share> waste,
    List<Share> attic,
    Map<String, Given<String>> facts) {
  /** Most equal bars one line of the rack may tell of, and most pieces a bar may be limited to. */
  public static final int MOST_COUNT = 100_000;

  /**
   * Equal bars on the rack, free of cost.
   *
   * @param count how many
   * @param part name of the profile, plate, cap or reinforcement they are of
   * @param finish the finish they have; empty if they do for any
   * @param origin where the text tells of them; one line is one lot, whichever wall reads it
   */
  public record OnHand(
      int count,
      Given<Length> length,
      Given<String> part,
      Optional<Given<String>> finish,
      Origin origin) {}

  /**
   * A share that is bought more.
   *
   * @param of the sort of thing, {@code glass}, {@code gasket}; "" for all that have none of their
   *     own
   */
  public record Share(String of, Given<Quantity> share) {}

  public Fabrication {
    onHand = List.copyOf(onHand);
    waste = List.copyOf(waste);
    attic = List.copyOf(attic);
    facts = Map.copyOf(facts);
  }

  /** The rules of a shop that states no tolerances, no joint and no shares. */
  public Fabrication(
      Given<Length> kerf,
      Given<Length> endTrim,
      Given<Length> leastDrop,
      Optional<Given<Integer>> piecesPerBar,
      List<OnHand> onHand,
      Map<String, Given<String>> facts) {
    this(
        kerf,
        endTrim,
        leastDrop,
        piecesPerBar,
        onHand,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        facts);
  }
}
