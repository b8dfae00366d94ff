package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import mullwright.report.ifc.StepText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The IFC file of the examples: its form, and that it tells what the other reports tell. */
class IfcTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  /** Explicit attributes of each entity, inherited ones counted (ISO 16739-1, IFC4). */
  private static final Map<String, Integer> ATTRIBUTES =
      Map.ofEntries(
          Map.entry("IFCAXIS2PLACEMENT2D", 2),
          Map.entry("IFCAXIS2PLACEMENT3D", 3),
          Map.entry("IFCBUILDING", 12),
          Map.entry("IFCBUILDINGELEMENTPROXY", 9),
          Map.entry("IFCBUILDINGSTOREY", 10),
          Map.entry("IFCCARTESIANPOINT", 1),
          Map.entry("IFCCURTAINWALL", 9),
          Map.entry("IFCDERIVEDUNIT", 3),
          Map.entry("IFCDERIVEDUNITELEMENT", 2),
          Map.entry("IFCDIRECTION", 1),
          Map.entry("IFCDISCRETEACCESSORY", 9),
          Map.entry("IFCELEMENTQUANTITY", 6),
          Map.entry("IFCEXTRUDEDAREASOLID", 4),
          Map.entry("IFCGEOMETRICREPRESENTATIONCONTEXT", 6),
          Map.entry("IFCGEOMETRICREPRESENTATIONSUBCONTEXT", 10),
          Map.entry("IFCLOCALPLACEMENT", 2),
          Map.entry("IFCMATERIAL", 3),
          Map.entry("IFCMATERIALLAYER", 7),
          Map.entry("IFCMATERIALLAYERSET", 3),
          Map.entry("IFCMATERIALPROFILE", 6),
          Map.entry("IFCMATERIALPROFILESET", 4),
          Map.entry("IFCMEMBER", 9),
          Map.entry("IFCMEMBERTYPE", 10),
          Map.entry("IFCPLATE", 9),
          Map.entry("IFCPLATETYPE", 10),
          Map.entry("IFCPRODUCTDEFINITIONSHAPE", 3),
          Map.entry("IFCPROJECT", 9),
          Map.entry("IFCPROPERTYSET", 5),
          Map.entry("IFCPROPERTYSINGLEVALUE", 4),
          Map.entry("IFCQUANTITYAREA", 5),
          Map.entry("IFCQUANTITYLENGTH", 5),
          Map.entry("IFCQUANTITYVOLUME", 5),
          Map.entry("IFCQUANTITYWEIGHT", 5),
          Map.entry("IFCRECTANGLEHOLLOWPROFILEDEF", 8),
          Map.entry("IFCRECTANGLEPROFILEDEF", 5),
          Map.entry("IFCRELAGGREGATES", 6),
          Map.entry("IFCRELASSOCIATESMATERIAL", 6),
          Map.entry("IFCRELCONTAINEDINSPATIALSTRUCTURE", 6),
          Map.entry("IFCRELDEFINESBYPROPERTIES", 6),
          Map.entry("IFCRELDEFINESBYTYPE", 6),
          Map.entry("IFCRELREFERENCEDINSPATIALSTRUCTURE", 6),
          Map.entry("IFCSHAPEREPRESENTATION", 4),
          Map.entry("IFCSITE", 14),
          Map.entry("IFCSIUNIT", 4),
          Map.entry("IFCUNITASSIGNMENT", 1));

  @TempDir Path folder;

  private static final Map<String, StepText> READ = new HashMap<>();

  private static StepText read(String wall) {
    return READ.computeIfAbsent(wall, IfcTest::written);
  }

  private static StepText written(String wall) {
    Ran ran = Ran.in(EXAMPLES, "ifc", wall);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    return new StepText(ran.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-wall", "ferry-terminal", "library-corner", "tower"})
  void isWellFormed(String wall) {
    StepText ifc = read(wall);
    assertThat(ifc.header.keySet()).containsExactly("FILE_DESCRIPTION", "FILE_NAME", "FILE_SCHEMA");
    assertThat(ifc.header.get("FILE_SCHEMA")).isEqualTo(List.of(List.of("IFC4")));
    Set<Object> ids = new HashSet<>();
    for (StepText.Instance one : ifc.data.values()) {
      assertThat(ATTRIBUTES).containsKey(one.entity());
      assertThat(one.values()).as(one.toString()).hasSize(ATTRIBUTES.get(one.entity()));
      references(one.values()).forEach(ifc::at);
      if (rooted(one)) {
        // ISO 16739-1, IfcGloballyUniqueId: 22 digits to the base 64, 128 = 2 + 21 × 6 bits
        assertThat((String) one.values().get(0)).matches("[0-3][0-9A-Za-z_$]{21}");
        assertThat(ids.add(one.values().get(0))).as("one identifier twice: " + one).isTrue();
      }
    }
  }

  // ISO 16739-1: subtypes of IfcRoot
  private static boolean rooted(StepText.Instance one) {
    return one.entity().startsWith("IFCREL")
        || Set.of("IFCPROJECT", "IFCSITE", "IFCBUILDING", "IFCBUILDINGSTOREY", "IFCCURTAINWALL")
            .contains(one.entity())
        || Set.of("IFCMEMBER", "IFCPLATE", "IFCDISCRETEACCESSORY", "IFCBUILDINGELEMENTPROXY")
            .contains(one.entity())
        || Set.of("IFCMEMBERTYPE", "IFCPLATETYPE", "IFCPROPERTYSET", "IFCELEMENTQUANTITY")
            .contains(one.entity());
  }

  private static Stream<Object> references(Object value) {
    if (value instanceof List<?> list) {
      return list.stream().flatMap(IfcTest::references);
    }
    if (value instanceof StepText.Typed typed) {
      return references(typed.value());
    }
    return value instanceof StepText.Ref ? Stream.of(value) : Stream.of();
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-wall", "ferry-terminal", "library-corner", "tower"})
  void everyPartHasOnePlaceInTheTree(String wall) {
    StepText ifc = read(wall);
    StepText.Instance curtain = ifc.all("IFCCURTAINWALL").get(0);
    List<Integer> parts = new ArrayList<>();
    for (StepText.Instance one : ifc.all("IFCRELAGGREGATES")) {
      if (ifc.at(one.values().get(4)).equals(curtain)) {
        ((List<?>) one.values().get(5)).forEach(ref -> parts.add(ifc.at(ref).number()));
      }
    }
    List<Integer> made = new ArrayList<>();
    for (String entity :
        List.of("IFCMEMBER", "IFCPLATE", "IFCDISCRETEACCESSORY", "IFCBUILDINGELEMENTPROXY")) {
      ifc.all(entity).forEach(one -> made.add(one.number()));
    }
    assertThat(parts).containsExactlyInAnyOrderElementsOf(made);
    // ISO 16739-1, IfcElement: an element is contained in one spatial structure at most
    assertThat(ifc.all("IFCRELCONTAINEDINSPATIALSTRUCTURE")).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-wall", "ferry-terminal", "library-corner", "tower"})
  void countsAndLengthsAreThoseOfTheOtherReports(String wall) {
    StepText ifc = read(wall);
    Map<String, List<Object>> lengths = quantities(ifc, "IFCQUANTITYLENGTH", "Length");
    Map<String, List<Object>> areas = quantities(ifc, "IFCQUANTITYAREA", "NetArea");
    JsonObject report = json("lengths", wall);
    BigDecimal verticals = total(report, "verticals");
    BigDecimal horizontals = total(report, "horizontals");
    assertThat(sum(lengths.get("IFCMEMBER"))).isEqualByComparingTo(verticals.add(horizontals));
    assertThat(ifc.all("IFCMEMBER"))
        .hasSize(count(report, "verticals") + count(report, "horizontals"));
    assertThat(ifc.all("IFCPLATE")).hasSize(count(report, "glass-sizes"));
    JsonObject takeoff = json("takeoff", wall);
    double area = 0;
    for (JsonObject row : rows(takeoff, "glass")) {
      if (row.get("item").getAsString().endsWith("lite")) {
        area += row.getAsJsonObject("area").get("si").getAsDouble();
      }
    }
    // each lite's area stands in the file to a square millimetre and a thousandth of it
    assertThat(sum(areas.get("IFCPLATE")).doubleValue()).isCloseTo(area, within(1e-5));
    int anchors = 0;
    for (JsonObject row : rows(takeoff, "anchors")) {
      String item = row.get("item").getAsString();
      if (item.equals("clip") || item.endsWith("anchor")) {
        anchors += row.get("quantity").getAsInt();
      }
    }
    assertThat(ifc.all("IFCDISCRETEACCESSORY")).hasSize(anchors);
  }

  @Test
  void aBodyIsAsLongAsItsPiece() {
    StepText ifc = read("tower");
    Map<String, BigDecimal> told = new HashMap<>();
    for (JsonElement section : json("lengths", "tower", "--each").getAsJsonArray("sections")) {
      for (JsonElement table : section.getAsJsonObject().getAsJsonArray("tables")) {
        if (Set.of("verticals", "horizontals")
            .contains(table.getAsJsonObject().get("name").getAsString())) {
          for (JsonElement row : table.getAsJsonObject().getAsJsonArray("rows")) {
            told.put(
                row.getAsJsonObject().getAsJsonArray("piece").get(0).getAsString(),
                row.getAsJsonObject().getAsJsonObject("cut-length").get("mm").getAsBigDecimal());
          }
        }
      }
    }
    assertThat(told).isNotEmpty();
    for (StepText.Instance member : ifc.all("IFCMEMBER")) {
      StepText.Instance shape = ifc.at(member.values().get(6));
      StepText.Instance body = ifc.at(((List<?>) shape.values().get(2)).get(0));
      StepText.Instance solid = ifc.at(((List<?>) body.values().get(3)).get(0));
      assertThat((BigDecimal) solid.values().get(3))
          .isEqualByComparingTo(told.get((String) member.values().get(2)));
    }
  }

  @Test
  void facesMeetAtTheirCorner() {
    StepText ifc = read("library-corner");
    // lines 1 to 5 spaced 1500: the corner stands at 6000; line 8 is 1400 + 2 × 1600 beyond it, on
    // a face that turns by a right angle; the backs of all profiles lie 184 behind the glass; the
    // row sill is at 60, and a vertical begins half a face of 60 below it: 30
    assertThat(place(ifc, "vertical 8, lower length, G to L1")).containsExactly(5816, 4600, 30);
    // the corner's back lies on the halving line, 184 and half of 95 (its face) into the room
    double[] corner = place(ifc, "vertical 5, lower length, G to L1");
    double in = (184 + 95 / 2.0) / Math.sqrt(2);
    assertThat(corner[0]).isCloseTo(6000 - in, within(1e-6));
    assertThat(corner[1]).isCloseTo(in, within(1e-6));
    // a horizontal begins half a jamb's face (30) and the catalog's end allowance (0.8) from its
    // line, and lies at its row: sill at 60
    assertThat(place(ifc, "horizontal sill, bay 1-2")).containsExactly(30.8, 184, 60);
  }

  // all placements above a part's own are shifts up and down that cancel out
  private static double[] place(StepText ifc, String name) {
    StepText.Instance member =
        ifc.all("IFCMEMBER").stream()
            .filter(one -> one.values().get(2).equals(name))
            .findFirst()
            .orElseThrow();
    StepText.Instance axes = ifc.at(ifc.at(member.values().get(5)).values().get(1));
    return ((List<?>) ifc.at(axes.values().get(0)).values().get(0))
        .stream().mapToDouble(value -> ((BigDecimal) value).doubleValue()).toArray();
  }

  @Test
  void marksAreThoseOfTheLedger() throws IOException {
    Fixtures.lengths(folder);
    assertThat(Ran.in(folder, "tickets", "--issue", "east.wall").code()).isZero();
    Object mark = tags(new StepText(Ran.in(folder, "ifc", "east.wall").out())).iterator().next();
    Path ledger = folder.resolve("east.marks");
    String kept = Files.readString(ledger);
    assertThat(kept).contains((String) mark);
    String letter = ((String) mark).substring(0, 1);
    Files.writeString(ledger, kept.replace((String) mark, letter + "77"));
    assertThat(tags(new StepText(Ran.in(folder, "ifc", "east.wall").out())))
        .contains(letter + "77")
        .doesNotContain(mark);
  }

  private static Set<Object> tags(StepText ifc) {
    Set<Object> tags = new HashSet<>();
    ifc.all("IFCMEMBER").forEach(one -> tags.add(one.values().get(7)));
    return tags;
  }

  @Test
  void aPieceKeepsItsIdentifierWhenAnotherChanges() {
    Path wall = Fixtures.lengths(folder);
    Map<Object, Object> before =
        identifiers(new StepText(Ran.in(folder, "ifc", "east.wall").out()));
    Fixtures.write(folder, "east.wall", Fixtures.read(wall).replace("gap 5/8\"", "gap 3/4\""));
    StepText changed = new StepText(Ran.in(folder, "ifc", "east.wall").out());
    assertThat(identifiers(changed)).isEqualTo(before);
  }

  private static Map<Object, Object> identifiers(StepText ifc) {
    Map<Object, Object> ids = new HashMap<>();
    ifc.all("IFCMEMBER").forEach(one -> ids.put(one.values().get(2), one.values().get(0)));
    return ids;
  }

  @Test
  void writesAFileWithTheTimeItIsTold() throws IOException {
    Fixtures.lengths(folder);
    Ran ran = Ran.in(folder, "ifc", "east.wall", "-o", "east.ifc", "--time", "2026-05-04T10:30:00");
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).isEmpty();
    StepText ifc = new StepText(Files.readString(folder.resolve("east.ifc")));
    assertThat(ifc.header.get("FILE_NAME").get(1)).isEqualTo("2026-05-04T10:30:00");
  }

  @Test
  void saysWhatItCannotDo() {
    Ran several = Ran.in(EXAMPLES, "ifc", "first-wall", "tower");
    assertThat(several.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(several.err()).contains("one wall", "“Lobby”", "“North”", "--wall");
    assertThat(Ran.in(EXAMPLES, "ifc", "first-wall", "tower", "--wall", "Lobby").code()).isZero();
    assertThat(Ran.in(EXAMPLES, "ifc", "first-wall", "--wall", "Loby").err())
        .contains("no wall “Loby”", "“Lobby”");
    assertThat(Ran.in(EXAMPLES, "ifc", "first-wall", "--time", "noon").err())
        .contains("“noon”", "2026-05-04T10:30:00");
    assertThat(Ran.in(EXAMPLES, "ifc", "first-wall", "-o", "no/such/folder.ifc").err())
        .contains("cannot be written");
  }

  private static Map<String, List<Object>> quantities(StepText ifc, String entity, String name) {
    Map<String, List<Object>> found = new HashMap<>();
    for (StepText.Instance relation : ifc.all("IFCRELDEFINESBYPROPERTIES")) {
      StepText.Instance set = ifc.at(relation.values().get(5));
      if (!set.entity().equals("IFCELEMENTQUANTITY")) {
        continue;
      }
      for (Object ref : (List<?>) set.values().get(5)) {
        StepText.Instance quantity = ifc.at(ref);
        if (quantity.entity().equals(entity) && quantity.values().get(0).equals(name)) {
          for (Object of : (List<?>) relation.values().get(4)) {
            found
                .computeIfAbsent(ifc.at(of).entity(), any -> new ArrayList<>())
                .add(quantity.values().get(3));
          }
        }
      }
    }
    return found;
  }

  private static BigDecimal sum(List<Object> values) {
    return values.stream().map(BigDecimal.class::cast).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static JsonObject json(String report, String... rest) {
    List<String> arguments = new ArrayList<>(List.of(report, "--output", "json"));
    arguments.addAll(List.of(rest));
    return JsonParser.parseString(Ran.in(EXAMPLES, arguments.toArray(String[]::new)).out())
        .getAsJsonObject();
  }

  private static JsonObject table(JsonObject report, String name) {
    JsonArray tables =
        report.getAsJsonArray("sections").get(0).getAsJsonObject().getAsJsonArray("tables");
    for (JsonElement table : tables) {
      if (table.getAsJsonObject().get("name").getAsString().equals(name)) {
        return table.getAsJsonObject();
      }
    }
    throw new AssertionError("no table " + name);
  }

  private static List<JsonObject> rows(JsonObject report, String name) {
    List<JsonObject> rows = new ArrayList<>();
    table(report, name).getAsJsonArray("rows").forEach(row -> rows.add(row.getAsJsonObject()));
    return rows;
  }

  private static int count(JsonObject report, String name) {
    return table(report, name).getAsJsonObject("totals").get("quantity").getAsInt();
  }

  private static BigDecimal total(JsonObject report, String name) {
    return table(report, name)
        .getAsJsonObject("totals")
        .getAsJsonObject("total-length")
        .get("mm")
        .getAsBigDecimal();
  }
}
