package mullwright.cli;

import static mullwright.cli.Fixtures.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;

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

/**
 * The report of cut lengths, counted by hand for one wall.
 *
 * <p>Lines A..G at 60"; sill 2", R1 36", R2 114", R3 138", R4 192", R5 270", head 316"; all faces 2
 * 1/2", bites 1/2", end allowance 1/32"; splices B..F at 180", gap 5/8".
 */
class LengthsTest {
  @TempDir Path folder;

  private static JsonObject report(String... options) {
    String[] arguments = new String[options.length + 4];
    System.arraycopy(new String[] {"lengths", "--output", "json", "east.wall"}, 0, arguments, 0, 4);
    System.arraycopy(options, 0, arguments, 4, options.length);
    return JsonParser.parseString(Ran.in(LENGTHS, arguments).out()).getAsJsonObject();
  }

  private static JsonObject table(JsonObject report, String name) {
    for (JsonElement table :
        report.getAsJsonArray("sections").get(0).getAsJsonObject().getAsJsonArray("tables")) {
      if (table.getAsJsonObject().get("name").getAsString().equals(name)) {
        return table.getAsJsonObject();
      }
    }
    throw new AssertionError("no table " + name);
  }

  private static String printed(JsonObject row, String column) {
    return row.getAsJsonObject(column).get("printed").getAsString();
  }

  @ParameterizedTest
  @CsvSource({
    // closed form, recomputed: head 316 + 1 1/4 − (sill 2 − 1 1/4) = 316 1/2"
    "verticals, 0, 1, 26'-4 1/2\"",
    // closed form, recomputed: 180 − 5/16 − 3/4 = 178 15/16"
    "verticals, 1, 5, 14'-10 15/16\"",
    // closed form, recomputed: 317 1/4 − 180 5/16 = 136 15/16"
    "verticals, 2, 5, 11'-4 15/16\"",
    // closed form, recomputed: 60 − 2 1/2 − 2 × 1/32 = 57 7/16"; R1..R5 in six bays
    "horizontals, 1, 30, 4'-9 7/16\"",
    // closed form, recomputed: 60 − 2 1/2 − 2 × 1/8 = 57 1/4"; six rows in six bays have weeps
    "pressure-plates, 4, 36, 4'-9 1/4\"",
    // the head has no lite above it, so no weeps
    "pressure-plates, 5, 6, 4'-9 1/4\"",
    // closed form, recomputed: 60 − 2 1/2 − 2 × 1/32 = 57 7/16"
    "face-caps, 4, 42, 4'-9 7/16\"",
  })
  void isWhatHandCountingGives(String table, int row, int quantity, String length) {
    JsonObject told = table(report(), table).getAsJsonArray("rows").get(row).getAsJsonObject();
    assertThat(told.get("quantity").getAsInt()).isEqualTo(quantity);
    assertThat(printed(told, "cut-length")).isEqualTo(length);
  }

  @Test
  void glassIsWhatHandCountingGives() {
    // R1 to R2: daylight 60 − 2 1/2 by 78 − 2 1/2; glass and order size one inch more
    JsonObject lite =
        table(report(), "glass-sizes").getAsJsonArray("rows").get(1).getAsJsonObject();
    assertThat(lite.get("quantity").getAsInt()).isEqualTo(12);
    JsonObject daylight = lite.getAsJsonObject("daylight");
    assertThat(printed(daylight, "width")).isEqualTo("4'-9 1/2\"");
    assertThat(printed(daylight, "height")).isEqualTo("6'-3 1/2\"");
    JsonObject order = lite.getAsJsonObject("order-size");
    assertThat(printed(order, "width")).isEqualTo("4'-10 1/2\"");
    assertThat(printed(order, "height")).isEqualTo("6'-4 1/2\"");
    JsonObject mass = table(report(), "glass-mass").getAsJsonArray("rows").get(1).getAsJsonObject();
    // closed form, recomputed: 58 1/2 × 76 1/2 / 144 = 31.078 ft²
    assertThat(printed(mass, "area")).isEqualTo("31.08");
    // two plies of 6 mm at 2500 kg/m³ (EN 572-1, from memory): 30 × 2.88727 m² = 86.618 kg
    assertThat(printed(mass, "mass")).isEqualTo("190.96");
  }

  @Test
  void totalsAreTheSumsOfTheRowsAndTheSameWithEveryPieceListed() {
    JsonObject grouped = report();
    JsonObject each = report("--each");
    for (String name : new String[] {"verticals", "horizontals", "pressure-plates", "face-caps"}) {
      JsonObject table = table(grouped, name);
      BigDecimal sum = BigDecimal.ZERO;
      int count = 0;
      for (JsonElement row : table.getAsJsonArray("rows")) {
        sum =
            sum.add(
                row.getAsJsonObject().getAsJsonObject("total-length").get("mm").getAsBigDecimal());
        count += row.getAsJsonObject().get("quantity").getAsInt();
        assertThat(row.getAsJsonObject().getAsJsonArray("piece"))
            .hasSize(row.getAsJsonObject().get("quantity").getAsInt());
      }
      JsonObject totals = table.getAsJsonObject("totals");
      assertThat(totals.getAsJsonObject("total-length").get("mm").getAsBigDecimal())
          .isEqualByComparingTo(sum);
      assertThat(totals.get("quantity").getAsInt()).isEqualTo(count);
      JsonObject listed = table(each, name);
      assertThat(listed.getAsJsonArray("rows")).hasSize(count);
      assertThat(listed.getAsJsonObject("totals").getAsJsonObject("cut-length"))
          .isEqualTo(totals.getAsJsonObject("total-length"));
    }
  }

  @Test
  void followsItsSchema() {
    SchemaCheck schema = SchemaCheck.of("document.schema.json");
    assertThat(schema.faults(report())).isEmpty();
    assertThat(schema.faults(report("--each"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "text, 80, east.80.txt",
    "text, 120, east.120.txt",
    "markdown, 80, east.md",
    "csv, 80, east.csv",
    "json, 80, east.json",
  })
  void isLaidOutAsStored(String form, int width, String stored) {
    Ran ran = Ran.in(LENGTHS, "lengths", "--output", form, "--width", "" + width, "east.wall");
    Fixtures.assertSame(LENGTHS.resolve(stored), ran.out());
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void noLineIsLongerThanAskedFor(int width) {
    for (String each : new String[] {"--width=" + width, "--each"}) {
      Ran ran = Ran.in(LENGTHS, "lengths", each, "--width", "" + width, "east.wall");
      assertThat(ran.out().lines()).allMatch(line -> line.length() <= width);
    }
  }

  @Test
  void metricWallsAreToldInMillimetres() {
    Fixtures.lengths(folder);
    Path east = folder.resolve("east.wall");
    Fixtures.write(
        folder, "east.wall", Fixtures.read(east).replace("units inches", "units millimetres"));
    assertThat(Ran.in(folder, "lengths", "east.wall").out())
        .contains("Cut length, mm")
        // closed form, recomputed: 316 1/2" × 25.4
        .contains("8039.1");
  }

  @Test
  void aWallWithErrorsSaysSoFirst() {
    Fixtures.lengths(folder);
    Path east = folder.resolve("east.wall");
    Fixtures.write(folder, "east.wall", Fixtures.read(east) + "nonsense\n");
    Ran ran = Ran.in(folder, "lengths", "east.wall");
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
    assertThat(ran.out().indexOf("Not to be cut from: 1 error"))
        .isBetween(0, ran.out().indexOf("Verticals"));
    assertThat(Ran.in(folder, "lengths", "--output", "csv", "east.wall").err()).contains("Errors");
  }

  @Test
  void onlyTheWallsAskedForAreTold() {
    Fixtures.lengths(folder);
    String east = Fixtures.read(folder.resolve("east.wall"));
    Fixtures.write(
        folder,
        "both.wall",
        east + "\n" + east.substring(east.indexOf("wall East")).replace("wall East", "wall West"));
    assertThat(Ran.in(folder, "lengths", "both.wall").out()).contains("Wall East", "Wall West");
    assertThat(Ran.in(folder, "lengths", "--wall", "West", "both.wall").out())
        .contains("Wall West")
        .doesNotContain("Wall East");
  }
}
