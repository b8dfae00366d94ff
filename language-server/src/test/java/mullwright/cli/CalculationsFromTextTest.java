package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values from outside, all the way from the text of a wall to what a program reads. */
class CalculationsFromTextTest {
  private static final double LB = 4.4482216152605;
  private static final double IN = 0.0254;
  private static final double PSF = 47.88026;

  /** Faces as thin as can be, so that spans are those of the worked values. */
  private static final String CATALOG =
      """
      catalog "Plain" {
        units inches
        system plain {
          mullion bar
          jamb bar
          sill rail
          head rail
          intermediate rail
          glass-plane 6"
        }
        profile bar {
          role mullion
          face 1/16"
          depth 6"
          Ix 8 in4
          Sx 2.6 in3
          alloy 6063-T6
          mass 2.4 lb/ft
          bite 0"
        }
        profile rail {
          role intermediate
          face 1/16"
          depth 6"
          Ix 8 in4
          Iy 0.6 in4
          mass 2.2 lb/ft
          bite 0"
        }
        anchor angle {
          bolt-line 0" below top of slab
          height 4"
        }
        glass G {
          ply 6 mm clear
        }
      }
      """;

  @TempDir Path folder;

  private JsonArray tables(String wall) throws IOException {
    Files.writeString(folder.resolve("one.wall"), CATALOG + "\n" + wall);
    Ran ran = Ran.in(folder, "calculations", "--each", "--output", "json", "one.wall");
    assertThat(ran.code()).as(ran.err()).isNotEqualTo(Exit.COULD_NOT);
    return JsonParser.parseString(ran.out())
        .getAsJsonObject()
        .getAsJsonArray("sections")
        .get(0)
        .getAsJsonObject()
        .getAsJsonArray("tables");
  }

  /** The number of a row that holds those words, in SI. */
  private static double number(JsonArray tables, String title, String row, String column) {
    for (JsonElement element : tables) {
      JsonObject table = element.getAsJsonObject();
      if (table.get("title").getAsString().equals(title)) {
        for (JsonElement each : table.getAsJsonArray("rows")) {
          if (each.toString().contains(row)) {
            return each.getAsJsonObject().getAsJsonObject(column).get("si").getAsDouble();
          }
        }
      }
    }
    throw new AssertionError("no " + title + " of " + row + " in " + tables);
  }

  @Test
  void aVerticalOverTwoUnequalSpans() throws IOException {
    JsonArray tables =
        tables(
            """
            wall Test {
              system plain
              criteria {
                wind service
                wind field 30 psf in, 30 psf out
              }
              grid {
                lines A..C spaced 2 @ 60
                floor L1 at 0
                floor L2 at 168
                row sill at 0
                row head at 288
              }
              members {
                vertical all as bar
                horizontal all
              }
              anchors {
                clip all at sill, head
                dead-load all at L2 part angle
              }
              lites {
                vision G all
              }
            }
            """);
    // CHECK 1.1c, closed form, recomputed: 168 + 120 in, 12.5 lb/in, EI = 80e6 lb·in²
    String one = "vertical B";
    holds(number(tables, "Verticals: greatest moment", one, "value") / (LB * IN), 35_100);
    holds(number(tables, "Verticals: deflection under wind", one, "value") / IN, 0.8606);
    // AAMA TIR-A11, clause from memory: span ÷ 240 + 1/4 in beyond 13 ft 6 in
    holds(number(tables, "Verticals: deflection under wind", one, "limit") / IN, 0.95);
    holds(number(tables, "Anchors: load in", "clip of vertical B at sill", "value") / LB, 841.07);
    holds(
        number(tables, "Anchors: load in", "dead-load anchor of vertical B at L2", "value") / LB,
        2301.43);
    holds(number(tables, "Anchors: load in", "clip of vertical B at head", "value") / LB, 457.5);
    // by hand: 24 ft at 2.4 lb/ft, two rails of 5 ft at 2.2 lb/ft, 120 ft² of 3.073 psf
    double lite = 60 * 288 * IN * IN * 15 * 9.80665 / LB;
    assertThat(
            number(tables, "Anchors: load down", "dead-load anchor of vertical B at L2", "value")
                / LB)
        .isCloseTo(57.6 + 22 + lite, within(0.003 * lite));
  }

  private static void holds(double found, double expected) {
    // the frame's outer edges are a hair beyond the worked spans
    assertThat(found).isCloseTo(expected, within(2e-3 * expected));
  }

  @Test
  void aLiteOfABuildingByItsSite() throws IOException {
    JsonArray tables =
        tables(
            """
            wall Test {
              system plain
              criteria {
                wind ultimate
                wind speed 115 mph, exposure C, roof height 50', building width 80'
                wind enclosed, corners none, roof slope 5 deg
              }
              grid {
                lines A, B at 0, 60
                floor L1 at 0
                row sill at 0
                row head at 144
              }
              members {
                vertical all as bar
                horizontal all
              }
              lites {
                vision G all
              }
            }
            """);
    // CHECK 10a, ASCE 7-16 chapter 30, recomputed: 60 ft², allowable +18.06 and −19.76 psf
    String title = "Lites: wind and what they bear";
    holds(number(tables, title, "lite in bay A-B", "wind-in") / PSF, 18.06);
    holds(number(tables, title, "lite in bay A-B", "wind-out") / PSF, 19.76);
  }

  @Test
  void allThatWeighsComesDown() throws IOException {
    for (String example : new String[] {"ferry-terminal/east.wall", "tower/north.wall"}) {
      Path examples = Path.of("").toAbsolutePath().getParent().resolve("examples");
      Ran ran = Ran.in(examples, "calculations", "--output", "json", example);
      for (JsonElement section :
          JsonParser.parseString(ran.out()).getAsJsonObject().getAsJsonArray("sections")) {
        JsonArray tables = section.getAsJsonObject().getAsJsonArray("tables");
        double weighs = total(tables, "Weight of the wall");
        assertThat(total(tables, "Where it comes down")).isCloseTo(weighs, within(1e-6 * weighs));
        assertThat(number(tables, "Where it comes down", "dead-load anchors", "weight"))
            .isCloseTo(weighs, within(1e-6 * weighs));
      }
    }
  }

  private static double total(JsonArray tables, String title) {
    for (JsonElement table : tables) {
      if (table.getAsJsonObject().get("title").getAsString().equals(title)) {
        return table
            .getAsJsonObject()
            .getAsJsonObject("totals")
            .getAsJsonObject("weight")
            .get("si")
            .getAsDouble();
      }
    }
    throw new AssertionError("no " + title);
  }
}
