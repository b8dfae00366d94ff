package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import mullwright.syntax.ParsedFile;
import org.junit.jupiter.api.Test;

/** A metal that no table has cannot be judged, and does not pass for one that may touch any. */
class UnknownMetalTest {
  private static final String CATALOG = RulePage.fixture("fixture.wall");

  private static List<Finding> found(String metal) {
    String wall = RulePage.fixture("isolation-missing/trips.wall");
    String catalog = CATALOG.replaceFirst("(?s)(anchor angle \\{.*?metal +)steel", "$1" + metal);
    assertThat(catalog).isNotEqualTo(metal.equals("steel") ? "" : CATALOG);
    CheckedText checked =
        new CheckedText(
            "isolation-missing/trips.wall",
            Map.of("isolation-missing/trips.wall", wall, "fixture.wall", catalog),
            Rules.find());
    return checked.findings().stream().filter(it -> it.rule().equals("isolation-missing")).toList();
  }

  @Test
  void isToldWithTheMetalThatMayBeMeant() {
    List<Finding> steel = found("steel");
    List<Finding> slip = found("steeel");
    assertThat(slip).hasSameSizeAs(steel).isNotEmpty();
    assertThat(slip.get(0).message()).contains("no metal “steeel” is known");
    Fix fix = slip.get(0).fixes().get(0);
    assertThat(fix.title()).isEqualTo("Write steel");
    assertThat(fix.edits().get(0).origin().file()).isEqualTo("fixture.wall");
  }

  @Test
  void everyNameThatIsOfferedIsRead() {
    assertThat(mullwright.analysis.metal.GalvanicSeries.known())
        .isNotEmpty()
        .isSorted()
        .allMatch(name -> mullwright.analysis.metal.GalvanicSeries.find(name).isPresent())
        .allMatch(
            name ->
                ParsedFile.parse("catalog \"C\" {\nclip c {\nmetal " + name + "\n}\n}")
                    .problems()
                    .isEmpty());
  }
}
