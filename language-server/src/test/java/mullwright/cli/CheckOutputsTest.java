package mullwright.cli;

import static mullwright.cli.Fixtures.CHECK;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** What {@code check} writes for code hosts and build servers. */
class CheckOutputsTest {
  /** The OASIS schema of SARIF 2.1.0, JSON Schema draft 7. */
  private static JsonSchema sarif() {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
        .getSchema(
            Fixtures.read(
                Path.of("src", "test", "resources", "schemas", "sarif-schema-2.1.0.json")));
  }

  @TempDir Path folder;

  private void ferry(String from, String to) {
    Fixtures.write(
        folder,
        "catalog/captured.wall",
        Fixtures.read(Path.of("..", "examples", "catalog", "captured.wall")));
    String text = Fixtures.read(Path.of("..", "examples", "ferry-terminal", "east.wall"));
    assertThat(text).contains(from);
    Fixtures.write(folder, "ferry terminal/east.wall", text.replace(from, to));
  }

  private static final String SPLICE = "at 2'-0\" above L2  gap 5/8\"";
  private static final String COLLIDES = "at 3'-0\" above L2  gap 5/8\"";

  @Test
  void sarifFollowsTheSchemaOfTheStandard() {
    ferry(SPLICE, COLLIDES + "  // allow splice-far-from-anchor: the engineer checked it");
    for (Ran ran :
        new Ran[] {
          Ran.in(CHECK, "check", "--output", "sarif"),
          Ran.in(folder, "check", "--output", "sarif"),
          Ran.in(Path.of("..", "examples").toAbsolutePath(), "check", "--output", "sarif")
        }) {
      assertThat(sarif().validate(ran.out(), InputFormat.JSON)).isEmpty();
    }
    JsonObject run =
        JsonParser.parseString(Ran.in(folder, "check", "--output", "sarif").out())
            .getAsJsonObject()
            .getAsJsonArray("runs")
            .get(0)
            .getAsJsonObject();
    JsonArray results = run.getAsJsonArray("results");
    Set<String> rules = new HashSet<>();
    Set<String> prints = new HashSet<>();
    results.forEach(
        result -> {
          JsonObject one = result.getAsJsonObject();
          rules.add(one.get("ruleId").getAsString() + " " + one.has("suppressions"));
          prints.add(one.get("partialFingerprints").toString());
          assertThat(one.toString()).contains("\"uri\":\"ferry%20terminal/east.wall\"");
        });
    assertThat(rules).contains("splice-on-horizontal false", "splice-far-from-anchor true");
    assertThat(prints).hasSize(results.size());
  }

  @Test
  void theSchemaFindsFaults() {
    String wrong =
        Ran.in(CHECK, "check", "--output", "sarif").out().replace("\"error\"", "\"dreadful\"");
    assertThat(sarif().validate(wrong, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void annotationsAreOneLineEach() {
    ferry(SPLICE, COLLIDES);
    String out = Ran.in(folder, "check", "--output", "github").out();
    assertThat(out)
        .contains("::error file=ferry terminal/east.wall,line=40,endLine=40,col=5,")
        .contains("title=splice-on-horizontal::splice of vertical B above L2: ");
    // a rule that trips on five verticals of one line stands there once
    List<String> places =
        out.lines().filter(line -> line.startsWith("::")).map(l -> l.split("::")[1]).toList();
    assertThat(places).hasSizeGreaterThan(1).doesNotHaveDuplicates();
    Fixtures.write(folder, "a,b:100%.wall", "nonsense\n");
    assertThat(Ran.in(folder, "check", "--output", "github", "a,b:100%.wall").out())
        .contains("file=a%2Cb%3A100%25.wall,line=1,");
  }

  @Test
  void codeQualityHasAFingerprintForEachFinding() {
    ferry(SPLICE, COLLIDES);
    JsonArray issues =
        JsonParser.parseString(Ran.in(folder, "check", "--output", "gitlab").out())
            .getAsJsonArray();
    Set<String> prints = new HashSet<>();
    issues.forEach(issue -> prints.add(issue.getAsJsonObject().get("fingerprint").getAsString()));
    assertThat(issues).isNotEmpty();
    assertThat(prints).hasSize(issues.size());
  }

  @Test
  void junitIsXmlWithAFailureForEachRule() throws Exception {
    ferry(SPLICE, COLLIDES);
    Fixtures.write(folder, "quiet.wall", "// nothing\n");
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(
                new InputSource(
                    new StringReader(Ran.in(folder, "check", "--output", "junit").out())));
    assertThat(document.getDocumentElement().getTagName()).isEqualTo("testsuites");
    Element ferry = null;
    for (int at = 0; at < document.getElementsByTagName("testsuite").getLength(); at++) {
      Element suite = (Element) document.getElementsByTagName("testsuite").item(at);
      ferry = suite.getAttribute("name").contains("ferry") ? suite : ferry;
    }
    assertThat(ferry).isNotNull();
    int failures = ferry.getElementsByTagName("failure").getLength();
    assertThat(failures).isGreaterThan(1);
    assertThat(ferry.getAttribute("failures")).isEqualTo(Integer.toString(failures));
    assertThat(document.getElementsByTagName("testcase").getLength()).isGreaterThan(3);
  }

  @Test
  void allowedInTheText() {
    ferry(
        SPLICE, COLLIDES + "  // allow splice-far-from-anchor, splice-on-horizontal: drawn apart");
    assertThat(Ran.in(folder, "check", "ferry terminal").out())
        .doesNotContain("error  splice-on-horizontal", "warning  splice-far-from-anchor");
    ferry(SPLICE, COLLIDES + "  // allow splice-far-from-anchor: drawn apart");
    assertThat(Ran.in(folder, "check", "ferry terminal").out())
        .contains("splice-on-horizontal")
        .doesNotContain("warning  splice-far-from-anchor");
    ferry(SPLICE, SPLICE + "  // allow splice-far-from-anchor: drawn apart");
    assertThat(Ran.in(folder, "check", "ferry terminal").out()).contains("allows nothing");
  }

  @Test
  void whatGuardsPeopleStaysAsAWarning() {
    String anchors = "dead-load   A, G    at L2   ";
    ferry(anchors, anchors.replace("A, G", "A   "));
    Ran tripped = Ran.in(folder, "check", "ferry terminal");
    assertThat(tripped.out()).contains("error  splice-unsupported");
    String text = Fixtures.read(folder.resolve("ferry terminal/east.wall"));
    Fixtures.write(
        folder,
        "ferry terminal/east.wall",
        text.replace(
            "    vertical    A, G",
            "    // allow splice-unsupported: stands on the slab by others\n    vertical    A, G"));
    assertThat(Ran.in(folder, "check", "ferry terminal").out())
        .contains("warning  splice-unsupported", "stands on the slab by others")
        .doesNotContain("error  splice-unsupported");
  }

  @Test
  void severitiesOfTheProject() {
    ferry(SPLICE, COLLIDES);
    Fixtures.write(
        folder,
        "mullwright.properties",
        "severity.splice-far-from-anchor = off\nseverity.splice-on-horizontal = information\n");
    Ran ran = Ran.in(folder, "check", "ferry terminal");
    assertThat(ran.out())
        .contains("information  splice-on-horizontal")
        .doesNotContain("splice-far-from-anchor", "error  splice-on-horizontal");
    Fixtures.write(
        folder, "mullwright.properties", "severity.splice-unsupported=off\nseverity.none=off\n");
    Ran refused = Ran.in(folder, "check", "ferry terminal");
    assertThat(refused.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(refused.err()).contains("guards people", "the name of a rule");
  }

  @Test
  void onlyWhatIsNotInTheBaseline() {
    ferry(SPLICE, COLLIDES);
    Ran kept = Ran.in(folder, "check", "--write-baseline", "known.json");
    assertThat(kept.code()).isEqualTo(Exit.CLEAN);
    assertThat(Ran.in(folder, "check", "--baseline", "known.json").code()).isEqualTo(Exit.CLEAN);
    // lines above do not make an old finding new
    String text = Fixtures.read(folder.resolve("ferry terminal/east.wall"));
    Fixtures.write(folder, "ferry terminal/east.wall", "// a remark\n\n" + text);
    assertThat(Ran.in(folder, "check", "--baseline", "known.json").code()).isEqualTo(Exit.CLEAN);
    ferry(SPLICE, SPLICE);
    Ran mended = Ran.in(folder, "check", "--baseline", "known.json");
    assertThat(mended.err()).contains("no longer stand");
    assertThat(Ran.in(folder, "check", "--baseline", "ferry terminal/east.wall").err())
        .contains("is no baseline");
  }

  @Test
  void onlyWhatARevisionDidNotHave() {
    try (GitWall wall = new GitWall(folder)) {
      wall.edit("at 2'-0\" above L2", "at 3'-0\" above L2");
      String base = wall.commit("a splice in a rail");
      assertThat(Ran.in(folder, "check").code()).isEqualTo(Exit.FINDINGS);
      assertThat(Ran.in(folder, "check", "--base", base).code()).isEqualTo(Exit.CLEAN);
      wall.edit("dead-load   A, G    at L2   ", "dead-load   A       at L2   ");
      Ran ran = Ran.in(folder, "check", "--base", base);
      assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
      assertThat(ran.out()).contains("splice-unsupported").doesNotContain("splice-on-horizontal");
    }
  }

  @Test
  void theCacheAndTheThreadsChangeNoByte() {
    ferry(SPLICE, COLLIDES);
    for (int at = 0; at < 40; at++) {
      Fixtures.write(
          folder,
          "many/w" + at + ".wall",
          Fixtures.read(folder.resolve("ferry terminal/east.wall"))
              .replace("5'-0\"", "5'-" + at % 9 + "\"")
              .replace("wall East", "wall W" + at));
    }
    for (String form : new String[] {"text", "json", "sarif", "gitlab", "junit"}) {
      String plain = Ran.in(folder, "check", "--threads", "1", "--output", form).out();
      assertThat(Ran.in(folder, "check", "--threads", "4", "--output", form).out())
          .isEqualTo(plain);
      String[] kept = {"check", "--cache", "kept", "--output", form};
      assertThat(Ran.in(folder, kept).out()).isEqualTo(plain);
      assertThat(Ran.in(folder, kept).out()).isEqualTo(plain);
    }
    // an entry that is damaged is as good as none
    Fixtures.write(folder, "many/w3.wall", Fixtures.read(folder.resolve("many/w4.wall")));
    assertThat(Ran.in(folder, "check", "--cache", "kept").out())
        .isEqualTo(Ran.in(folder, "check").out());
  }

  @Test
  void shardsAreTheWhole() {
    for (int at = 0; at < 7; at++) {
      Fixtures.write(folder, "w" + at + ".wall", "nonsense\n");
    }
    Set<String> seen = new HashSet<>();
    int files = 0;
    for (int shard = 1; shard <= 3; shard++) {
      JsonArray found =
          JsonParser.parseString(
                  Ran.in(folder, "check", "--shard", shard + "/3", "--output", "json").out())
              .getAsJsonObject()
              .getAsJsonArray("files");
      found.forEach(file -> seen.add(file.getAsJsonObject().get("file").getAsString()));
      files += found.size();
    }
    assertThat(seen).hasSize(7);
    assertThat(files).isEqualTo(7);
    assertThat(Ran.in(folder, "check", "--shard", "4/3").err()).contains("no part of a whole");
  }
}
