package mullwright.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.StringJoiner;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.syntax.ParsedFile;

/** Walls for tests of cutting, from text; all data invented. */
final class CutWalls {
  private CutWalls() {}

  /** A catalog whose parts are bought in those lengths. */
  static String catalog(String vertical, String horizontal, String cover) {
    return "units inches\n"
        + "catalog {\n"
        + "system s { mullion m\njamb j\nsill r\nhead r\nintermediate r\n"
        + "pressure-plate p\nface-cap fc }\n"
        + "profile m { role mullion\nface 2.5\ndepth 6\nalloy 6063-T6\n"
        + vertical
        + " }\n"
        + "profile j { role jamb\nface 2.5\ndepth 6\nalloy 6063-T6\n"
        + vertical
        + " }\n"
        + "profile r { role intermediate\nface 2.5\ndepth 6\nalloy 6063-T5\n"
        + horizontal
        + " }\n"
        + "reinforcement bar { metal steel\nstock 240 }\n"
        + "pressure-plate p { width 2.5\n"
        + cover
        + " }\n"
        + "face-cap fc { face 2.5\n"
        + cover
        + " }\n"
        + "glass V1 { ply 1/4\"\nspace 1/2\"\nply 1/4\" }\n"
        + "}\n";
  }

  /** A wall of some bays of a width and one storey, with more lines in its blocks. */
  static String wall(String name, int bays, String bay, String height, String blocks) {
    return "wall "
        + name
        + " { system s\ngrid {\nlines 1.."
        + (bays + 1)
        + " spaced "
        + bays
        + " @ "
        + bay
        + "\nfloor L1 at 0\nrow sill at 2 above L1\nrow mid at 40 above L1\nrow head at "
        + height
        + " above L1 }\nmembers { vertical all\nhorizontal all }\nlites { vision V1 all }\n"
        + blocks
        + "}\n";
  }

  /** The layouts of all walls of a text. */
  static List<WallLayout> layouts(String text) {
    ParsedFile file = ParsedFile.parse(text);
    Model model =
        ModelReader.read(
            "test.wall",
            path -> path.equals("test.wall") ? Optional.of(file) : Optional.empty(),
            new ModelMemory());
    assertThat(model.problems()).isEmpty();
    return model.walls().stream().map(wall -> LayoutBuilder.layOut(wall, model.catalog())).toList();
  }

  /** One to three walls of random bays and shops, and what they are cut from. */
  static String random(Random random) {
    StringBuilder text =
        new StringBuilder(catalog(stock(random, 150), stock(random, 100), stock(random, 150)));
    int walls = 1 + random.nextInt(3);
    boolean oneShop = random.nextBoolean();
    String shared = shop(random);
    if (oneShop) {
      text.append("project \"P\" { ").append(shared).append(" }\n");
    }
    for (int w = 0; w < walls; w++) {
      String finish = random.nextInt(3) == 0 ? "" : "finish " + pick(random, "bronze", "clear");
      String blocks = finish + "\n" + (oneShop ? "" : shop(random) + "\n");
      text.append(
          wall(
              "W" + w,
              1 + random.nextInt(9),
              30 + random.nextInt(60) + fraction(random),
              60 + random.nextInt(85) + fraction(random),
              blocks));
    }
    return text.toString();
  }

  private static String stock(Random random, int least) {
    StringJoiner lengths = new StringJoiner(", ", "stock ", "");
    boolean cost = random.nextInt(3) == 0;
    for (int i = random.nextInt(3); i >= 0; i--) {
      int length = least + 24 * random.nextInt(9);
      lengths.add(length + (cost ? " cost " + (length + random.nextInt(40)) : ""));
    }
    return lengths.toString();
  }

  private static String shop(Random random) {
    StringBuilder shop = new StringBuilder("fabrication {\n");
    if (random.nextBoolean()) {
      shop.append("kerf ").append(pick(random, "1/8\"", "3/16\"", "3 mm", "0\"")).append('\n');
      shop.append("end-trim ").append(pick(random, "1/2\"", "1\"", "0\"")).append('\n');
    }
    if (random.nextInt(4) == 0) {
      shop.append("pieces-per-bar ").append(2 + random.nextInt(4)).append('\n');
    }
    for (int i = random.nextInt(4); i > 0; i--) {
      shop.append("on-hand ")
          .append(1 + random.nextInt(3))
          .append(" x ")
          .append(30 + random.nextInt(200))
          .append(" of ")
          .append(pick(random, "m", "j", "r", "p", "fc", "nobody"))
          .append(random.nextInt(3) == 0 ? " in bronze" : "")
          .append('\n');
    }
    return shop.append('}').toString();
  }

  private static String fraction(Random random) {
    return pick(random, "", ".5", ".25", ".0625", ".125");
  }

  private static String pick(Random random, String... words) {
    return words[random.nextInt(words.length)];
  }
}
