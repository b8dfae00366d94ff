package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A slip in the treatment of a ply is told: read as no treatment, it would count as annealed. */
class GlassWordsTest {
  private static CheckedText check(String ply) {
    String text = "units millimetres\ncatalog {\n  glass V {\n    ply 6 " + ply + "\n  }\n}\n";
    return new CheckedText("a.wall", Map.of("a.wall", text), Rules.find());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          temperedclear | “temperedclear” | tempered clear
          tempred clear | “tempred” | tempered clear
          clear, heat-strenghtened | “heat-strenghtened” | clear, heat-strengthened
          untempered bronze | “untempered” | tempered bronze
          anealed | “anealed” | annealed
          pattterned | “pattterned” | patterned
          """)
  void aSlipIsToldWithWhatIsMeant(String ply, String told, String meant) {
    CheckedText checked = check(ply);
    Finding finding = checked.findings().get(0);
    assertThat(checked.findings()).hasSize(1);
    assertThat(finding.message()).contains("no treatment of glass named " + told);
    assertThat(checked.after(finding.fixes().get(0)).get("a.wall")).contains("ply 6 " + meant);
    assertThat(check(meant).findings()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "clear",
        "fully-tempered bronze",
        "heat strengthened low-iron",
        "clear FT",
        "acid-etched tempered",
        "body-tinted grey, toughened"
      })
  void otherWordsAreTheDraftersOwn(String ply) {
    assertThat(check(ply).findings()).isEqualTo(List.of());
  }

  @Test
  void aWordThatOnlyHoldsATreatmentIsNone() {
    assertThat(check("untempered").findings()).hasSize(1);
  }
}
