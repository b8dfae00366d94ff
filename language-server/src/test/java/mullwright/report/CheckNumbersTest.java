package mullwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Map;
import mullwright.check.About;
import mullwright.check.Findings;
import mullwright.check.Fix;
import mullwright.check.Group;
import mullwright.check.Rule;
import mullwright.check.Rules;
import mullwright.check.Severity;
import mullwright.check.TextFacts;
import mullwright.check.TextRule;
import mullwright.derivation.Derivation;
import mullwright.model.Origin;
import mullwright.quantity.Length;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cancel;
import mullwright.workspace.MemoryFiles;
import mullwright.workspace.Workspace;
import org.junit.jupiter.api.Test;

/** A finding's numbers, related places and mends in both forms. */
class CheckNumbersTest {
  /** Finds one thing in whatever it is given. */
  static final class GapTooSmall implements TextRule {
    @Override
    public About about() {
      return About.of(Group.SPLICE, Severity.WARNING);
    }

    @Override
    public void check(TextFacts facts, Findings found) {
      Origin place = new Origin("a.wall", 0, new TextRange(0, 3));
      found
          .at(place)
          .piece("splice of vertical B above L2")
          .what("The gap is smaller than what the joint must take.")
          .mend("Make the gap 1/2\".")
          .measured(Derivation.stated("gap", Length.ofInches(1, 64), place))
          .limit(Derivation.assumed("movement", Length.ofInches(7, 16), "common practice"))
          .related(new Origin("a.wall", 0, new TextRange(4, 5)), "the anchor below")
          .fix(new Fix("Widen the gap", List.of(new Fix.Edit(place, "let"))));
    }
  }

  /** Breaks whatever it is given. */
  static final class Breaks implements TextRule {
    @Override
    public About about() {
      return About.of(Group.TEXT, Severity.ERROR);
    }

    @Override
    public void check(TextFacts facts, Findings found) {
      throw new IllegalStateException("broken on purpose");
    }
  }

  private static CheckReport report(Rule... rules) {
    MemoryFiles files = new MemoryFiles(Map.of("a.wall", "let a = 5\"\n"));
    Workspace workspace = new Workspace(files, new Rules(List.of(rules)));
    return CheckReport.of(
        workspace.snapshot(), List.of("a.wall"), path -> "jobs/" + path, Cancel.NEVER);
  }

  @Test
  void peopleReadNumberLimitPlacesAndMend() {
    assertThat(new CheckText(80, Paint.NONE).write(report(new GapTooSmall())))
        .isEqualTo(
            """
            jobs/a.wall

              warning  gap-too-small  jobs/a.wall:1:1
                 1 │ let a = 5"
                   │ ^^^
              splice of vertical B above L2: The gap is smaller than what the joint must
              take.
              measured  gap = 1/64" (0.4 mm)
              limit     movement = 7/16" (11.11 mm)
              see       jobs/a.wall:1:5: the anchor below
              mend      Make the gap 1/2".

            1 file, 0 walls: 1 warning
            Structural and safety results are aids to drafting: a licensed engineer and the
            local code govern.
            """);
  }

  @Test
  void programsReadExactMillimetres() {
    JsonObject finding =
        JsonParser.parseString(CheckJson.write(report(new GapTooSmall())))
            .getAsJsonObject()
            .getAsJsonArray("files")
            .get(0)
            .getAsJsonObject()
            .getAsJsonArray("findings")
            .get(0)
            .getAsJsonObject();
    // closed form, recomputed: 25.4 / 64 and 25.4 × 7 / 16
    assertThat(finding.getAsJsonObject("measured").get("mm").getAsString()).isEqualTo("0.396875");
    assertThat(finding.getAsJsonObject("limit").get("mm").getAsString()).isEqualTo("11.1125");
    assertThat(finding.getAsJsonObject("limit").get("us").getAsString()).isEqualTo("7/16\"");
    assertThat(finding.getAsJsonArray("related")).hasSize(1);
    assertThat(finding.getAsJsonArray("fixes").get(0).getAsJsonObject().get("title").getAsString())
        .isEqualTo("Widen the gap");
  }

  @Test
  void aRuleThatBreaksCostsItsOwnAnswerOnly() {
    CheckReport report = report(new Breaks(), new GapTooSmall());
    assertThat(report.count(Severity.WARNING)).isEqualTo(1);
    assertThat(report.failures()).extracting(failure -> failure.rule()).containsExactly("breaks");
  }
}
