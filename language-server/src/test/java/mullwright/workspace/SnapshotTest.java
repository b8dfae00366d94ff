package mullwright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import mullwright.check.Finding;
import mullwright.check.Rules;
import mullwright.model.Origin;
import mullwright.syntax.TextRange;
import org.junit.jupiter.api.Test;

/** What snapshots compute, what they take over, and what they never do: change. */
class SnapshotTest {
  private static final Rules RULES = Rules.find();

  private static final String CATALOG =
      """
      catalog "Small, invented" {
        units inches
        isolation paint
        clip small {
          projektion 2
        }
      }
      """;

  private static final String WALL =
      """
      use "small.wall"

      wall East {
        units inches
        grid {
          lines A..C spaced 2 @ 60
          floor L1 at 0
          floor L2 at 156
        }
      }
      """;

  private static Workspace workspace() {
    Workspace workspace =
        new Workspace(new MemoryFiles(Map.of("small.wall", CATALOG, "west.wall", WALL)), RULES);
    workspace.open("east.wall", WALL);
    return workspace;
  }

  @Test
  void keepsWhatWasMadeFromTheVerySameTexts() {
    Workspace workspace = workspace();
    Reading east = workspace.snapshot().reading("east.wall").orElseThrow();
    Reading west = workspace.snapshot().reading("west.wall").orElseThrow();
    Snapshot edited = workspace.change("east.wall", 0, 0, "// a comment\n");
    assertThat(edited.reading("west.wall")).containsSame(west);
    assertThat(edited.reading("east.wall").orElseThrow()).isNotSameAs(east);
    assertThat(edited.file("small.wall").orElseThrow())
        .as("a catalog that nobody touched is not read again")
        .isSameAs(workspace.lookAgain().file("small.wall").orElseThrow());
  }

  @Test
  void readsAWallAnewWhenItsCatalogChanges() {
    Workspace workspace = workspace();
    Reading before = workspace.snapshot().reading("east.wall").orElseThrow();
    Snapshot after = workspace.open("small.wall", CATALOG + "\n");
    assertThat(after.reading("east.wall").orElseThrow()).isNotSameAs(before);
  }

  @Test
  void seesAUsedFileThatComesIntoBeing() {
    Workspace workspace = new Workspace(new MemoryFiles(Map.of()), RULES);
    Snapshot alone = workspace.open("east.wall", WALL);
    assertThat(rules(alone, "east.wall")).contains("broken-use");
    Snapshot both = workspace.open("small.wall", CATALOG);
    assertThat(rules(both, "east.wall")).doesNotContain("broken-use");
  }

  @Test
  void tellsFindingsInTheFileTheyBelongToAndOnce() {
    Snapshot snapshot = workspace().snapshot();
    Map<String, List<Finding>> found =
        snapshot.findings(List.of("east.wall", "west.wall"), Cancel.NEVER);
    assertThat(found.get("small.wall"))
        .extracting(Finding::rule)
        .containsOnlyOnce("unknown-property");
    assertThat(found.get("east.wall"))
        .allMatch(finding -> finding.origin().file().equals("east.wall"));
  }

  private static List<String> rules(Snapshot snapshot, String path) {
    return snapshot.findings(List.of(path), Cancel.NEVER).get(path).stream()
        .map(Finding::rule)
        .toList();
  }

  @Test
  void givesUpWhenCancelledAndAnswersTheNextQuestion() {
    Snapshot snapshot = workspace().snapshot();
    assertThatThrownBy(() -> snapshot.findings(List.of("east.wall"), () -> true))
        .isInstanceOf(CancellationException.class);
    assertThat(snapshot.findings(List.of("east.wall"), Cancel.NEVER)).containsKey("east.wall");
  }

  @Test
  void findsThePlaceOfAnOriginAndNothingWhereItIsGone() {
    Snapshot snapshot = workspace().snapshot();
    int wall = WALL.indexOf("wall East");
    int segment = snapshot.file("east.wall").orElseThrow().segmentAt(wall);
    int start = wall - snapshot.file("east.wall").orElseThrow().segmentStart(segment);
    Origin east = new Origin("east.wall", segment, new TextRange(start, start + 4));
    assertThat(snapshot.place(east)).contains(new FilePlace("east.wall", wall, wall + 4));
    assertThat(snapshot.place(new Origin("gone.wall", 0, new TextRange(0, 1)))).isEmpty();
    assertThat(snapshot.place(new Origin("east.wall", 99, new TextRange(0, 1)))).isEmpty();
  }

  /** Findings after any edits are those of a fresh reading of the same texts. */
  @Test
  void rememberingChangesNoResult() {
    SplittableRandom random = new SplittableRandom(20260101);
    String[] pieces = {"{", "}", " ", "A", "L2", "60", "\n", "wall West like East\n", "floor", ""};
    Workspace workspace = workspace();
    Map<String, String> mirror = new HashMap<>(Map.of("east.wall", WALL, "small.wall", CATALOG));
    workspace.open("small.wall", CATALOG);
    for (int i = 0; i < 400; i++) {
      String path = random.nextInt(4) == 0 ? "small.wall" : "east.wall";
      String text = mirror.get(path);
      int start = random.nextInt(text.length() + 1);
      int end = Math.min(text.length(), start + random.nextInt(6));
      String piece = pieces[random.nextInt(pieces.length)];
      mirror.put(path, text.substring(0, start) + piece + text.substring(end));
      Snapshot now = workspace.change(path, start, end, piece);
      if (i % 10 == 9) {
        Workspace fresh = new Workspace(new MemoryFiles(mirror), RULES);
        assertThat(now.findings(List.of("east.wall"), Cancel.NEVER))
            .isEqualTo(fresh.snapshot().findings(List.of("east.wall"), Cancel.NEVER));
      } else if (i % 3 == 0) {
        now.findings(List.of("east.wall", "small.wall"), Cancel.NEVER);
      }
      if (i % 50 == 49) {
        mirror.put("east.wall", WALL);
        workspace.open("east.wall", WALL);
      }
    }
  }
}
