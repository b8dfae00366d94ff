package mullwright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import mullwright.bench.GeneratedWalls;
import mullwright.bench.LocalEdit;
import mullwright.check.Rules;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One thing after another is changed in a wall of many equal bays and floors. What is remembered
 * from state to state changes no answer: pieces, loads and findings are those of a workspace that
 * has just read the text.
 */
class LocalEditsTest {
  private static final int EDITS = 60;
  private static final String CATALOG = "catalog/captured.wall";
  private static final String PATH = "tower/tall.wall";
  private static final Rules RULES = Rules.find();

  /** Slips and repairs beside the exceptions of {@link LocalEdit}; any may be undone later. */
  private static final String[][] MORE = {
    {"gap 5/8\"\n  }", "gap 1/4\"\n  }"},
    {"as mullion-6-heavy", "as mullion"},
    {"bays 9..11  rows L7", "bays 9..12  rows L7"},
    {"mass 6 psf", "mass 60 psf"},
    {"rail    at 3'-0\"", "rail    at 3'-10\""},
    {"row band    at 1'-0\"", "row band    at 1'-1 1/2\""},
    {"10\"     all", "8\"      all"},
    {"field   24 psf in", "field   124 psf in"},
    {"vision  V1  rows rail..top\n", "vision  V1  rows rail..top except L3.rail..L3.top\n"},
    {"spaced 14'-0\"", "spaced 24'-0\""},
    {"wall North", "/// Told anew.\nwall North"},
    {"stick 9..", "ladder 9.."},
  };

  @ParameterizedTest
  @CsvSource({"12, 20, 1", "30, 24, 2", "14, 60, 3"})
  void answersAreThoseOfAFreshReading(int floors, int bays, int seed) throws IOException {
    Path examples = Path.of("..", "examples");
    String catalog = java.nio.file.Files.readString(examples.resolve(CATALOG));
    String tower = java.nio.file.Files.readString(examples.resolve("tower/north.wall"));
    String text = GeneratedWalls.tower(tower, floors, bays);
    SplittableRandom random = new SplittableRandom(seed);
    Workspace workspace = new Workspace(new MemoryFiles(Map.of(CATALOG, catalog)), RULES);
    workspace.open(PATH, text).findings(List.of(PATH), Cancel.NEVER);
    for (int i = 0; i < EDITS; i++) {
      String[] edit = edit(text, random);
      int at = text.indexOf(edit[0]);
      text = text.replace(edit[0], edit[1]);
      Snapshot now = workspace.change(PATH, at, at + edit[0].length(), edit[1]);
      assertThat(now.file(PATH).orElseThrow().text()).isEqualTo(text);
      if (i % 4 == 3) {
        Workspace fresh = new Workspace(new MemoryFiles(Map.of(CATALOG, catalog)), RULES);
        Snapshot cold = fresh.open(PATH, text);
        Reading kept = now.reading(PATH).orElseThrow();
        Reading anew = cold.reading(PATH).orElseThrow();
        assertThat(kept.layouts()).isEqualTo(anew.layouts());
        assertThat(now.findings(List.of(PATH), Cancel.NEVER))
            .isEqualTo(cold.findings(List.of(PATH), Cancel.NEVER));
        assertThat(kept.failures(Cancel.NEVER)).isEmpty();
      } else {
        now.findings(List.of(PATH), Cancel.NEVER);
      }
    }
  }

  /** A change that can be made in the text, one way or the other, of something that stands once. */
  private static String[] edit(String text, SplittableRandom random) {
    while (true) {
      int which = random.nextInt(LocalEdit.ALL.size() + MORE.length);
      String one;
      String other;
      if (which < LocalEdit.ALL.size()) {
        one = LocalEdit.ALL.get(which).one();
        other = LocalEdit.ALL.get(which).other();
      } else {
        one = MORE[which - LocalEdit.ALL.size()][0];
        other = MORE[which - LocalEdit.ALL.size()][1];
      }
      for (String[] way : new String[][] {{other, one}, {one, other}}) {
        int at = text.indexOf(way[0]);
        if (at >= 0 && text.indexOf(way[0], at + 1) < 0) {
          return way;
        }
      }
    }
  }
}
