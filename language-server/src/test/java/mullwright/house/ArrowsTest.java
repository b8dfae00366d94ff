package mullwright.house;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.conditions.ArchConditions.onlyDependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds the arrows of the house: which package may import which.
 *
 * <p>The table is written from what each room is for, not from what it happens to import today.
 * What is not named is forbidden.
 */
class ArrowsTest {
  /** Room → the rooms it stands on (what those stand on is included). */
  private static final Map<String, List<String>> STANDS_ON = new LinkedHashMap<>();

  static {
    STANDS_ON.put("syntax", List.of());
    STANDS_ON.put("format", List.of("syntax"));
    STANDS_ON.put("quantity", List.of());
    STANDS_ON.put("derivation", List.of("quantity"));
    STANDS_ON.put("model", List.of("syntax", "quantity", "derivation"));
    STANDS_ON.put("layout", List.of("model"));
    STANDS_ON.put("analysis", List.of("layout"));
    STANDS_ON.put("takeoff", List.of("layout"));
    STANDS_ON.put("installation", List.of("layout"));
    STANDS_ON.put("check", List.of("analysis", "installation", "takeoff", "format"));
    STANDS_ON.put("drawing", List.of("layout"));
    STANDS_ON.put("review", List.of("check", "takeoff"));
    STANDS_ON.put("workspace", List.of("review", "drawing"));
    STANDS_ON.put("report", List.of("workspace"));
    STANDS_ON.put("server", List.of("workspace"));
    // a page on this machine is guarded alike, whatever it shows
    STANDS_ON.put("loopback", List.of());
    STANDS_ON.put("preview", List.of("workspace", "loopback"));
    // the editor in a browser is one more client of the server, and saves what it edits
    STANDS_ON.put("web", List.of("server", "loopback"));
    // makes the lexer's table of the generated lexer, and is not in the jar
    STANDS_ON.put("automaton", List.of("syntax"));
    // finishes the jar, and is not in it
    STANDS_ON.put("linking", List.of());
    STANDS_ON.put("cli", List.of("report", "server", "preview", "web"));
  }

  /** Libraries that one room only may know, beside the JDK. */
  private static final Map<String, List<String>> LIBRARIES =
      Map.ofEntries(
          Map.entry("syntax", List.of("org.antlr.v4.runtime..")),
          Map.entry("automaton", List.of("org.antlr.v4.runtime..")),
          Map.entry("check", List.of("com.google.auto.service..")),
          Map.entry("drawing", List.of("org.apache.pdfbox..")),
          Map.entry("workspace", List.of("org.eclipse.jgit..")),
          Map.entry(
              "report",
              List.of(
                  "com.google.auto.service..",
                  "com.google.gson..",
                  "org.apache.pdfbox..",
                  "org.dhatim.fastexcel..")),
          Map.entry(
              "server",
              List.of("com.google.auto.service..", "com.google.gson..", "org.eclipse.lsp4j..")),
          Map.entry("linking", List.of("org.objectweb.asm..")),
          Map.entry("loopback", List.of("com.sun.net.httpserver..")),
          Map.entry("preview", List.of("com.google.gson..", "com.sun.net.httpserver..")),
          Map.entry(
              "web",
              List.of("com.google.gson..", "com.sun.net.httpserver..", "org.java_websocket..")),
          Map.entry("cli", List.of("com.google.auto.service..", "picocli..")));

  private static JavaClasses house;

  @BeforeAll
  static void readTheHouse() {
    house =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("mullwright");
  }

  @TestFactory
  Stream<DynamicTest> everyRoomImportsOnlyWhatItStandsOn() {
    return STANDS_ON.keySet().stream()
        .filter(room -> house.stream().anyMatch(type -> inRoom(type.getPackageName(), room)))
        .map(room -> DynamicTest.dynamicTest(room, () -> ruleOf(room).check(house)));
  }

  @Test
  void everyPackageIsARoomOfTheTable() {
    Set<String> strangers = new LinkedHashSet<>();
    house.forEach(
        type -> {
          if (STANDS_ON.keySet().stream().noneMatch(room -> inRoom(type.getPackageName(), room))) {
            strangers.add(type.getPackageName());
          }
        });
    org.assertj.core.api.Assertions.assertThat(strangers).isEmpty();
  }

  @Test
  void roomsStandInNoCircle() {
    slices()
        .matching("mullwright.(*)..")
        .should()
        .beFreeOfCycles()
        .because("data flows one way: text, tree, model, layout, analysis, findings, faces")
        .check(house);
  }

  @Test
  void onlyTheCommandLinePrintsOrExits() {
    noClasses()
        .that(resideOutsideOfPackages("mullwright.cli.."))
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(Throwable.class, "printStackTrace")
        .because("a stray line on standard output breaks the talk with the editor")
        .check(house);
  }

  @Test
  void noStageReadsClockOrChance() {
    noClasses()
        .that(
            resideInAnyPackage(
                "mullwright.syntax..",
                "mullwright.format..",
                "mullwright.quantity..",
                "mullwright.derivation..",
                "mullwright.model..",
                "mullwright.layout..",
                "mullwright.analysis..",
                "mullwright.installation..",
                "mullwright.check..",
                "mullwright.drawing..",
                "mullwright.review.."))
        .should()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(java.util.Locale.class, "getDefault")
        .orShould()
        .callMethod(System.class, "getenv", String.class)
        .because("the same text gives the same bytes on any machine, locale and time zone")
        .check(house);
  }

  @Test
  void onlyTheWorkspaceOpensFiles() {
    noClasses()
        .that(
            resideInAnyPackage(
                "mullwright.syntax..",
                "mullwright.format..",
                "mullwright.quantity..",
                "mullwright.derivation..",
                "mullwright.model..",
                "mullwright.layout..",
                "mullwright.analysis..",
                "mullwright.takeoff..",
                "mullwright.installation..",
                "mullwright.drawing.."))
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.nio.file.Files")
        .because("workspace is the one door to files")
        .check(house);
  }

  @Test
  void theGeneratedLexerServesTheMakingOfItsTableOnly() {
    noClasses()
        .that(resideOutsideOfPackages("mullwright.automaton..", "mullwright.syntax.antlr.."))
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("mullwright.syntax.antlr.WallLexer")
        .because("at every start it would work out anew what the table holds")
        .check(house);
  }

  private static ArchRule ruleOf(String room) {
    List<String> allowed = new ArrayList<>(List.of("java..", "javax.."));
    allowed.addAll(LIBRARIES.getOrDefault(room, List.of()));
    for (String below : closure(room)) {
      allowed.add("mullwright." + below + "..");
    }
    String[] packages = allowed.toArray(String[]::new);
    return classes()
        .that(resideInAnyPackage("mullwright." + room + ".."))
        .should(onlyDependOnClassesThat(resideInAnyPackage(packages)))
        .because(room + " stands on " + String.join(", ", STANDS_ON.get(room)) + " and no more");
  }

  private static Set<String> closure(String room) {
    Set<String> found = new LinkedHashSet<>(Arrays.asList(room));
    for (String below : STANDS_ON.get(room)) {
      found.addAll(closure(below));
    }
    return found;
  }

  private static boolean inRoom(String packageName, String room) {
    String base = "mullwright." + room;
    return packageName.equals(base) || packageName.startsWith(base + ".");
  }
}
