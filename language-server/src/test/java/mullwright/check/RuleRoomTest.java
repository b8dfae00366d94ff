package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every rule has its class, its page and its walls; none of them stands without the others. */
class RuleRoomTest {
  private static final Path PAGES = Path.of("src", "main", "resources", "mullwright", "check");
  private static final Path SOURCES = Path.of("src", "main", "java", "mullwright", "check");

  private final Rules rules = Rules.find();

  @TestFactory
  Stream<DynamicTest> everyRuleHasItsPage() {
    return rules.all().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.name(), () -> holdPage(rule)));
  }

  private static void holdPage(Rule rule) throws Exception {
    assertThat(PAGES.resolve(rule.name() + ".md")).isRegularFile();
    RulePage page = RulePage.of(rule.name());
    assertThat(page.headings()).isEqualTo(RulePage.HEADINGS);
    assertThat(page.summary()).endsWith(".");
    assertThat(page.fixtures()).as("the page shows a wall that trips").contains("trips.wall");
    // the first sentence of the class is the summary users read
    String source = Files.readString(SOURCES.resolve(rule.getClass().getSimpleName() + ".java"));
    String words = source.replaceAll("\\s*\\n \\* ?", " ").replaceAll("\\s+", " ");
    assertThat(words).contains(page.summary());
  }

  @TestFactory
  Stream<DynamicTest> everyRuleHasAWallThatTripsAndOneThatPasses() {
    return rules.all().stream()
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule.name(),
                    () -> {
                      Path folder = Fixture.ROOT.resolve(rule.name());
                      assertThat(folder.resolve("trips.wall")).isRegularFile();
                      assertThat(folder.resolve("passes.wall")).isRegularFile();
                      for (String shown : RulePage.of(rule.name()).fixtures()) {
                        assertThat(folder.resolve(shown)).isRegularFile();
                      }
                    }));
  }

  @Test
  void noPageAndNoFolderIsWithoutARule() throws Exception {
    Set<String> names = rules.all().stream().map(Rule::name).collect(Collectors.toSet());
    Set<String> strangers = new TreeSet<>();
    try (Stream<Path> pages = Files.list(PAGES);
        Stream<Path> folders = Files.list(Fixture.ROOT)) {
      pages
          .map(page -> page.getFileName().toString())
          .filter(name -> name.endsWith(".md") && !names.contains(name.replace(".md", "")))
          .forEach(strangers::add);
      folders
          .filter(Files::isDirectory)
          .map(folder -> folder.getFileName().toString())
          .filter(name -> !names.contains(name))
          .forEach(strangers::add);
    }
    assertThat(strangers).isEmpty();
  }

  @Test
  void theCatalogueIsWhole() {
    // the groups this program promises, by name
    assertThat(rules.all().stream().map(Rule::name))
        .containsAll(
            List.of(
                "splice-unsupported",
                "splice-on-horizontal",
                "splice-far-from-anchor",
                "splice-gap-too-small",
                "splice-in-vision",
                "splice-reinforced",
                "anchor-locked",
                "anchor-missing",
                "anchor-end-without-plates",
                "anchor-out-of-reach",
                "anchor-over-capacity",
                "isolation-missing",
                "isolation-overdone",
                "span-deflection",
                "span-unchecked",
                "stock-exceeded",
                "glass-overloaded",
                "glass-deflection",
                "glass-oversize",
                "glass-safety",
                "glass-bite",
                "glass-drift",
                "glass-missing",
                "glass-opacity",
                "hole-edge",
                "hole-clash",
                "hole-misaligned",
                "zone-open",
                "weep-below",
                "order-impossible",
                "duplicate",
                "unknown-name",
                "wrong-unit",
                "unused",
                "shadowed-rule",
                "count-mismatch"));
  }
}
