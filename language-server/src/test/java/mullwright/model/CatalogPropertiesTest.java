package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import mullwright.quantity.Length;
import mullwright.quantity.LengthReader;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Properties of catalog parts: what is read, what is taken by default, what is refused. */
class CatalogPropertiesTest {
  private static Seen part(String text) {
    return Seen.of("units inches\ncatalog {\n" + text + "\n}");
  }

  private static <P extends Part> P read(Class<P> type, String name, String text) {
    return part(text).sound().model().catalog().find(type, name).orElseThrow();
  }

  private static Length inches(long inches) {
    return Length.ofInches(inches);
  }

  @Test
  void aProfileWithAll() {
    Part.Profile profile =
        read(
            Part.Profile.class,
            "m",
            """
            sleeve s { length 16 }
            profile m {
              role           corner
              face           2 1/2"
              sightline      3
              depth          6
              area           1600 mm2
              Ix             4.1e6 mm4
              Iy             2.1 in4
              Sx             3.1 in3 outside
              Sx             3.4 in3 inside
              Sy             1 in3
              J              0.9 in4
              mass           2.1 lb/ft
              metal          aluminium
              alloy          6063-T6
              stock          24', 28'
              stock          30'
              bite           1/2" left, 5/8" right
              edge-clearance 3/16"
              end-allowance  1/16"
              leg            2 left, 3 right
              sleeve         s
              outline        hollow 2 1/2" x 6" wall 1/8", plus solid 3/4" x 1" at 6"
              description    "invented"
            }
            """
                .replace("Sx             3.1 in3 outside\n", "")
                .replace("3.4 in3 inside", "3.1 in3 outside, 3.4 in3 inside"));
    assertThat(profile.role().value()).isEqualTo(Role.CORNER);
    assertThat(profile.sightline().value()).isEqualTo(inches(3));
    assertThat(profile.area().orElseThrow().value())
        .isEqualTo(Quantity.of(Rational.of(1600), Unit.SQUARE_MILLIMETRE));
    assertThat(profile.ix().orElseThrow().value())
        .isEqualTo(Quantity.of(Rational.of(4_100_000), Unit.MILLIMETRE_TO_THE_FOURTH));
    assertThat(profile.sxOutside().orElseThrow().value())
        .isEqualTo(Quantity.of(Rational.of("3.1"), Unit.CUBIC_INCH));
    assertThat(profile.sxInside().orElseThrow().value())
        .isEqualTo(Quantity.of(Rational.of("3.4"), Unit.CUBIC_INCH));
    // lb/ft is a mass by length here, though it can be a force by length elsewhere
    assertThat(profile.massPerLength().orElseThrow().value())
        .isEqualTo(Quantity.of(Rational.of("2.1"), Unit.POUND_MASS_PER_FOOT));
    assertThat(profile.massPerLength().orElseThrow().assumed()).isFalse();
    assertThat(profile.alloy().orElseThrow().value()).isEqualTo("6063-T6");
    assertThat(profile.stock())
        .extracting(stock -> stock.length().value())
        .containsExactly(inches(288), inches(336), inches(360));
    assertThat(profile.biteLeft().value()).isEqualTo(Length.ofInches(1, 2));
    assertThat(profile.biteRight().value()).isEqualTo(Length.ofInches(5, 8));
    assertThat(profile.legLeft().orElseThrow().value()).isEqualTo(inches(2));
    assertThat(profile.legRight().orElseThrow().value()).isEqualTo(inches(3));
    // the outer rectangle, the hole inside its wall, and the nose in front of it
    assertThat(profile.outline().orElseThrow().value().rectangles())
        .extracting(
            at ->
                List.of(at.x(), at.z(), at.width(), at.depth()).stream().map(Seen::inches).toList()
                    + (at.hole() ? " hole" : ""))
        .containsExactly("[-5/4, 0, 5/2, 6]", "[-9/8, 1/8, 9/4, 23/4] hole", "[-3/8, 6, 3/4, 1]");
  }

  @Test
  void oneValueServesBothSides() {
    Part.Profile profile =
        read(Part.Profile.class, "m", "profile m {\nface 2\ndepth 6\nSx 3 in3\nleg 2\n}");
    assertThat(profile.sxOutside()).isEqualTo(profile.sxInside());
    assertThat(profile.legLeft()).isEqualTo(profile.legRight());
  }

  @Test
  void defaultsOfAProfileAreMarked() {
    Part.Profile profile = read(Part.Profile.class, "m", "profile m {\nface 2\ndepth 6\n}");
    // all of these are common practice
    assertThat(profile.biteLeft().value()).isEqualTo(Length.ofInches(1, 2));
    assertThat(profile.edgeClearance().value()).isEqualTo(Length.ofInches(1, 4));
    assertThat(profile.endAllowance().value()).isEqualTo(Length.ofInches(1, 32));
    assertThat(
            Stream.of(
                profile.role(),
                profile.sightline(),
                profile.biteLeft(),
                profile.biteRight(),
                profile.edgeClearance(),
                profile.endAllowance(),
                profile.metal()))
        .allMatch(Given::assumed)
        .noneMatch(given -> given.source().isEmpty());
    assertThat(profile.massPerLength()).isEmpty();
    assertThat(profile.stock()).isEmpty();
  }

  @Test
  void anAnchor() {
    Part.Anchor anchor =
        read(
            Part.Anchor.class,
            "a",
            """
            anchor a {
              use        wind-load
              metal      stainless
              bolt-line  3" above underside of slab
              reach      2 to 5
              slot       2
              height     8
              hole       9/16" at 2 back 3, 9/16" at 6 back 3
              capacity   2000 lb down, 1.5 kN in
              capacity   1500 lb out
            }
            """);
    assertThat(anchor.use().orElseThrow().value()).isEqualTo("wind-load");
    assertThat(anchor.boltLine().value()).isEqualTo(new Part.BoltLine(inches(3), false, false));
    assertThat(anchor.reachLeast().orElseThrow().value()).isEqualTo(inches(2));
    assertThat(anchor.reachMost().orElseThrow().value()).isEqualTo(inches(5));
    assertThat(anchor.holes()).hasSize(2);
    assertThat(anchor.holes().get(1).along()).isEqualTo(inches(6));
    assertThat(anchor.capacities()).containsOnlyKeys("down", "in", "out");
    assertThat(anchor.capacities().get("in").value())
        .isEqualTo(Quantity.of(Rational.of("1.5"), Unit.KILONEWTON));
  }

  @Test
  void anAnchorsBoltLineIsTakenAtTheTopOfSlab() {
    Part.Anchor anchor = read(Part.Anchor.class, "a", "anchor a");
    assertThat(anchor.boltLine().value()).isEqualTo(new Part.BoltLine(Length.ZERO, true, true));
    assertThat(anchor.boltLine().assumed()).isTrue();
    assertThat(anchor.metal().value()).isEqualTo("steel");
    assertThat(anchor.use()).isEmpty();
  }

  @Test
  void wordsAreTheSameHoweverFarApart() {
    Part.Glass glass =
        read(
            Part.Glass.class,
            "g",
            "glass g {\n  ply 1/4\" heat \tstrengthened /* HS */  clear\n"
                + "  coating low-e\thard  surface 2\n}\n");
    assertThat(glass.layers().get(0).words())
        .containsExactly("heat strengthened clear", "low-e hard surface 2");
  }

  @Test
  void aLaminatedInsulatingGlass() {
    Part.Glass glass =
        read(
            Part.Glass.class,
            "g",
            """
            glass g {
              ply        1/4" tinted, tempered
              interlayer 1.52 mm pvb
              ply        1/4" clear, tempered
              space      1/2" argon
              ply        3/8" clear
              coating    low-e surface 2
              coating    low-e hard surface 4
              opacified
              safety     yes
              U          1.6 W/m2K
              limit      60 x 120
              bite       5/8"
            }
            """);
    // designations by ASTM E1300, from memory: 1/4" is 6 mm, 3/8" is 10 mm; the two joined plies
    // are
    // one pane, so surface 2 is the inner face of the second ply and surface 4 that of the third
    assertThat(glass.layers())
        .extracting(layer -> layer.what() + " " + layer.thickness() + " " + layer.words())
        .containsExactly(
            "ply 6 mm [tinted, tempered]",
            "interlayer 1.52 mm [pvb]",
            "ply 6 mm [clear, tempered, low-e surface 2]",
            "space 12.7 mm [argon]",
            "ply 10 mm [clear, low-e hard surface 4]");
    assertThat(glass.opacified().value()).isTrue();
    assertThat(glass.safety().value()).isTrue();
    assertThat(glass.mostHeight().orElseThrow().value()).isEqualTo(inches(120));
    assertThat(glass.bite().orElseThrow().value()).isEqualTo(Length.ofInches(5, 8));
  }

  @Test
  void aSurfaceTheGlassDoesNotHave() {
    Seen seen = part("glass g {\nply 6 mm clear\ncoating low-e surface 3\n}");
    assertThat(seen.problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("glass g has no surface 3");
  }

  @Test
  void clipsByPlace() {
    Part.WallSystem system =
        read(
            Part.WallSystem.class,
            "S",
            "clip c\nclip d\nsystem S {\nclip c at sill\nclip d at head\nclip d\n}");
    assertThat(system.sillClip().orElseThrow().value()).isEqualTo("c");
    assertThat(system.headClip().orElseThrow().value()).isEqualTo("d");
    assertThat(system.parts().get(PartKind.CLIP).value()).isEqualTo("d");
  }

  @Test
  void plainPartsKeepTheirFacts() {
    Part.Plain isolation =
        read(
            Part.Plain.class,
            "pad",
            "isolation pad {\nkind pad\nthickness 1/8\"\nhardness 70 shore\n}");
    assertThat(isolation.facts().get("kind").value()).isEqualTo("pad");
    assertThat(isolation.facts().get("thickness").value()).isEqualTo("1/8\"");
    assertThat(isolation.facts().get("hardness").value()).isEqualTo("70 shore");
    assertThat(isolation.metal()).isEmpty();
  }

  @Test
  void aFastenersMetalIsNotGuessed() {
    Given<String> metal = read(Part.Fastener.class, "f", "fastener f").metal();
    assertThat(metal.value()).isEmpty();
    assertThat(metal.assumed()).isTrue();
    assertThat(metal.source()).isEqualTo("not stated");
  }

  @Test
  void aSleeveReachesHalfItsLength() {
    Part.Sleeve sleeve = read(Part.Sleeve.class, "s", "sleeve s { length 16 }");
    assertThat(sleeve.engagement().value()).isEqualTo(inches(8));
    assertThat(sleeve.engagement().assumed()).isTrue();
    assertThat(sleeve.fixedEnd().value()).isEqualTo("lower");
  }

  @Test
  void anUnknownPropertyOffersTheKnown() {
    Seen seen = part("profile m {\nface 2\ndept 6\ndepth 6\n}");
    ModelProblem.BadProperty bad = seen.problem(ModelProblem.BadProperty.class);
    assertThat(bad.kind() + " " + bad.property()).isEqualTo("profile dept");
    assertThat(bad.pattern()).isEmpty();
    assertThat(bad.known()).startsWith("depth").contains("face", "Ix", "outline");
    assertThat(seen.text(bad)).isEqualTo("dept");
  }

  @Test
  void anotherSpellingThanThePattern() {
    Seen seen = part("anchor a { reach 2 and 5 }");
    ModelProblem.BadProperty bad = seen.problem(ModelProblem.BadProperty.class);
    assertThat(bad.pattern()).isEqualTo("LENGTH to LENGTH");
    assertThat(seen.text(bad)).isEqualTo("2 and 5");
    assertThat(
            part("profile m {\nface 2\ndepth 6\nrole rafter\n}")
                .problem(ModelProblem.BadProperty.class)
                .pattern())
        .isEqualTo("mullion|jamb|corner|sill|head|intermediate");
  }

  @Test
  void aPropertyOfTheWrongKind() {
    Seen seen = part("profile m {\nface 2\ndepth 6\nIx 8 in3\n}");
    ModelProblem.WrongUnit wrong = seen.problem(ModelProblem.WrongUnit.class);
    assertThat(wrong.what() + ", " + wrong.expected() + ", " + wrong.found())
        .isEqualTo("Ix, second moment of area, section modulus");
    assertThat(seen.text(wrong)).isEqualTo("8 in3");
  }

  @Test
  void aBareNumberWhereALengthIsNotMeant() {
    Seen seen = part("profile m {\nface 2\ndepth 6\nIx 8\n}");
    assertThat(seen.problem(ModelProblem.UnitMissing.class).number()).isEqualTo("8");
  }

  @Test
  void aPropertyTwice() {
    Seen seen = part("profile m {\nface 2\nface 3\ndepth 6\n}");
    assertThat(seen.problem(ModelProblem.Duplicate.class).what()).isEqualTo("property");
  }

  @Test
  void whatAProfileNeeds() {
    Seen seen = part("profile m { depth 6 }");
    ModelProblem.Missing missing = seen.problem(ModelProblem.Missing.class);
    assertThat(missing.where() + " " + missing.what()).isEqualTo("profile m its face");
  }

  @Test
  void anUnknownKindOfPart() {
    Seen seen = part("mullion m { face 2 }");
    ModelProblem.UnknownName unknown = seen.problem(ModelProblem.UnknownName.class);
    assertThat(unknown.what()).isEqualTo("kind of part");
    assertThat(unknown.candidates()).contains("profile", "shear-block");
  }

  @Test
  void aPartTwice() {
    Seen seen = part("finish bronze\nfinish bronze");
    assertThat(seen.problem(ModelProblem.Duplicate.class).what()).isEqualTo("finish");
  }

  @Test
  void aPartThatNamesAPartThatIsNot() {
    Seen seen = part("system S { mullion m }");
    assertThat(seen.problem(ModelProblem.UnknownName.class).what()).isEqualTo("profile");
  }

  @Test
  void aLetMayStandForAValue() {
    Part.Profile profile =
        read(Part.Profile.class, "m", "let w = 2 1/2\"\nprofile m {\nface w\ndepth w * 2 + 1\"\n}");
    assertThat(profile.face().value()).isEqualTo(Length.ofInches(5, 2));
    assertThat(profile.depth().value()).isEqualTo(inches(6));
  }

  @Test
  void unusedPartsAreListedBesideAWall() {
    Seen seen = Seen.of("catalog {\nfinish bronze\nfinish clear\n}\nwall W { finish bronze }");
    assertThat(seen.sound().model().unusedNames())
        .extracting(Symbol::name)
        .containsExactly("clear");
    // a file that holds parts only is there for others
    assertThat(part("finish bronze").model().unusedNames()).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> everyPropertyOfEveryKindIsDocumented() {
    return Stream.of(PartKind.values())
        .map(
            kind ->
                DynamicTest.dynamicTest(
                    kind.spelling(),
                    () -> {
                      assertThat(PartSchema.of(kind).properties()).isNotEmpty();
                      assertThat(PartSchema.of(kind).properties())
                          .allSatisfy(
                              property -> {
                                assertThat(property.meaning()).isNotBlank();
                                assertThat(property.patterns()).isNotEmpty();
                              });
                    }));
  }

  @Test
  void everyDefaultLengthCanBeRead() {
    Stream.concat(
            Stream.of(PartKind.values()).map(PartSchema::of), Stream.of(PartSchema.fabrication()))
        .flatMap(schema -> schema.properties().stream())
        .filter(property -> property.patterns().get(0).startsWith("LENGTH"))
        .filter(property -> !property.word().equals("bolt-line"))
        .flatMap(property -> property.byDefault().stream())
        .forEach(
            taken -> {
              assertThat(LengthReader.read(taken.text()).value()).isPresent();
              assertThat(taken.source()).isNotBlank();
            });
  }
}
