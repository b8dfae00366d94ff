package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import mullwright.bench.CuttingStockFiles;
import mullwright.bench.CuttingStockFiles.Instance;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Proof;
import mullwright.takeoff.nesting.SearchTree.Closed;
import mullwright.takeoff.nesting.SearchTree.Filling;
import mullwright.takeoff.nesting.SearchTree.Over;
import mullwright.takeoff.nesting.SearchTree.Prices;
import mullwright.takeoff.nesting.SearchTree.Split;
import mullwright.takeoff.nesting.SearchTree.Step;
import org.junit.jupiter.api.Test;

/** A search that is written down is followed to the letter, and any word changed is found. */
class SearchTreeCheckTest {
  /** By hand: three pieces of 4 on bars of 10 need two bars, since a bar holds two. */
  private static final NestingProblem THREE =
      NestingProblem.oneStock(10, List.of(new Part(4, 3)), 0, 0);

  private static Prices prices(long four, long scale) {
    SortedMap<Long, Long> prices = new TreeMap<>();
    prices.put(4L, four);
    return new Prices(prices, scale, List.of(0L));
  }

  private static Filling two() {
    SortedMap<Long, Integer> pieces = new TreeMap<>();
    pieces.put(4L, 2);
    return new Filling(0, pieces);
  }

  /** Two pieces on no bar: then a bar holds one. Two pieces on one bar: one piece, no cost left. */
  private static final Step NO_BAR = new Closed(prices(1, 1));

  private static final Step ONE_BAR = new Closed(prices(1, 1));

  private static Certificate certificate(long bound, long target, Prices filter, Step root) {
    // prices that show nothing, so that the search must
    return new Certificate(
        new TreeMap<>(),
        1,
        List.of(0L),
        bound,
        List.of(),
        Optional.of(new SearchTree(target, List.of(filter), root)));
  }

  private static Optional<String> fault(long bound, long target, Prices filter, Step root) {
    return CertificateCheck.fault(THREE, certificate(bound, target, filter, root));
  }

  @Test
  void followsASearchWorkedByHand() {
    Step root = new Split(prices(0, 1), two(), List.of(NO_BAR, ONE_BAR));
    assertThat(fault(2, 1, prices(0, 1), root)).isEmpty();
    assertThat(fault(3, 1, prices(0, 1), root)).contains("the search proves 2 and no more");
  }

  @Test
  void holdsEveryStepToItsWord() {
    Prices none = prices(0, 1);
    assertThat(fault(2, 1, none, new Split(none, two(), List.of(NO_BAR))))
        .contains("search: a step asks for 0 to 0 bars of 1");
    assertThat(fault(2, 1, none, new Split(none, two(), List.of(NO_BAR, new Over()))))
        .contains("search: bars that cost 1 are not over the target");
    assertThat(fault(2, 1, none, new Closed(prices(1, 1))))
        .contains("search: a filling left beats the prices of a step");
    // at half the price it is not beaten, but 3 is within 2 bars' worth: nothing is closed at 2
    assertThat(fault(3, 2, none, new Closed(prices(1, 2))))
        .contains("search: a step is closed at prices that leave 1");
    assertThat(fault(2, 1, none, new SearchTree.Bare(none)))
        .contains("search: a step has fillings left that it says it has not");
    assertThat(fault(2, 1, prices(2, 1), NO_BAR))
        .contains("search: a bar of stock 1 is worth 4 at a filter");
    assertThat(fault(2, 1, prices(-1, 1), NO_BAR))
        .contains("search: length 4 has a negative price");
    assertThat(fault(2, 1, prices(1, 0), NO_BAR))
        .contains("search: a scale is not positive, or a stock has no premium");
  }

  @Test
  void aFilteredListIsCompleteWithoutTheSolver() {
    // by hand: at 1 for each piece and 2 for a bar three pieces leave a loss of −1: closed at once
    assertThat(fault(2, 1, prices(1, 2), new Over())).isEmpty();
  }

  @Test
  void listsFillingsWithinALimitOfPieces() {
    // by hand: bars of 7 hold 3+4, 4 or 3 of the two pieces; of one piece a bar only 4 or 3
    FillingList list =
        new FillingList(new long[] {4, 3}, new long[] {1, 1}, new int[] {1, 1}, 7, 100);
    assertThat(list.of(7, Integer.MAX_VALUE, 1)).hasSize(3);
    assertThat(list.of(7, Integer.MAX_VALUE, 2)).hasSize(1);
    assertThat(list.of(7, 1, 1)).hasSize(2);
    assertThat(list.of(3, 2, 1)).hasSize(1);
    // widths beyond any table: cells round down and lose nothing
    long much = 987_654_321_012L;
    FillingList wide =
        new FillingList(
            new long[] {4 * much + 1, 3 * much + 2},
            new long[] {1, 1},
            new int[] {1, 1},
            7 * much + 3,
            100);
    assertThat(wide.of(7 * much + 3, Integer.MAX_VALUE, 2)).hasSize(1);
    assertThat(wide.of(7 * much + 2, Integer.MAX_VALUE, 2)).isEmpty();
  }

  /** One published instance that needs one bar more than prices show, proved and then forged. */
  @Test
  void aPublishedInstanceIsProvedByASearchThatCannotBeForged() {
    Instance instance =
        CuttingStockFiles.folder(Path.of("src", "test", "resources", "nesting")).stream()
            .filter(each -> each.name().equals("long-bars-3"))
            .findFirst()
            .orElseThrow();
    NestingProblem problem = instance.problem();
    Planned plan = (Planned) Nesting.solve(problem, Limits.work(6_000_000_000L));
    Certificate certificate = plan.certificate();
    assertThat(plan.proof()).isEqualTo(Proof.SEARCH);
    assertThat(certificate.bound()).isEqualTo(instance.optimum()).isEqualTo(plan.cost());
    assertThat(CertificateCheck.fault(problem, certificate)).isEmpty();
    SearchTree tree = certificate.search().orElseThrow();
    assertThat(CertificateCheck.fault(problem, certificate.with(tree, certificate.bound() + 1)))
        .isPresent();
    assertThat(forged(problem, certificate, tree, tree.target() + 1, tree.filters(), tree.root()))
        .isPresent();
    assertThat(forged(problem, certificate, tree, tree.target(), List.of(), tree.root()))
        .isPresent();
    // the first way that a bar count is closed is left out, then closed without prices
    Split split = (Split) tree.root();
    List<Step> fewer = split.bars().subList(0, split.bars().size() - 1);
    assertThat(
            forged(
                problem,
                certificate,
                tree,
                tree.target(),
                tree.filters(),
                new Split(split.prices(), split.filling(), fewer)))
        .isPresent();
    assertThat(
            forged(
                problem,
                certificate,
                tree,
                tree.target(),
                tree.filters(),
                new Closed(split.prices())))
        .isPresent();
  }

  private static Optional<String> forged(
      NestingProblem problem,
      Certificate certificate,
      SearchTree tree,
      long target,
      List<Prices> filters,
      Step root) {
    return CertificateCheck.fault(
        problem,
        certificate.with(
            new SearchTree(target, filters, root), certificate.bound() + (target - tree.target())));
  }

  @Test
  void aRackIsCountedDown() {
    // by hand: two pieces of 4; one bar of 4 on the rack for nothing, others of 10 for 1 each. No
    // plan costs 0: the rack holds one piece
    NestingProblem problem =
        new NestingProblem(
            List.of(Stock.unlimited(10, 1), new Stock(4, 0, 1)),
            List.of(new Part(4, 2)),
            0,
            0,
            NestingProblem.ANY_NUMBER);
    SortedMap<Long, Long> one = new TreeMap<>();
    one.put(4L, 1L);
    Prices filter = new Prices(new TreeMap<>(), 1, List.of(0L, 0L));
    SortedMap<Long, Integer> piece = new TreeMap<>();
    piece.put(4L, 1);
    Prices closing = new Prices(one, 2, List.of(0L, 0L));
    Step root =
        new Split(filter, new Filling(1, piece), List.of(new Closed(closing), new Closed(closing)));
    Certificate certificate =
        new Certificate(
            new TreeMap<>(),
            1,
            List.of(0L, 0L),
            1,
            List.of(),
            Optional.of(new SearchTree(0, List.of(filter), root)));
    assertThat(CertificateCheck.fault(problem, certificate)).isEmpty();
    // if the rack had two bars, a plan of cost 0 there would be
    NestingProblem two =
        new NestingProblem(
            List.of(Stock.unlimited(10, 1), new Stock(4, 0, 2)),
            problem.parts(),
            0,
            0,
            NestingProblem.ANY_NUMBER);
    assertThat(CertificateCheck.fault(two, certificate)).isPresent();
  }
}
