package mullwright.drawing.detail;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.layout.Cell;
import mullwright.layout.Glazed;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.SettingBlockPlaces;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Role;
import mullwright.quantity.Length;

/** Finds the joints of a wall that differ: one for each profile with what stands beside it. */
final class Joints {
  /** Unless the text states another (common practice). */
  private static final Length PERIMETER = Length.ofInches(1, 2);

  private final WallLayout layout;

  /** How many glasses or openings beside a member are named. */
  private static final int NAMED = 4;

  private final Map<Object, Joint> found = new LinkedHashMap<>();
  private final Map<Object, Set<String>> places = new LinkedHashMap<>();
  private final Map<Object, Set<String>> lessNames = new LinkedHashMap<>();
  private final Map<Object, Set<String>> moreNames = new LinkedHashMap<>();

  private Joints(WallLayout layout) {
    this.layout = layout;
  }

  /** The joints: horizontals by first row, then verticals by first line; corners left out. */
  static List<Joint> of(WallLayout layout) {
    Joints joints = new Joints(layout);
    layout.horizontals().forEach(joints::horizontal);
    layout.verticals().stream()
        .filter(piece -> piece.profile().role().value() != Role.CORNER)
        .forEach(joints::vertical);
    List<Joint> all = new ArrayList<>();
    joints.found.forEach(
        (key, joint) ->
            all.add(
                joint.with(
                    names(joints.lessNames.get(key)),
                    names(joints.moreNames.get(key)),
                    List.copyOf(joints.places.get(key)))));
    return all;
  }

  private void horizontal(HorizontalPiece piece) {
    Optional<Cell> below =
        layout.cells().stream()
            .filter(cell -> cell.above() == piece.row() && beside(cell, piece))
            .findFirst();
    Optional<Cell> above =
        layout.cells().stream()
            .filter(cell -> cell.below() == piece.row() && beside(cell, piece))
            .findFirst();
    Part.Profile profile = piece.profile();
    Joint.Side less =
        below
            .map(
                cell -> side(cell, profile, cell.biteTop(), profile.clearanceLeft().value(), false))
            .orElseGet(() -> nothing(profile));
    Joint.Side more =
        above
            .map(
                cell ->
                    side(cell, profile, cell.biteBottom(), profile.clearanceRight().value(), true))
            .orElseGet(() -> nothing(profile));
    add(true, title(profile), profile, less, more, piece.name());
  }

  private static boolean beside(Cell cell, HorizontalPiece piece) {
    return cell.firstBay() <= piece.lastBay() && piece.firstBay() <= cell.lastBay();
  }

  private void vertical(VerticalPiece piece) {
    List<Grid.Bay> bays = layout.wall().grid().bays();
    List<Cell> left = new ArrayList<>();
    List<Cell> right = new ArrayList<>();
    for (Cell cell : layout.cells()) {
      if (cell.bottom().isShorterThan(piece.top()) && piece.bottom().isShorterThan(cell.top())) {
        if (bays.get(cell.lastBay()).right() == piece.line()) {
          left.add(cell);
        } else if (bays.get(cell.firstBay()).left() == piece.line()) {
          right.add(cell);
        }
      }
    }
    Part.Profile profile = piece.profile();
    for (Cell one : left) {
      Joint.Side less = side(one, profile, one.biteRight(), profile.clearanceLeft().value(), false);
      if (right.isEmpty()) {
        add(false, title(profile), profile, less, nothing(profile), piece.name());
      }
      for (Cell other : right) {
        if (one.bottom().isShorterThan(other.top()) && other.bottom().isShorterThan(one.top())) {
          add(false, title(profile), profile, less, right(other, profile), piece.name());
        }
      }
    }
    if (left.isEmpty()) {
      for (Cell other : right) {
        add(false, title(profile), profile, nothing(profile), right(other, profile), piece.name());
      }
    }
  }

  private static Joint.Side right(Cell cell, Part.Profile profile) {
    return side(cell, profile, cell.biteLeft(), profile.clearanceRight().value(), false);
  }

  private static Joint.Side side(
      Cell cell, Part.Profile profile, Length bite, Length clearance, boolean stands) {
    Length sight = profile.sightline().value().half();
    if (Glazed.lite(cell)) {
      return new Joint.Side(
          Joint.Side.Kind.GLASS,
          cell.use().orElseThrow().glass().value(),
          cell.glass().map(Part.Glass::layers).orElse(List.of()),
          sight,
          bite,
          clearance,
          stands ? SettingBlockPlaces.of(cell).map(SettingBlockPlaces::length) : Optional.empty());
    }
    return cell.opening()
        .map(
            opening ->
                new Joint.Side(
                    Joint.Side.Kind.OPENING,
                    opening.name(),
                    List.of(),
                    sight,
                    Length.ZERO,
                    Length.ZERO,
                    Optional.empty()))
        .orElseGet(() -> nothing(profile));
  }

  private static Joint.Side nothing(Part.Profile profile) {
    return new Joint.Side(
        Joint.Side.Kind.NOTHING,
        "",
        List.of(),
        profile.sightline().value().half(),
        Length.ZERO,
        Length.ZERO,
        Optional.empty());
  }

  private static String title(Part.Profile profile) {
    return switch (profile.role().value()) {
      case SILL -> "Sill";
      case HEAD -> "Head";
      case JAMB -> "Jamb";
      case MULLION -> "Mullion";
      case CORNER -> "Corner";
      default -> "Intermediate";
    };
  }

  // glass of other plies of the same thickness makes no other detail, nor another opening
  private void add(
      boolean upright,
      String title,
      Part.Profile profile,
      Joint.Side less,
      Joint.Side more,
      String place) {
    Object key = List.of(upright, profile.name(), shape(less), shape(more));
    places.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(place);
    lessNames.computeIfAbsent(key, any -> new TreeSet<>()).add(less.name());
    moreNames.computeIfAbsent(key, any -> new TreeSet<>()).add(more.name());
    found.computeIfAbsent(
        key,
        any ->
            new Joint(
                upright,
                title,
                profile,
                SystemPart.backOf(layout, profile),
                less,
                more,
                SystemPart.of(layout, PartKind.PRESSURE_PLATE, Part.PressurePlate.class)
                    .map(plate -> plate.width().value()),
                SystemPart.of(layout, PartKind.FACE_CAP, Part.FaceCap.class)
                    .map(cap -> cap.face().value()),
                SystemPart.of(layout, PartKind.PRESSURE_PLATE, Part.PressurePlate.class)
                    .flatMap(Part.PressurePlate::fastener)
                    .flatMap(
                        name ->
                            SystemPart.find(layout, PartKind.FASTENER, Part.Fastener.class, name)),
                layout
                    .wall()
                    .fabrication()
                    .perimeterJoint()
                    .map(given -> given.value())
                    .orElse(PERIMETER),
                layout.wall().fabrication().perimeterJoint().isPresent(),
                List.of()));
  }

  /** All names, or of many the first and how many more. */
  private static String names(Set<String> names) {
    return names.size() <= NAMED
        ? String.join(", ", names)
        : names.iterator().next() + " and " + (names.size() - 1) + " more";
  }

  private static Object shape(Joint.Side side) {
    return List.of(
        side.kind(),
        side.layers().stream().map(Part.Layer::thickness).toList(),
        side.bite(),
        side.clearance());
  }
}
