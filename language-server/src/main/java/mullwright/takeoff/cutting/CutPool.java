package mullwright.takeoff.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/**
 * Pieces that may share bars: one part of one catalog, one finish, one saw (common practice: same
 * die, finish and alloy).
 *
 * @param part what they are cut from
 * @param finish as the walls state it, empty where none is stated or none shows
 * @param pieces in the order of the walls and of their layouts
 */
public record CutPool(Part part, String finish, Saw saw, List<CutPiece> pieces) {
  public CutPool {
    pieces = List.copyOf(pieces);
  }

  /** Lengths the catalog says the part is bought in. */
  public List<Part.Stock> stock() {
    if (part instanceof Part.Profile profile) {
      return profile.stock();
    }
    if (part instanceof Part.PressurePlate plate) {
      return plate.stock();
    }
    if (part instanceof Part.FaceCap cap) {
      return cap.stock();
    }
    return part instanceof Part.Reinforcement bar ? bar.stock() : List.of();
  }

  /** Alloy and temper, or the metal where the catalog tells no alloy. */
  public String alloy() {
    if (part instanceof Part.Profile profile) {
      return profile.alloy().map(Given::value).orElse(profile.metal().value());
    }
    return part instanceof Part.Reinforcement bar ? bar.metal().value() : "";
  }

  /** {@code profile mullion-6}, {@code pressure-plate plate-6}. */
  public String name() {
    return part.kind().spelling() + " " + part.name();
  }

  /** Total length of the pieces. */
  public Length total() {
    return pieces.stream().map(CutPiece::length).reduce(Length.ZERO, Length::plus);
  }

  /** The longest piece that comes off the longest stock length; empty if there is no stock. */
  public Optional<Length> reach() {
    return stock().stream()
        .map(stock -> stock.length().value())
        .max(Comparator.naturalOrder())
        .map(longest -> longest.minus(saw.endTrim().times(2)));
  }

  /** True for a bar inside a vertical, which takes no finish. */
  boolean hidden() {
    return part.kind() == PartKind.REINFORCEMENT;
  }
}
