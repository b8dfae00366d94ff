package mullwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import mullwright.layout.HolePlaces;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Marks that last: kept, never given twice, merged. */
class MarkLedgerTest {
  @TempDir Path folder;

  private static String issue(MarkLedger ledger, int from, int to) {
    for (int i = from; i < to; i++) {
      ledger.source("bronze").mark("V", "vertical mullion-6 " + i);
    }
    return ledger.write();
  }

  @Test
  void aMarkIsKeptFromOneRevisionToTheNext() {
    MarkLedger first = MarkLedger.read("");
    String mark = first.source("bronze").mark("V", "vertical mullion-6 1000");
    MarkLedger later = MarkLedger.read(first.write());
    assertThat(later.source("bronze").mark("V", "vertical mullion-6 1000")).isEqualTo(mark);
    assertThat(later.fresh()).isEmpty();
    // a changed piece, or the same in another finish, gets another
    assertThat(later.source("bronze").mark("V", "vertical mullion-6 1001")).isNotEqualTo(mark);
    assertThat(later.source("clear").mark("V", "vertical mullion-6 1000")).isNotEqualTo(mark);
    assertThat(later.fresh()).hasSize(2);
  }

  @Test
  void noMarkIsGivenTwiceAndAMarkTakenByAnotherPieceIsPassedOver() {
    MarkLedger many = MarkLedger.read("");
    Set<String> marks = new HashSet<>();
    for (int i = 0; i < 5000; i++) {
      assertThat(marks.add(many.source("").mark("H", "horizontal rail-6 " + i))).isTrue();
    }
    // the mark the piece would get is in the ledger with another print
    MarkLedger plain = MarkLedger.read("");
    String wanted = plain.source("").mark("H", "horizontal rail-6 7");
    MarkLedger taken = MarkLedger.read(wanted + "  00000000000000000000  some other piece\n");
    assertThat(taken.faults()).isEmpty();
    assertThat(taken.source("").mark("H", "horizontal rail-6 7")).isNotEqualTo(wanted);
    assertThat(taken.write()).contains(wanted + "  00000000000000000000");
  }

  @Test
  void aChangeInOneBayRenumbersNothingElse() {
    WallLayout layout = Examples.layout("ferry-terminal/east.wall");
    HolePlaces holes = HolePlaces.of(layout);
    MarkLedger ledger = MarkLedger.read("");
    PieceMarks before = PieceMarks.of(layout, holes, ledger.source("bronze"));
    MarkLedger kept = MarkLedger.read(ledger.write());
    // asked in another order, as when a bay is put in before the others
    kept.source("bronze").mark("V", "vertical something new");
    PieceMarks after = PieceMarks.of(layout, holes, kept.source("bronze"));
    layout
        .verticals()
        .forEach(
            piece ->
                assertThat(after.vertical(piece.index()))
                    .isEqualTo(before.vertical(piece.index())));
    assertThat(kept.fresh()).hasSize(1);
  }

  @Test
  void theLedgerIsSortedAndTheSameForTheSameMarks() {
    MarkLedger ledger = MarkLedger.read("");
    String text = issue(ledger, 0, 50);
    List<String> lines = text.lines().filter(line -> !line.startsWith("#")).toList();
    assertThat(lines).hasSize(50).isSorted();
    assertThat(MarkLedger.read(text).write()).isEqualTo(text);
    // in any order asked for
    MarkLedger other = MarkLedger.read("");
    issue(other, 25, 50);
    assertThat(issue(other, 0, 25)).isEqualTo(text);
  }

  @Test
  void damagedLinesAndMarksGivenTwiceAreTold() {
    MarkLedger ledger =
        MarkLedger.read(
            "# head\nV-AAAA  00000000000000000001  a\nV-AAAA  00000000000000000002  b\n<<<<<<< ours\n");
    assertThat(ledger.faults()).extracting(MarkLedger.Fault::line).containsExactly(3, 4);
    assertThat(ledger.faults().get(0).sentence()).contains("V-AAAA", "two pieces");
  }

  @Test
  void twoBranchesThatIssueMarksMergeInGit() throws Exception {
    assumeTrue(hasGit(), "git is not installed");
    String base = issue(MarkLedger.read(""), 0, 120);
    MarkLedger one = MarkLedger.read(base);
    MarkLedger two = MarkLedger.read(base);
    // both change bay C: one of the pieces is the same in both
    String ours = issue(one, 1000, 1003);
    String theirs = issue(two, 1002, 1005);
    Files.writeString(folder.resolve("base"), base);
    Files.writeString(folder.resolve("ours"), ours);
    Files.writeString(folder.resolve("theirs"), theirs);
    Process merge =
        new ProcessBuilder("git", "merge-file", "-p", "ours", "base", "theirs")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    String merged = new String(merge.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(merge.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(merge.exitValue()).as(merged).isZero();
    MarkLedger both = MarkLedger.read(merged);
    assertThat(both.faults()).isEmpty();
    // all five are there, and nothing is issued anew
    String again = issue(both, 1000, 1005);
    assertThat(both.fresh()).isEmpty();
    assertThat(again).isEqualTo(merged);
  }

  private static boolean hasGit() throws InterruptedException {
    try {
      return new ProcessBuilder("git", "--version").start().waitFor() == 0;
    } catch (IOException missing) {
      return false;
    }
  }
}
