package mullwright.takeoff;

import java.util.List;
import java.util.Optional;
import mullwright.layout.EndCut;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * What the shop is told of all pieces of one mark.
 *
 * @param kind what they are
 * @param pieces as the shop names them, in the order of the layout
 * @param profile name of the profile, plate, cap or bar they are cut from
 * @param first how the lower or left end is cut, {@code last} how the other
 * @param holes from the first end, equal places of both sides together
 * @param notch at both ends, if there is one
 */
public record Ticket(
    Kind kind,
    String mark,
    List<String> pieces,
    String profile,
    Length length,
    EndCut first,
    EndCut last,
    List<TicketHole> holes,
    Optional<Part.Notch> notch) {
  /** The kinds of piece a ticket may be of, in the order they are told. */
  public enum Kind {
    VERTICAL("vertical", "V"),
    HORIZONTAL("horizontal", "H"),
    REINFORCEMENT("reinforcement", "R"),
    PRESSURE_PLATE("pressure plate", "P"),
    FACE_CAP("face cap", "C");

    private final String words;
    private final String letter;

    Kind(String words, String letter) {
      this.words = words;
      this.letter = letter;
    }

    /** As the shop says it. */
    public String words() {
      return words;
    }

    /** What its marks begin with. */
    public String letter() {
      return letter;
    }
  }

  public Ticket {
    pieces = List.copyOf(pieces);
    holes = List.copyOf(holes);
  }

  /** How many holes one piece has. */
  public int holeCount() {
    return holes.stream().mapToInt(TicketHole::count).sum();
  }
}
