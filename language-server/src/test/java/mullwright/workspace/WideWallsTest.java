package mullwright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import mullwright.check.About;
import mullwright.check.Finding;
import mullwright.check.Findings;
import mullwright.check.Group;
import mullwright.check.MemberRule;
import mullwright.check.Rule;
import mullwright.check.Rules;
import mullwright.check.Severity;
import mullwright.check.WallFacts;
import mullwright.layout.VerticalPiece;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A wide wall is checked again around what changed only. What comes out is what checking all of it
 * finds, whatever changes and whatever is wrong with it.
 */
class WideWallsTest {
  private static final String CATALOG = "catalog/captured.wall";
  private static final String PATH = "depot/north.wall";
  private static final int CHANGES = 20;
  private static final int NEVER_WIDE = Integer.MAX_VALUE;

  private static MemoryFiles files;

  @BeforeAll
  static void readCatalog() throws IOException {
    Path catalog = Path.of("..", "examples").resolve(CATALOG);
    files = new MemoryFiles(Map.of(CATALOG, java.nio.file.Files.readString(catalog)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void whatIsFoundAroundChangesIsWhatTheWholeWallTells(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    RandomWalls wall = new RandomWalls(random, 40 + random.nextInt(40));
    Rules rules = Rules.find();
    Workspace kept = new Workspace(files, rules, 2);
    for (int i = 0; i < CHANGES; i++) {
      String text = wall.text();
      Snapshot now = kept.open(PATH, text);
      Snapshot whole = new Workspace(files, rules, NEVER_WIDE).open(PATH, text);
      assertThat(now.findings(PATH, Cancel.NEVER))
          .as("after change %d of %s", i, text)
          .isEqualTo(whole.findings(PATH, Cancel.NEVER));
      assertThat(now.reading(PATH).orElseThrow().failures(Cancel.NEVER)).isEmpty();
      assertThat(now.reading(PATH).orElseThrow().model())
          .isEqualTo(whole.reading(PATH).orElseThrow().model());
      wall.change();
    }
  }

  /** Counts the lengths of vertical it is asked about. */
  private static final class Counting implements MemberRule {
    private final AtomicInteger asked = new AtomicInteger();

    @Override
    public About about() {
      return About.of(Group.SPAN, Severity.WARNING);
    }

    @Override
    public String name() {
      return "counting";
    }

    @Override
    public void check(VerticalPiece it, WallFacts facts, Findings found) {
      asked.incrementAndGet();
    }

    int askedSince() {
      return asked.getAndSet(0);
    }
  }

  /** One of all rules and that one, in which a wall of 16 bays is wide. */
  private static Workspace workspace(Counting counting) {
    List<Rule> rules = new ArrayList<>(Rules.find().all());
    rules.add(counting);
    return new Workspace(files, new Rules(rules), 16);
  }

  private static RandomWalls plain() {
    return RandomWalls.plain(60);
  }

  @Test
  void onlyTheLinesAroundAChangeAreAsked() {
    Counting counting = new Counting();
    Workspace workspace = workspace(counting);
    assertThat(found(workspace, plain())).isEmpty();
    // 61 lines of three lengths
    assertThat(counting.askedSince()).isEqualTo(61 * 3);

    String splice = "splice 30 at 2'-1\" above L2 gap 5/8\"";
    assertThat(found(workspace, plain().with("members", splice))).isEmpty();
    // line 30 and those at the other sides of its two bays
    assertThat(counting.askedSince()).isEqualTo(3 * 3);

    assertThat(found(workspace, plain().with("members", splice + "  // clears it"))).isEmpty();
    assertThat(counting.askedSince()).as("only a remark is new").isZero();

    String lite = "vision V2 rows L2.rail..L2.top bays 12..13";
    assertThat(found(workspace, plain().with("members", splice).with("lites", lite))).isEmpty();
    assertThat(counting.askedSince()).as("a bay and the lines beside it").isEqualTo(2 * 3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "members | splice 30 at 2'-1\" above L2 gap 5/8\"",
        "members | vertical 30 as mullion-6-heavy",
        "anchors | dead-load 30 at L2 offset 1/4\" right",
        "grid | opening louvre LV-1 bays 30..31 rows L2.rail..L2.top by others mass 6 psf"
      })
  void onlyTheLinesAroundAStatementAreAskedWhileItIsTyped(String block, String statement) {
    Counting counting = new Counting();
    Workspace workspace = workspace(counting);
    found(workspace, plain());
    counting.askedSince();
    int most = 0;
    for (int typed = 1; typed <= statement.length(); typed++) {
      RandomWalls half = plain().with(block, statement.substring(0, typed));
      List<Finding> now = found(workspace, half);
      assertThat(now).isEqualTo(found(new Workspace(files, Rules.find(), NEVER_WIDE), half));
      most = Math.max(most, counting.askedSince());
    }
    // of 61 lines of three lengths
    assertThat(most).isBetween(3 * 3, 8 * 3);
  }

  @Test
  void aFindingOfTheWholeWallIsForgottenOnceItIsMended() {
    Counting counting = new Counting();
    Workspace workspace = workspace(counting);
    found(workspace, plain());
    // lites beside a door need safety glazing, and the mend counts over all lites
    String door = "opening door D1 bays 30..31 from L1 to L1.top by others clear 1/4\"";
    assertThat(found(workspace, plain().with("grid", door))).isNotEmpty();
    counting.askedSince();
    assertThat(found(workspace, plain())).isEmpty();
    assertThat(counting.askedSince()).isLessThanOrEqualTo(3 * 3);
  }

  @Test
  void whatIsWrongElsewhereIsToldAgainInTheWordsOfNow() {
    Counting counting = new Counting();
    Workspace workspace = workspace(counting);
    String door = "opening louvre LV-1 bays 40..42 rows L2.rail..L2.top by others mass 6 psf";
    RandomWalls wrong = plain().with("grid", door);
    List<Finding> before = found(workspace, wrong);
    assertThat(before).isNotEmpty();
    counting.askedSince();
    RandomWalls moved = wrong.with("members", "splice 9 at 2'-1\" above L2 gap 5/8\"");
    List<Finding> after = found(workspace, moved);
    assertThat(counting.askedSince()).isBetween(1, 40);
    assertThat(after).isEqualTo(found(new Workspace(files, Rules.find(), NEVER_WIDE), moved));
    assertThat(after).hasSameSizeAs(before);
  }

  @Test
  void ofTwoNarrowWallsOnlyTheOneThatChangedIsAsked() {
    Counting counting = new Counting();
    Workspace workspace = new Workspace(files, new Rules(List.of(counting)), 16);
    String north = RandomWalls.plain(6).with("lites", "// north").text();
    String south = north.substring(north.indexOf("wall North")).replace("North", "South");
    String text = north + "\n" + south.replace("// north", "// south");
    List<String> texts =
        List.of(
            text,
            text.replace("// north", "// NORTH"),
            text.replace("// north", "// NORTH").replace("// south", "// SOUTH"),
            text.replace("// north", "// NORTH").replace("// south", "spandrel S1 bays 2..3"));
    List<Integer> asked = new ArrayList<>();
    for (String each : texts) {
      workspace.open(PATH, each).findings(PATH, Cancel.NEVER);
      asked.add(counting.askedSince());
    }
    // seven lines of three lengths in each of the two
    assertThat(asked).containsExactly(2 * 7 * 3, 0, 0, 7 * 3);
  }

  private static List<Finding> found(Workspace workspace, RandomWalls wall) {
    return workspace.open(PATH, wall.text()).findings(PATH, Cancel.NEVER);
  }
}
