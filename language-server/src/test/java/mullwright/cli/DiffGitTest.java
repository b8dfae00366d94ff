package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Comparisons of revisions of a real repository, read without a checkout. */
class DiffGitTest {
  private static final String WIDE = "lines A..G  spaced 2 @ 5'-0\", 5'-3\", 4'-9\", 2 @ 5'-0\"";

  /** One commit: words replaced, and the changes it must be told as. */
  private record Commit(String from, String to, List<String> told) {}

  private static Commit commit(String from, String to, String... told) {
    return new Commit(from, to, List.of(told));
  }

  private static final List<Commit> HISTORY =
      List.of(
          commit("revision B", "revision C", "wall: revision B → C"),
          commit(
              "lines A..G  spaced 6 @ 5'-0\"",
              WIDE,
              "line D moved 3\" to the right, 15'-0\" → 15'-3\""),
          commit("/// Waiting hall", "/// The waiting hall"),
          commit(
              "row R1      at 3'-0\"",
              "row R1      at 3'-2\"",
              "row R1 moved: 3'-0\" above L1 → 3'-2\" above L1"),
          commit(
              "splice B..F  at 2'-0\"",
              "splice B..F  at 2'-2\"",
              "splices of B..F at L2 moved: 2'-0\" above L2 → 2'-2\" above L2"),
          commit("gap 5/8\"", "gap 3/4\"", "splices of B..F at L2: gap 5/8\" → 3/4\""),
          commit(
              "floor   Roof    at 26'-0\"",
              "floor   Roof    at 26'-3\"",
              "floor Roof moved 3\" up, 26'-0\" → 26'-3\""),
          commit(
              "floor   L2      at 13'-0\"   slab 10\"",
              "floor   L2      at 13'-0\"   slab 12\"",
              "floor L2: slab 10\" → 1'-0\""),
          commit(
              "isolated by bituminous-paint\n",
              "isolated by nylon-pad\n",
              "dead-load anchors of B..F at L2, Roof: isolated by bituminous-paint → nylon-pad"),
          commit(
              "vision V1  rows R1..R2, R4..R5",
              "vision V2  rows R1..R2, R4..R5",
              "lites R1 to R2, R4 to R5, bays A-G: glass V1 → V2",
              "glass V1 is no longer used",
              "glass V2 is now used"),
          commit(
              "wind    field   32 psf in",
              "wind    field   34 psf in",
              "wind zone field: in 32 psf → 34 psf"),
          commit(
              "slab deflection 3/8\"",
              "slab deflection 1/2\"",
              "criteria: slab deflection 3/8\" → 1/2\""),
          commit(
              "clip all  at sill",
              "clip A..F  at sill",
              "clip anchor of G at sill removed: part clip-6"),
          commit(
              "clip A..F  at sill",
              "clip all  at sill",
              "clip anchor of G at sill added: part clip-6"),
          commit("lines A..G ", "lines A, B, C, D1, E, F, G ", "line D is now called D1"),
          commit(
              "ladder A..C\n    stick C..G",
              "ladder A..D1\n    stick D1..G",
              "installation of A..C removed: by ladder, start left",
              "installation of A..D1 added: by ladder, start left",
              "installation of C..G removed: by stick, start left",
              "installation of D1..G added: by stick, start left"),
          commit("wall East {", "wall Quay {", "wall East is now called Quay"),
          commit(
              "finish bronze outside",
              "finish clear outside",
              "wall: finish outside bronze → clear",
              "finish bronze is no longer used"),
          commit("exposure outdoor", "exposure coastal", "criteria: exposure outdoor → coastal"),
          commit(
              "row head    at 4\"",
              "row head    at 5\"",
              "row head moved: 4\" above Roof → 5\" above Roof"));

  @TempDir Path folder;

  private static JsonObject json(Ran ran) {
    assertThat(ran.err()).isEmpty();
    return JsonParser.parseString(ran.out()).getAsJsonObject();
  }

  private static List<String> told(JsonObject all) {
    List<String> words = new ArrayList<>();
    for (JsonElement file : all.getAsJsonArray("files")) {
      JsonArray walls = file.getAsJsonObject().getAsJsonArray("walls");
      for (JsonElement wall : walls) {
        for (JsonElement change : wall.getAsJsonObject().getAsJsonArray("changes")) {
          words.add(change.getAsJsonObject().get("words").getAsString());
        }
      }
    }
    return words;
  }

  @Test
  void eachOfTwentyCommitsIsToldAsWhatItIs() {
    assertThat(HISTORY).hasSize(20);
    SchemaCheck schema = SchemaCheck.of("diff.schema.json");
    try (GitWall wall = new GitWall(folder)) {
      String before = "HEAD";
      String first = "";
      for (Commit commit : HISTORY) {
        wall.edit(commit.from(), commit.to());
        String now = wall.commit("next");
        first = first.isEmpty() ? now : first;
        JsonObject all = json(Ran.in(folder, "diff", "--output", "json", now + "~1", now));
        assertThat(told(all)).as(commit.to()).containsExactlyElementsOf(commit.told());
        assertThat(schema.faults(all)).isEmpty();
        before = now;
      }
      Ran whole = Ran.in(folder, "diff", "--output", "markdown", first, before);
      assertThat(whole.code()).isEqualTo(Exit.FINDINGS);
      assertThat(whole.out()).contains("line D is now called D1", "wall East is now called Quay");
      assertThat(Ran.in(folder, "diff", before, "main").code()).isEqualTo(Exit.CLEAN);
    }
  }

  @Test
  void theWorkTreeAndWhatIsStagedAreStatesToo() {
    try (GitWall wall = new GitWall(folder)) {
      assertThat(Ran.in(folder, "diff").out()).contains("Nothing differs.");
      wall.edit("revision B", "revision C");
      assertThat(told(json(Ran.in(folder, "diff", "--output", "json")))).hasSize(1);
      assertThat(told(json(Ran.in(folder, "diff", "--staged", "--output", "json")))).isEmpty();
      wall.stage();
      assertThat(told(json(Ran.in(folder, "diff", "--staged", "--output", "json")))).hasSize(1);
      assertThat(told(json(Ran.in(folder, "diff", "--output", "json", GitWall.WALL)))).hasSize(1);
    }
  }

  @Test
  void aFileUnderAnotherNameIsTheSameFile() {
    try (GitWall wall = new GitWall(folder)) {
      wall.move(GitWall.WALL, "quay/quay.wall");
      String now = wall.commit("moved");
      JsonObject all = json(Ran.in(folder, "diff", "--output", "json", now + "~1", now));
      JsonObject file = all.getAsJsonArray("files").get(0).getAsJsonObject();
      assertThat(file.get("old").getAsString()).isEqualTo(GitWall.WALL);
      assertThat(file.get("new").getAsString()).isEqualTo("quay/quay.wall");
      assertThat(file.getAsJsonArray("walls")).isEmpty();
    }
  }

  @Test
  void aCatalogThatChangesChangesTheWallsThatUseIt() {
    try (GitWall wall = new GitWall(folder)) {
      Path catalog = folder.resolve("catalog/captured.wall");
      String text = Fixtures.read(catalog);
      Fixtures.write(
          folder,
          "catalog/captured.wall",
          text.replaceFirst("(?s)(profile head-6 .*?face) 2 1/2\"", "$1 3\""));
      String now = wall.commit("a wider head");
      assertThat(told(json(Ran.in(folder, "diff", "--output", "json", now + "~1", now))))
          .containsExactly("profile head-6: face 2 1/2\" → 3\", sightline 2 1/2\" → 3\"");
    }
  }

  @Test
  void sidesThatMergeAsTextAndDisagreeAsAWall() {
    try (GitWall wall = new GitWall(folder)) {
      String base = wall.commit("base");
      wall.branch("ours", base);
      wall.edit("row R4      at 3'-0\"", "row R4      at 1'-0\"");
      String ours = wall.commit("a lower rail");
      wall.branch("theirs", base);
      wall.edit("splice B..F  at 2'-0\"", "splice B..F  at 1'-0\"");
      String theirs = wall.commit("a lower splice");
      Ran ran = Ran.in(folder, "diff", base, ours, theirs);
      assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
      assertThat(ran.out())
          .contains("trips only together", "splice-on-horizontal")
          .doesNotContain("do not merge line by line");
      assertThat(Ran.in(folder, "diff", base, ours, base).code()).isEqualTo(Exit.CLEAN);
    }
  }

  @Test
  void oneFactSaidOtherwiseOnBothSides() {
    try (GitWall wall = new GitWall(folder)) {
      String base = wall.commit("base");
      wall.branch("ours", base);
      wall.edit("row R4      at 3'-0\"", "row R4      at 3'-6\"");
      String ours = wall.commit("higher");
      wall.branch("theirs", base);
      wall.edit("row R4      at 3'-0\"", "row R4      at 2'-9\"");
      String theirs = wall.commit("lower");
      assertThat(Ran.in(folder, "diff", "--width", "120", base, ours, theirs).out())
          .contains("do not merge line by line", "both say otherwise", "row R4 at");
    }
  }

  @Test
  void whatIsNoStateIsSaid() {
    try (GitWall wall = new GitWall(folder)) {
      assertThat(Ran.in(folder, "diff", "nowhere").err())
          .contains("“nowhere” is neither a file or folder here nor a revision");
      assertThat(Ran.in(folder, "diff", "HEAD:none.wall", "HEAD").code()).isNotEqualTo(Exit.CLEAN);
    }
    assertThat(Ran.in(folder.resolveSibling("outside"), "diff").err())
        .contains("no git repository");
  }
}
