package mullwright.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Catalog;
import mullwright.model.Given;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Role;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.syntax.TextRange;

/** Builds a small catalog by hand, one part a call; all data invented. */
final class TestParts {
  private final Map<PartKind, Map<String, Part>> parts = new LinkedHashMap<>();
  private int next = 100_000;

  static Length in(long inches) {
    return Length.ofInches(inches);
  }

  static Length in(long numerator, long denominator) {
    return Length.ofInches(numerator, denominator);
  }

  static Length ft(long feet, long inches) {
    return Length.ofInches(12 * feet + inches);
  }

  static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  static Length mm(long numerator, long denominator) {
    return Length.ofMillimetres(numerator, denominator);
  }

  /** A profile of which only what layout needs is stated. */
  static final class ProfileSheet {
    private final Role role;
    private final Length face;
    private Length sightline;
    private Length biteLeft = in(1, 2);
    private Length biteRight = in(1, 2);
    private Length allowance = in(1, 32);
    private boolean allowanceStated;
    private Quantity massPerLength;
    private Length legLeft;
    private Length legRight;

    ProfileSheet(Role role, Length face) {
      this.role = role;
      this.face = face;
      this.sightline = face;
    }

    ProfileSheet sightline(Length width) {
      sightline = width;
      return this;
    }

    ProfileSheet bite(Length leftOrBelow, Length rightOrAbove) {
      biteLeft = leftOrBelow;
      biteRight = rightOrAbove;
      return this;
    }

    ProfileSheet endAllowance(Length length) {
      allowance = length;
      allowanceStated = true;
      return this;
    }

    ProfileSheet massPerLength(Quantity mass) {
      massPerLength = mass;
      return this;
    }

    ProfileSheet legs(Length left, Length right) {
      legLeft = left;
      legRight = right;
      return this;
    }
  }

  static ProfileSheet profile(Role role, Length face) {
    return new ProfileSheet(role, face);
  }

  private Origin origin() {
    next += 2;
    return new Origin("parts.wall", 0, new TextRange(next, next + 1));
  }

  private <T> Given<T> given(T value) {
    return Given.stated(value, origin());
  }

  private <T> Given<T> assumed(T value) {
    return Given.assumed(value, origin(), "common practice");
  }

  private TestParts put(Part part) {
    parts.computeIfAbsent(part.kind(), kind -> new LinkedHashMap<>()).put(part.name(), part);
    return this;
  }

  TestParts with(String name, ProfileSheet sheet) {
    return put(
        new Part.Profile(
            name,
            origin(),
            given(sheet.role),
            given(sheet.face),
            given(sheet.sightline),
            given(in(6)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.ofNullable(sheet.massPerLength).map(this::given),
            assumed("aluminium"),
            Optional.empty(),
            List.of(),
            given(sheet.biteLeft),
            given(sheet.biteRight),
            assumed(in(1, 4)),
            assumed(in(1, 4)),
            assumed(in(1, 4)),
            sheet.allowanceStated ? given(sheet.allowance) : assumed(sheet.allowance),
            Optional.ofNullable(sheet.legLeft).map(this::given),
            Optional.ofNullable(sheet.legRight).map(this::given),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty()));
  }

  TestParts plate(String name, Length width, Length... stock) {
    return plateWithGap(name, width, in(1, 8), stock);
  }

  TestParts plateWithGap(String name, Length width, Length gap, Length... stock) {
    return put(
        new Part.PressurePlate(
            name,
            origin(),
            given(width),
            assumed(gap),
            assumed(in(9)),
            assumed(in(2)),
            List.of(stock).stream().map(this::given).map(Part.Stock::of).toList(),
            Optional.empty()));
  }

  TestParts cap(String name, Length face, Length... stock) {
    return capWithGap(name, face, in(1, 32), stock);
  }

  TestParts capWithGap(String name, Length face, Length gap, Length... stock) {
    return put(
        new Part.FaceCap(
            name,
            origin(),
            given(face),
            assumed(gap),
            List.of(stock).stream().map(this::given).map(Part.Stock::of).toList()));
  }

  TestParts anchor(String name, Length distance, boolean below, boolean fromTop) {
    return put(
        new Part.Anchor(
            name,
            origin(),
            Optional.empty(),
            assumed("steel"),
            given(new Part.BoltLine(distance, below, fromTop)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Map.of()));
  }

  /** A shear block with two holes so far from the horizontal's end, at those depths. */
  TestParts block(String name, Length diameter, Length along, Length... depths) {
    List<Part.Hole> holes = new ArrayList<>();
    for (Length depth : depths) {
      holes.add(new Part.Hole(diameter, along, depth, Optional.empty(), origin()));
    }
    return put(
        new Part.ShearBlock(
            name, origin(), assumed("aluminium"), given(in(2)), holes, Optional.empty()));
  }

  /** Layers as pairs of a word ({@code ply}, {@code space}, {@code interlayer}) and millimetres. */
  TestParts glass(String name, Optional<Length> bite, Object... layers) {
    List<Part.Layer> made = new ArrayList<>();
    for (int i = 0; i < layers.length; i += 2) {
      made.add(new Part.Layer((String) layers[i], (Length) layers[i + 1], List.of(), origin()));
    }
    return put(
        new Part.Glass(
            name,
            origin(),
            made,
            assumed(false),
            assumed(false),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            bite.map(this::given),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  /** The system, with the first plate and the first cap put in so far. */
  Part.WallSystem system(String name) {
    Map<PartKind, Given<String>> chosen = new EnumMap<>(PartKind.class);
    for (PartKind kind :
        List.of(PartKind.PRESSURE_PLATE, PartKind.FACE_CAP, PartKind.SHEAR_BLOCK)) {
      parts.getOrDefault(kind, Map.of()).keySet().stream()
          .findFirst()
          .ifPresent(part -> chosen.put(kind, given(part)));
    }
    return new Part.WallSystem(
        name, origin(), Map.of(), chosen, Optional.empty(), Optional.empty(), assumed(in(6)));
  }

  Catalog catalog() {
    return new Catalog(parts);
  }

  /**
   * Parts in inches: mullion and intermediate 2 1/2", jamb 2 1/4", sill 2", head 3" of face, bite
   * 1/2" all round, plate 2 1/2", cap 2 1/2", stock 24' of both.
   */
  static TestParts inches() {
    return new TestParts()
        .with("mullion", profile(Role.MULLION, in(5, 2)))
        .with("jamb", profile(Role.JAMB, in(9, 4)))
        .with("corner", profile(Role.CORNER, in(5)).legs(in(3), in(7, 2)))
        .with("sill", profile(Role.SILL, in(2)))
        .with("head", profile(Role.HEAD, in(3)))
        .with("intermediate", profile(Role.INTERMEDIATE, in(5, 2)))
        .plate("plate", in(5, 2), ft(24, 0))
        .cap("cap", in(5, 2), ft(24, 0))
        .anchor("angle", in(8), true, true)
        .glass("V1", Optional.empty(), "ply", mm(6), "space", in(1, 2), "ply", mm(6))
        .glass("S1", Optional.empty(), "ply", mm(6), "space", in(1, 2), "ply", mm(6));
  }

  /**
   * The same in millimetres: mullion and intermediate 60, jamb 55, sill 50, head 70, bite 12 all
   * round, end allowance 1, plate 60, cap 60, stock 7 m.
   */
  static TestParts millimetres() {
    return new TestParts()
        .with("mullion", metric(Role.MULLION, 60))
        .with("jamb", metric(Role.JAMB, 55))
        .with("corner", metric(Role.CORNER, 120).legs(mm(75), mm(85)))
        .with("sill", metric(Role.SILL, 50))
        .with("head", metric(Role.HEAD, 70))
        .with("intermediate", metric(Role.INTERMEDIATE, 60))
        .plate("plate", mm(60), mm(7000))
        .cap("cap", mm(60), mm(7000))
        .anchor("angle", mm(200), true, true)
        .glass("V1", Optional.empty(), "ply", mm(6), "space", mm(12), "ply", mm(6))
        .glass("S1", Optional.empty(), "ply", mm(6), "space", mm(12), "ply", mm(6));
  }

  private static ProfileSheet metric(Role role, long face) {
    return profile(role, mm(face)).bite(mm(12), mm(12)).endAllowance(mm(1));
  }
}
