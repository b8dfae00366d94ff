package mullwright.layout;

import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Length;

/** Says what a vertical takes from the line spacing, in the words of a formula. */
final class EndTrace {
  private final Frame frame;

  EndTrace(Frame frame) {
    this.frame = frame;
  }

  /** Half the metal of the vertical at one end of a horizontal; adds the numbers to the inputs. */
  String metal(HorizontalPiece piece, Side of, List<Derivation> inputs) {
    Part.Profile profile = vertical(piece, of);
    return width(of, profile, corner(piece, of), "face", profile.face(), inputs);
  }

  /** Half the plate or cap of the vertical at one end, or the corner's leg; adds a leg only. */
  String cover(HorizontalPiece piece, Side of, String words, List<Derivation> inputs) {
    Part.Profile profile = vertical(piece, of);
    return corner(piece, of) && leg(of, profile) != null
        ? leg(of, profile, inputs)
        : " − ½ " + words;
  }

  /** True if a leg stands in place of the half width at that end. */
  boolean hasLeg(HorizontalPiece piece, Side of) {
    return corner(piece, of) && leg(of, vertical(piece, of)) != null;
  }

  /** Half a width of the vertical whose right or left side is meant, or the corner's leg. */
  static String width(
      Side of,
      Part.Profile profile,
      boolean corner,
      String words,
      Given<Length> width,
      List<Derivation> inputs) {
    if (corner && leg(of, profile) != null) {
      return leg(of, profile, inputs);
    }
    Derivation number = Trace.given(end(of) + words, width);
    inputs.add(number);
    return " − ½ " + number.name();
  }

  private static String leg(Side of, Part.Profile profile, List<Derivation> inputs) {
    Derivation leg = Trace.given(end(of) + "leg", leg(of, profile));
    inputs.add(leg);
    return " − " + leg.name();
  }

  private static Given<Length> leg(Side of, Part.Profile profile) {
    return (of == Side.LEFT ? profile.legLeft() : profile.legRight()).orElse(null);
  }

  // the right side of a line is the left end of the bay
  private static String end(Side of) {
    return of == Side.RIGHT ? "left " : "right ";
  }

  private boolean corner(HorizontalPiece piece, Side of) {
    return frame.lines.corner(line(piece, of));
  }

  private static int line(HorizontalPiece piece, Side of) {
    return of == Side.RIGHT ? piece.leftLine() : piece.rightLine();
  }

  private Part.Profile vertical(HorizontalPiece piece, Side of) {
    int line = line(piece, of);
    Bar bar = frame.bars.in(of == Side.RIGHT ? piece.firstBay() : piece.lastBay(), piece.row());
    return frame
        .runs
        .at(line, bar.yAt(frame.lines.x(line)))
        .flatMap(run -> run.widths().profile())
        .orElseThrow();
  }
}
