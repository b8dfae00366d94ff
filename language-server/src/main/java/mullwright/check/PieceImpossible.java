package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.derivation.Derivation;
import mullwright.layout.Impossible;

/**
 * A piece the text asks for that cannot be: nothing is left of it, or nothing is there to hold it.
 *
 * <p>It is in no list, no drawing and no count until it is mended. Geometry.
 */
@AutoService(Rule.class)
public final class PieceImpossible implements WallRule {
  @Override
  public About about() {
    return About.of(Group.FABRICATION, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    for (Impossible piece : facts.impossible()) {
      found.near(piece.leftLine(), piece.rightLine());
      Findings.Draft draft =
          found.at(piece.origin()).piece(piece.name()).what(what(piece, say)).mend(mend(piece));
      piece
          .length()
          .ifPresent(
              length ->
                  draft.measured(
                      Derivation.computed(
                          "length left", length, "end to end", "conventions of measure")));
    }
  }

  private static String what(Impossible piece, Measures say) {
    return switch (piece.reason()) {
      case NO_LENGTH ->
          "Nothing is left of it between its neighbours"
              + piece.length().map(length -> ": it comes to " + say.length(length)).orElse("")
              + ".";
      case NO_VERTICAL -> "No vertical stands at one of its ends.";
      case NO_HORIZONTAL -> "It ends where no horizontal is, with frame beyond.";
      case SPLICE_OUTSIDE ->
          "No vertical passes there, or too near an end or another splice to leave a length.";
      case TWO_PROFILES ->
          "It runs through as one piece, and the text gives it two profiles in its bays.";
      case NO_SLAB_DEPTH ->
          "Its part is measured from the underside of the slab, and the slab's depth is not stated.";
    };
  }

  private static String mend(Impossible piece) {
    return switch (piece.reason()) {
      case NO_LENGTH -> "Move its neighbours apart, or take it out.";
      case NO_VERTICAL -> "Say what stands there: vertical NAME as PROFILE.";
      case NO_HORIZONTAL -> "Put a row there, or move the opening's edge to one.";
      case SPLICE_OUTSIDE -> "Move the splice, or leave this line out.";
      case TWO_PROFILES -> "Give it one profile through all its bays: bays FIRST..LAST.";
      case NO_SLAB_DEPTH -> "State it: slab DEPTH at the floor.";
    };
  }
}
