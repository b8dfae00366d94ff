package mullwright.cli;

import static mullwright.cli.Fixtures.CHECK;
import static mullwright.cli.Fixtures.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code check --output json} tells programs, held against its published schema. */
class CheckJsonTest {
  private final SchemaCheck schema = SchemaCheck.of("check.schema.json");

  @TempDir Path folder;

  private static JsonObject json(Ran ran) {
    return JsonParser.parseString(ran.out()).getAsJsonObject();
  }

  @Test
  void followsItsSchema() {
    for (Path fixtures : List.of(CHECK, LENGTHS)) {
      assertThat(schema.faults(json(Ran.in(fixtures, "check", "--output", "json")))).isEmpty();
    }
  }

  @Test
  void theSchemaCheckItselfFindsFaults() {
    JsonObject wrong = json(Ran.in(CHECK, "check", "--output", "json"));
    wrong.getAsJsonObject("summary").addProperty("errors", "many");
    wrong.addProperty("stranger", 1);
    wrong.remove("caution");
    assertThat(schema.faults(wrong)).hasSize(3);
  }

  @Test
  void countsLinesAndColumnsFromOneInCharacters() {
    // U+1D11E is one character and two UTF-16 code units
    Fixtures.write(folder, "a.wall", "// first\n/* \ud834\udd1e */ nonsense\n");
    JsonObject finding =
        json(Ran.in(folder, "check", "--output", "json"))
            .getAsJsonArray("files")
            .get(0)
            .getAsJsonObject()
            .getAsJsonArray("findings")
            .get(0)
            .getAsJsonObject();
    assertThat(finding.getAsJsonObject("range").toString())
        .isEqualTo("{\"start\":{\"line\":2,\"column\":9},\"end\":{\"line\":2,\"column\":17}}");
  }

  @Test
  void countsAgreeWithTheFindings() {
    JsonObject all = json(Ran.in(CHECK, "check", "--output", "json"));
    int errors = 0;
    for (var file : all.getAsJsonArray("files")) {
      for (var finding : file.getAsJsonObject().getAsJsonArray("findings")) {
        boolean error = finding.getAsJsonObject().get("severity").getAsString().equals("error");
        errors += error ? 1 : 0;
      }
    }
    assertThat(errors).isPositive();
    assertThat(all.getAsJsonObject("summary").get("errors").getAsInt()).isEqualTo(errors);
  }
}
