package mullwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.quantity.Length;

/**
 * Every hole of every piece of a wall, and how its ends are cut.
 *
 * <p>Holes of a shear block in the vertical and in the horizontal come from the one pattern of the
 * catalog: in the horizontal so far along from its end, in the vertical on the horizontal's centre
 * line, in both at the same depth. An anchor is centred on its bolt line; a clip's pattern begins
 * at the vertical's end it sits at; a sleeve's at the joint. Plates have their fasteners and, under
 * a lite, its weeps.
 */
public final class HolePlaces {
  private final WallLayout layout;
  private final List<List<DrilledHole>> verticals;
  private final List<List<DrilledHole>> horizontals;
  private List<Weep> weeps;
  private final Map<Integer, List<Weep>> weepsByCover = new HashMap<>();
  private final Slants slants;

  private HolePlaces(WallLayout layout) {
    this.layout = layout;
    this.verticals = VerticalHoles.of(layout);
    this.horizontals = HorizontalHoles.of(layout);
    this.slants = new Slants(layout);
  }

  /** The holes of a layout. */
  public static HolePlaces of(WallLayout layout) {
    return new HolePlaces(layout);
  }

  /** Holes of a vertical by index, from its lower end. */
  public List<DrilledHole> vertical(int index) {
    return verticals.get(index);
  }

  /** Holes of a horizontal by index, from its left end. */
  public List<DrilledHole> horizontal(int index) {
    return horizontals.get(index);
  }

  /** Holes of a plate by index, from its lower or left end; a face cap has none. */
  public List<DrilledHole> cover(int index) {
    List<DrilledHole> holes = new ArrayList<>(PlateHoles.fasteners(layout, index));
    weepsOf(index).forEach(weep -> holes.add(PlateHoles.weep(layout, weep)));
    holes.sort(DrilledHole.ORDER);
    return holes;
  }

  /** The weeps of a plate by index, from its left end. */
  public synchronized List<Weep> weepsOf(int cover) {
    weeps();
    return weepsByCover.getOrDefault(cover, List.of());
  }

  /** The weeps of the wall, lite by lite; found when first asked for. */
  public synchronized List<Weep> weeps() {
    if (weeps == null) {
      weeps = List.copyOf(Weeps.of(layout));
      for (Weep weep : weeps) {
        weepsByCover.computeIfAbsent(weep.cover(), any -> new ArrayList<>(2)).add(weep);
      }
    }
    return weeps;
  }

  /** How the lower end of a vertical is cut. */
  public EndCut bottom(VerticalPiece piece) {
    return new EndCut(slants.of(piece, false), sleeveAt(piece.spliceBelow(), false));
  }

  /** How the upper end of a vertical is cut. */
  public EndCut top(VerticalPiece piece) {
    return new EndCut(slants.of(piece, true), sleeveAt(piece.spliceAbove(), true));
  }

  /** How both ends of a horizontal are cut. */
  public EndCut ends(HorizontalPiece piece) {
    return new EndCut(Slants.of(piece), "");
  }

  /** How both ends of a plate or cap are cut. */
  public EndCut ends(CoverPiece cover) {
    Length slant =
        cover.vertical()
            ? Length.ZERO
            : Slants.slant(
                layout.horizontals().get(cover.carrier()), SystemPart.widthOf(layout, cover));
    return slant.signum() == 0 ? EndCut.SQUARE : new EndCut(slant, "");
  }

  private String sleeveAt(int splice, boolean lowerLength) {
    if (splice < 0) {
      return "";
    }
    return SystemPart.sleeve(layout, layout.splices().get(splice))
        .filter(sleeve -> sleeve.fixedEnd().value().equals("lower") == lowerLength)
        .map(sleeve -> sleeve.name())
        .orElse("");
  }
}
