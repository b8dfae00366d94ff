package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import mullwright.syntax.LineTable;
import mullwright.syntax.TextRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every wall of every rule has the findings drawn in it, and no others.
 *
 * <p>{@code -Dfixtures.write} draws the marks anew and writes {@code mended.wall}; look at every
 * line it changed.
 */
class FixturesTest {
  private static final boolean WRITE = System.getProperty("fixtures.write") != null;
  private final Rules rules = Rules.find();

  @TestFactory
  Stream<DynamicTest> findsWhatIsDrawnAndNoMore() {
    return Fixture.all().stream()
        .map(fixture -> DynamicTest.dynamicTest(fixture.path(), () -> compare(fixture)));
  }

  private void compare(Fixture fixture) throws IOException {
    if (WRITE) {
      write(fixture);
    }
    CheckedText checked = fixture.check(rules);
    assertThat(checked.failures()).isEmpty();
    List<Mark.Placed> marks = new ArrayList<>(fixture.marks());
    // a mark that says more is of fewer findings, so it chooses first
    marks.sort(Comparator.comparing(placed -> -placed.mark().words().length()));
    List<Finding> unmarked = new ArrayList<>(checked.findings());
    List<Mark.Placed> unfound = new ArrayList<>();
    for (Mark.Placed mark : marks) {
      Optional<Finding> its =
          unmarked.stream()
              .filter(finding -> finding.origin().file().equals(fixture.path()))
              .filter(f -> mark.isOf(f, checked.place(f.origin()), fixture.text()))
              .findFirst();
      its.ifPresentOrElse(unmarked::remove, () -> unfound.add(mark));
    }
    assertThat(unfound).as("marks without a finding").isEmpty();
    assertThat(unmarked.stream().map(f -> told(f, checked, fixture)))
        .as("findings without a mark")
        .isEmpty();
    boolean trips = marks.stream().anyMatch(m -> m.mark().rule().equals(fixture.rule()));
    assertThat(trips).as("has a mark of its own rule").isEqualTo(fixture.trips());
    if (fixture.passes()) {
      assertThat(marks).isEmpty();
    }
  }

  private static String told(Finding finding, CheckedText checked, Fixture fixture) {
    String where =
        finding.origin().file().equals(fixture.path())
            ? "line "
                + (LineTable.of(fixture.text()).line(checked.place(finding.origin()).start()) + 1)
            : finding.origin().file();
    return where + ": " + finding.rule() + ": " + finding.message();
  }

  @TestFactory
  Stream<DynamicTest> theFirstFixMends() {
    return Fixture.all().stream()
        .filter(Fixture::trips)
        .map(fixture -> DynamicTest.dynamicTest(fixture.path(), () -> mend(fixture)));
  }

  private void mend(Fixture trips) throws IOException {
    Optional<String> mended = mended(trips);
    Optional<Fixture> expected =
        Fixture.all().stream().filter(f -> f.path().equals(trips.mendedPath())).findFirst();
    if (WRITE && mended.isPresent()) {
      Files.writeString(Fixture.ROOT.resolve(trips.mendedPath()), mended.get());
      return;
    }
    assertThat(expected.map(Fixture::bare))
        .as("%s is it after the first fix, and there only if there is a fix", trips.mendedPath())
        .isEqualTo(mended);
  }

  /** The bare text after the first fix of the first finding of its own rule. */
  private Optional<String> mended(Fixture trips) {
    Map<String, String> texts = Fixture.texts();
    texts.put(trips.path(), trips.bare());
    CheckedText checked = new CheckedText(trips.path(), texts, rules);
    return checked.findings().stream()
        .filter(finding -> finding.rule().equals(trips.rule()))
        .findFirst()
        .flatMap(finding -> finding.fixes().stream().findFirst())
        .map(fix -> checked.after(fix).get(trips.path()));
  }

  private void write(Fixture fixture) throws IOException {
    Map<String, String> texts = Fixture.texts();
    texts.put(fixture.path(), fixture.bare());
    CheckedText checked = new CheckedText(fixture.path(), texts, rules);
    List<String> lines = new ArrayList<>(fixture.bare().lines().toList());
    LineTable table = LineTable.of(fixture.bare());
    List<Finding> findings = new ArrayList<>(checked.findings());
    findings.removeIf(finding -> !finding.origin().file().equals(fixture.path()));
    for (int i = findings.size() - 1; i >= 0; i--) {
      TextRange range = checked.place(findings.get(i).origin());
      int line = table.line(range.start());
      lines.add(line + 1, Mark.drawn(findings.get(i), range, fixture.bare()));
    }
    Files.writeString(fixture.file(), String.join("\n", lines) + "\n");
    throw new AssertionError("written; run again without -Dfixtures.write");
  }
}
