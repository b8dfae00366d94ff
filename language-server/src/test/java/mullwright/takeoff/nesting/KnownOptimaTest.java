package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import mullwright.bench.CuttingStockFiles;
import mullwright.bench.CuttingStockFiles.Instance;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Proof;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Published instances and invented orders whose optima are known from elsewhere. */
class KnownOptimaTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "nesting");

  private static List<Instance> instances() {
    return CuttingStockFiles.folder(FOLDER);
  }

  @Test
  void allAreRead() {
    // counted in the files: 22 published, 28 invented
    assertThat(instances()).hasSize(50);
  }

  @TestFactory
  Stream<DynamicTest> areProvedWithACertificateThatHolds() {
    return instances().stream()
        .map(
            instance ->
                DynamicTest.dynamicTest(
                    instance.family() + " " + instance.name(), () -> isProved(instance)));
  }

  private static void isProved(Instance instance) {
    Planned plan = (Planned) Nesting.solve(instance.problem(), Limits.work(6_000_000_000L));
    assertThat(PlanCheck.faults(instance.problem(), plan)).isEmpty();
    assertThat(CertificateCheck.fault(instance.problem(), plan.certificate())).isEmpty();
    assertThat(plan.cost()).isEqualTo(instance.optimum());
    assertThat(plan.lowerBound()).isEqualTo(instance.optimum());
    assertThat(plan.certificate().bound()).isEqualTo(instance.optimum());
    if (plan.proof() == Proof.SEARCH) {
      assertThat(plan.search()).contains("all ways to combine them were searched");
    }
  }
}
