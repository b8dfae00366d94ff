package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Damaged walls: whatever is cut out, doubled or put in, reading gives a model. */
class MutationTest {
  private static final List<String> SCRAPS =
      List.of(
          "{",
          "}",
          "\"",
          ",",
          "..",
          "@",
          "(",
          ")",
          "/",
          "-",
          " - ",
          "0",
          "1/0",
          "1e9",
          "all",
          "every 2",
          "except",
          "A",
          "L2",
          "rail",
          "at",
          "above",
          "below",
          "to",
          "from",
          "spaced",
          "like East mirrored",
          "grid {",
          "members {",
          "let x = x\n",
          "units feet\n",
          "\n",
          "///",
          "/*",
          "5'-6",
          "32 psf",
          "mirrored",
          "rows",
          "bays",
          "only",
          "..\n",
          "use \"w.wall\"\n",
          "row R1 at R1\n",
          "face F lines A..C\n",
          "joint A..B\n",
          "corner B 90 deg\n",
          "opening door D bays all rows all\n",
          "floor below splices",
          "\u2033",
          "\ud83d\ude80");

  @Test
  void nothingAWallCanBeDamagedIntoStopsTheReader() {
    List<String> walls = List.of(Walls.resource("east.wall"), Walls.resource("tower.wall"));
    // a fixed seed: the same texts on every machine
    Random random = new Random(20260101);
    for (int round = 0; round < 1_500; round++) {
      StringBuilder text = new StringBuilder(walls.get(round % walls.size()));
      if (round % 7 == 0) {
        text.append("\nwall West like East mirrored { grid { line X at 3\" right of C } }\n");
      }
      int damages = 1 + random.nextInt(6);
      for (int i = 0; i < damages; i++) {
        damage(text, random);
      }
      Walls files = Walls.withCatalog().with("w.wall", text.toString());
      Model model = files.read("w.wall");
      assertThat(model.problems()).hasSizeLessThanOrEqualTo(Limits.PROBLEMS);
      for (ModelProblem problem : model.problems()) {
        check(files, problem.origin());
      }
      model.references().forEach(reference -> check(files, reference.origin()));
    }
  }

  /** An origin lies in its file. */
  private static void check(Walls files, Origin origin) {
    assertThat(files.text(origin)).isNotNull();
  }

  private static void damage(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    switch (random.nextInt(4)) {
      case 0 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(12)));
      case 1 -> text.insert(at, SCRAPS.get(random.nextInt(SCRAPS.size())));
      case 2 -> {
        int line = text.lastIndexOf("\n", at) + 1;
        int end = text.indexOf("\n", at);
        if (end > line) {
          text.insert(line, text.substring(line, end + 1));
        }
      }
      default -> {
        String scrap = " " + SCRAPS.get(random.nextInt(SCRAPS.size())) + " ";
        int end = Math.min(text.length(), at + 1 + random.nextInt(6));
        text.replace(at, end, scrap);
      }
    }
    if (text.length() == 0) {
      text.append("wall W { }");
    }
  }
}
