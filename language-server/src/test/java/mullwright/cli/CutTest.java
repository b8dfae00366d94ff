package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code cut} over two walls of two finishes that share a rack. */
class CutTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "reports", "cut").toAbsolutePath();

  @TempDir Path folder;

  private static JsonArray tables(String... options) {
    String[] arguments = new String[options.length + 4];
    System.arraycopy(
        new String[] {"cut", "--output", "json", "two-walls.wall"}, 0, arguments, 0, 4);
    System.arraycopy(options, 0, arguments, 4, options.length);
    JsonObject report = JsonParser.parseString(Ran.in(FOLDER, arguments).out()).getAsJsonObject();
    assertThat(SchemaCheck.of("document.schema.json").faults(report)).isEmpty();
    return report.getAsJsonArray("sections").get(0).getAsJsonObject().getAsJsonArray("tables");
  }

  private static JsonObject table(JsonArray tables, String name) {
    for (JsonElement table : tables) {
      if (table.getAsJsonObject().get("name").getAsString().equals(name)) {
        return table.getAsJsonObject();
      }
    }
    throw new AssertionError("no table " + name);
  }

  private static BigDecimal mm(JsonObject row, String column) {
    return row.getAsJsonObject(column).get("mm").getAsBigDecimal();
  }

  @ParameterizedTest
  @CsvSource({
    "text, 80, two-walls.80.txt",
    "text, 120, two-walls.120.txt",
    "markdown, 80, two-walls.md",
    "csv, 80, two-walls.csv",
    "json, 80, two-walls.json",
  })
  void isLaidOutAsStored(String form, int width, String stored) {
    Ran ran = Ran.in(FOLDER, "cut", "--output", form, "--width", "" + width, "two-walls.wall");
    Fixtures.assertSame(FOLDER.resolve(stored), ran.out());
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void noLineIsLongerThanAskedFor(int width) {
    for (String option : new String[] {"--seconds=1", "--each", "--proof"}) {
      Ran ran = Ran.in(FOLDER, "cut", option, "--width", "" + width, "two-walls.wall");
      assertThat(ran.out().lines()).allMatch(line -> line.length() <= width);
    }
  }

  @Test
  void whatIsBoughtIsWhatTheBarsSay() {
    JsonArray tables = tables();
    int bought = 0;
    int onHand = 0;
    for (JsonElement table : tables) {
      if (!table.getAsJsonObject().get("name").getAsString().startsWith("bars-of-")) {
        continue;
      }
      for (JsonElement row : table.getAsJsonObject().getAsJsonArray("rows")) {
        int bars = row.getAsJsonObject().get("bars").getAsInt();
        if (row.getAsJsonObject().get("from").getAsString().equals("bought")) {
          bought += bars;
        } else {
          onHand += bars;
        }
      }
    }
    assertThat(table(tables, "to-buy").getAsJsonObject("totals").get("quantity").getAsInt())
        .isEqualTo(bought);
    // the bar of mullion-6 and both of rail-6 in bronze; nothing is cut from sill-9
    assertThat(onHand).isEqualTo(3);
  }

  @Test
  void piecesDropsAndWasteAddUpToTheBars() {
    JsonObject table = table(tables(), "where-it-goes");
    JsonArray rows = table.getAsJsonArray("rows").deepCopy();
    rows.add(table.getAsJsonObject("totals"));
    for (JsonElement row : rows) {
      JsonObject of = row.getAsJsonObject();
      assertThat(mm(of, "pieces").add(mm(of, "kept")).add(mm(of, "waste")))
          .isEqualByComparingTo(mm(of, "bars"));
    }
  }

  @Test
  void everyBarByItselfHoldsTheSamePieces() {
    JsonArray grouped = tables();
    JsonArray each = tables("--each");
    JsonObject bars = table(grouped, "bars-of-rail-6");
    JsonObject saw = table(each, "saw-list-of-rail-6");
    int count = 0;
    for (JsonElement row : bars.getAsJsonArray("rows")) {
      count += row.getAsJsonObject().get("bars").getAsInt();
    }
    JsonArray rows = saw.getAsJsonArray("rows");
    assertThat(rows.get(rows.size() - 1).getAsJsonObject().get("bar").getAsInt()).isEqualTo(count);
    // closed form: five bays of one wall, one row of rails
    assertThat(rows).hasSize(count + 5);
  }

  @Test
  void thePricesOfAProofAddUp() {
    JsonObject prices = table(tables("--proof"), "prices-of-plate-6");
    long sum = 0;
    for (JsonElement row : prices.getAsJsonArray("rows")) {
      JsonObject of = row.getAsJsonObject();
      assertThat(of.get("worth").getAsLong())
          .isEqualTo(of.get("price").getAsLong() * of.get("quantity").getAsLong());
      sum += of.get("worth").getAsLong();
    }
    assertThat(prices.getAsJsonObject("totals").get("worth").getAsLong()).isEqualTo(sum);
    assertThat(prices.get("title").getAsString()).contains("at least 7 bars must be bought");
  }

  @Test
  void barsOfNoUseAreTold() {
    Ran ran = Ran.in(FOLDER, "cut", "two-walls.wall");
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("of no use here, since nothing is cut from “sill-9”: 4 × 9'-0\"");
  }

  @Test
  void aProfileWithoutStockIsToldAndTheOthersAreCut() {
    String catalog = Fixtures.read(FOLDER.resolve("captured.wall"));
    String without = catalog.replaceFirst("(?s)(profile rail-6 \\{.*?)\\n *stock +24'", "$1");
    assertThat(without).isNotEqualTo(catalog);
    Fixtures.write(folder, "captured.wall", without);
    Fixtures.write(
        folder,
        "two-walls.wall",
        Fixtures.read(FOLDER.resolve("two-walls.wall"))
            .replace(", 2 x 7'-6\" of rail-6 in bronze", ""));
    Ran ran = Ran.in(folder, "cut", "two-walls.wall");
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("No plan for profile rail-6: the catalog states no length it is bought in")
        .contains("Profile head-6: 1 bar to buy");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "3601", "ten"})
  void secondsOutOfRangeAreRefused(String seconds) {
    Ran ran = Ran.in(FOLDER, "cut", "--seconds=" + seconds, "two-walls.wall");
    assertThat(ran.code()).isNotEqualTo(Exit.CLEAN);
    assertThat(ran.err()).contains("seconds");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void noWallNothingToCut() {
    Fixtures.write(folder, "empty.wall", "// nothing\n");
    Ran ran = Ran.in(folder, "cut", "empty.wall");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("nothing to tell");
  }
}
