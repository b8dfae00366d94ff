package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The reports for shop and site: their forms, their columns, their ledger. */
class ShopReportsTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"lengths", "takeoff", "tickets", "glass", "sequence"})
  void jsonFollowsThePublishedSchema(String report) throws IOException {
    String schema =
        Files.readString(Path.of("src/main/resources/mullwright/report/document.schema.json"));
    for (String wall : List.of("ferry-terminal", "library-corner", "first-wall")) {
      Ran ran = Ran.in(EXAMPLES, report, "--output", "json", wall);
      assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.CLEAN);
      assertThat(
              JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                  .getSchema(schema)
                  .validate(ran.out(), InputFormat.JSON))
          .isEmpty();
    }
  }

  // programs read these names: a change here is a change for them, ask a human before editing
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "takeoff | frame: face item part size quantity length area mass order-quantity order-length"
            + " finish remark",
        "takeoff | glass: face item part size quantity length area mass order-quantity order-length"
            + " finish remark",
        "tickets | pieces: mark kind piece profile quantity cut-length ends notch holes finish",
        "tickets | holes: mark along back diameter side quantity for part fastener remark",
        "tickets | plate-fasteners: mark plate quantity cut-length fasteners first spacing fastener",
        "tickets | clearances: profile fastener play offset tolerance-worst tolerance-likely"
            + " left-worst left-likely tolerances",
        "glass | make-ups: glass make-up safety quantity total-area billed-area total-mass",
        "glass | lites: mark lite glass quantity order-size billed-size area mass total-area"
            + " total-mass block-length block-first remark",
        "sequence | steps: step round crew work piece after reason",
      })
  void columnsAreWhatProgramsKnow(String report, String columns) {
    Ran ran = Ran.in(EXAMPLES, report, "--output", "json", "ferry-terminal");
    List<String> found = new ArrayList<>();
    for (JsonElement table : tables(ran)) {
      StringBuilder names = new StringBuilder(table.getAsJsonObject().get("name").getAsString());
      names.append(':');
      for (JsonElement column : table.getAsJsonObject().getAsJsonArray("columns")) {
        names.append(' ').append(column.getAsJsonObject().get("name").getAsString());
      }
      found.add(names.toString());
    }
    assertThat(found).contains(columns);
  }

  private static JsonArray tables(Ran ran) {
    JsonObject document = JsonParser.parseString(ran.out()).getAsJsonObject();
    return document.getAsJsonArray("sections").get(0).getAsJsonObject().getAsJsonArray("tables");
  }

  @ParameterizedTest
  @ValueSource(strings = {"takeoff", "tickets", "glass", "sequence"})
  void textKeepsToItsWidth(String report) {
    Ran ran = Ran.in(EXAMPLES, report, "--width", "120", "ferry-terminal");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 120);
    assertThat(ran.out()).contains("a licensed engineer and the local code govern");
  }

  @ParameterizedTest
  @ValueSource(strings = {"takeoff", "tickets", "glass", "sequence", "cut"})
  void aRowTooLongForOneLineStandsOnSeveral(String report) {
    Ran ran = Ran.in(EXAMPLES, report, "--width", "80", "ferry-terminal");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void theOrderOfWorkIsToldInShortAndByAllInFull() {
    String brief = Ran.in(EXAMPLES, "sequence", "ferry-terminal").out();
    String all = Ran.in(EXAMPLES, "sequence", "--all", "ferry-terminal").out();
    assertThat(brief).contains("set clip", "and 1 more").doesNotContain("Since");
    assertThat(all).contains("Since", "Round");
    assertThat(brief.lines().count()).isLessThan(all.lines().count() / 2);
    // programs always get every step
    JsonArray steps =
        tables(Ran.in(EXAMPLES, "sequence", "--output", "json", "ferry-terminal"))
            .get(0)
            .getAsJsonObject()
            .getAsJsonArray("rows");
    JsonArray rows =
        tables(Ran.in(EXAMPLES, "sequence", "--output", "json", "--all", "ferry-terminal"))
            .get(0)
            .getAsJsonObject()
            .getAsJsonArray("rows");
    assertThat(steps).isEqualTo(rows);
  }

  @Test
  void aWallIsChosenByItsName() {
    Ran ran = Ran.in(EXAMPLES, "cut", "--wall", "Nope", "ferry-terminal");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("There is no wall “Nope” in these files; there are East.");
    assertThat(Ran.in(EXAMPLES, "cut", "--wall", "East", "ferry-terminal").out())
        .contains("no plan can buy less");
  }

  @Test
  void billedSizesAreRoundedUp() throws IOException {
    Fixtures.lengths(folder);
    Path catalog = folder.resolve("captured.wall");
    String text = Files.readString(catalog);
    int glass = text.indexOf("{", text.indexOf("glass V1")) + 1;
    Files.writeString(
        catalog, text.substring(0, glass) + "\n    billed 2\"\n" + text.substring(glass));
    Ran ran = Ran.in(folder, "glass", "--output", "csv", "east.wall");
    // 58 1/2 × 76 1/2, rounded up to even inches (common practice): 60 × 78
    assertThat(ran.out()).contains("\"5'-0\"\"\",1524,\"6'-6\"\"\",1981.2");
    // glass of 60 1/32 is ordered as 60 and billed as that, not as 62
    Path wall = folder.resolve("east.wall");
    Files.writeString(wall, Files.readString(wall).replace("6 @ 5'-0\"", "6 @ 5'-1 17/32\""));
    assertThat(Ran.in(folder, "glass", "--output", "csv", "east.wall").out())
        .contains(
            "\"5'-0\"\"\",1524,\"6'-4 1/2\"\"\",1943.1,\"5'-0\"\"\",1524,\"6'-6\"\"\",1981.2");
  }

  @Test
  void wasteAndAtticStockAreBoughtMore() throws IOException {
    Fixtures.lengths(folder);
    Path wall = folder.resolve("east.wall");
    String text = Files.readString(wall);
    int grid = text.indexOf("grid {");
    Files.writeString(
        wall,
        text.substring(0, grid)
            + "fabrication {\n    waste 5 % gasket\n    attic 2 %\n  }\n\n  "
            + text.substring(grid));
    Ran ran = Ran.in(folder, "takeoff", "--output", "csv", "east.wall");
    assertThat(ran.err()).isEmpty();
    // 72 dams and 2 %: 73.44, so 74
    assertThat(ran.out()).containsPattern("zone dam,[^,]*,,72,[^\\r]*,74,");
  }

  @Test
  void aWorkbookHasTheSameBytesEachTimeAndEveryPartOfItIsSound() throws Exception {
    byte[] first = book();
    assertThat(book()).isEqualTo(first);
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(first))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] content = in.readAllBytes();
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(content));
        parts.put(entry.getName(), new String(content, StandardCharsets.UTF_8));
      }
    }
    assertThat(parts).containsKeys("[Content_Types].xml", "xl/workbook.xml");
    assertThat(parts.get("xl/workbook.xml"))
        .contains("Read first", "East frame", "East anchors", "East glass");
  }

  private static byte[] book() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream err = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    PrintStream to = new PrintStream(out, false, StandardCharsets.UTF_8);
    Shell shell =
        new Shell(new ByteArrayInputStream(new byte[0]), to, err, EXAMPLES, Map.of(), false);
    assertThat(CommandRun.run(shell, "takeoff", "--output", "xlsx", "ferry-terminal"))
        .isEqualTo(Exit.CLEAN);
    to.flush();
    return out.toByteArray();
  }

  @Test
  void marksAreIssuedIntoTheLedgerAndUsedFromThenOn() throws IOException {
    Fixtures.lengths(folder);
    assertThat(Ran.in(folder, "tickets", "east.wall").out()).contains("V1");
    assertThat(folder.resolve("east.marks")).doesNotExist();
    Ran issued = Ran.in(folder, "tickets", "--issue", "east.wall");
    String ledger = Files.readString(folder.resolve("east.marks"));
    assertThat(ledger.lines().filter(line -> !line.startsWith("#")))
        .isSorted()
        .hasSizeGreaterThan(10);
    String mark = ledger.lines().filter(line -> line.startsWith("V-")).findFirst().orElseThrow();
    assertThat(issued.out()).contains(mark.substring(0, 6));
    assertThat(Ran.in(folder, "lengths", "east.wall").out()).contains(mark.substring(0, 6));
    assertThat(Ran.in(folder, "cut", "--each", "east.wall").out()).contains(mark.substring(0, 6));
    // asked again, nothing changes
    Ran.in(folder, "tickets", "--issue", "east.wall");
    assertThat(Files.readString(folder.resolve("east.marks"))).isEqualTo(ledger);
    // one bay made wider: marks of what stays stay in the ledger, new ones come to it
    Path wall = folder.resolve("east.wall");
    String text = Files.readString(wall);
    Files.writeString(wall, text.replaceFirst("spaced 6 @ 5'-0\"", "spaced 5 @ 5'-0\", 5'-1\""));
    Ran.in(folder, "tickets", "--issue", "east.wall");
    assertThat(Files.readString(folder.resolve("east.marks")).lines())
        .containsAll(ledger.lines().toList())
        .hasSizeGreaterThan((int) ledger.lines().count());
  }

  @Test
  void aLedgerThatGivesAMarkTwiceIsRefused() throws IOException {
    Fixtures.lengths(folder);
    Files.writeString(
        folder.resolve("east.marks"),
        "V-AAAA  00000000000000000001  a\nV-AAAA  00000000000000000002  b\n");
    Ran ran = Ran.in(folder, "tickets", "east.wall");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("east.marks:2", "two pieces");
  }
}
