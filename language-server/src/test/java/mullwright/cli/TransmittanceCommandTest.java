package mullwright.cli;

import static mullwright.cli.Fixtures.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The transmittance of a wall on the command line. */
class TransmittanceCommandTest {
  /** The module of handbook CHECK 14a as a wall of one bay between two half members' faces. */
  private static final String WALL =
      """
      units millimetres
      catalog "T" {
        system t {
          mullion bar
          jamb bar
          sill rail
          head rail
          intermediate rail
          glass-plane 150
        }
        profile bar {
          face 60
          depth 150
          U 2.2 W/m2K
        }
        profile rail {
          role intermediate
          face 60
          depth 150
          U 2.4 W/m2K
        }
        glass V {
          ply 6 annealed
          U 1.1 W/m2K
          edge-psi 0.11 W/mK
        }
      }
      wall W {
        system t
        grid {
          lines A, B at 0, 1500
          floor L1 at 0
          row sill at 30
          row head at 2430
        }
        members {
          vertical all as jamb
          horizontal all
        }
        lites {
          vision V all
        }
      }
      """;

  @TempDir private Path folder;

  private static JsonObject json(Ran ran) {
    return JsonParser.parseString(ran.out()).getAsJsonObject();
  }

  @Test
  void theSumByHandIsPrinted() throws Exception {
    Files.writeString(folder.resolve("w.wall"), WALL);
    Ran ran = Ran.in(folder, "transmittance", "--output", "json", "w.wall");
    // the wall hangs from nothing, and says so
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
    // ISO 12631, component method, worked by hand: 1440 × 2340 clear, all round members of 60 mm
    double glass = 1.44 * 2.34 * 1.1;
    double frame = 2 * 0.06 * 2.46 * 2.2 + 2 * 0.06 * 1.44 * 2.4;
    double edge = 2 * (1.44 + 2.34) * 0.11;
    double expected = (glass + frame + edge) / (1.56 * 2.46);
    JsonArray tables =
        json(ran).getAsJsonArray("sections").get(0).getAsJsonObject().getAsJsonArray("tables");
    assertThat(numbers(tables)).anySatisfy(n -> assertThat(n).isCloseTo(expected, within(0.005)));
  }

  private static List<Double> numbers(JsonArray tables) {
    List<Double> found = new ArrayList<>();
    Matcher number = Pattern.compile("-?[0-9]+[.][0-9]+").matcher(tables.toString());
    while (number.find()) {
      found.add(Double.parseDouble(number.group()));
    }
    return found;
  }

  @Test
  void textFitsTheTerminalAndCarriesTheCaution() {
    for (int width : new int[] {80, 120}) {
      Ran ran = Ran.in(LENGTHS, "transmittance", "--width", "" + width, "east.wall");
      assertThat(ran.out().lines()).allMatch(line -> line.length() <= width);
    }
  }

  @Test
  void whatTheCatalogDoesNotStateIsToldNotAssumed() throws Exception {
    Files.writeString(folder.resolve("w.wall"), WALL.replace("    U 2.4 W/m2K\n", ""));
    Ran ran = Ran.in(folder, "transmittance", "w.wall");
    assertThat(ran.out()).contains("rail");
    assertThat(ran.out()).doesNotContain("0.00");
  }
}
