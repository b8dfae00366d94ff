package mullwright.report.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Identifiers against published ones. */
class GlobalIdsTest {
  @ParameterizedTest
  @CsvSource({
    // CHECK 17b, from memory: the smallest and the largest of the 128-bit numbers
    "00000000-0000-0000-0000-000000000000, 0000000000000000000000",
    "ffffffff-ffff-ffff-ffff-ffffffffffff, 3$$$$$$$$$$$$$$$$$$$$$",
    // closed form, recomputed: 128 bits, big-endian, to the base 64
    "12345678-1234-5678-1234-567812345678, 0ID5Pu4ZHMU18qLdWID5Pu",
  })
  void areWrittenToTheBase64(String id, String written) {
    assertThat(GlobalIds.compressed(UUID.fromString(id))).isEqualTo(written);
  }

  @Test
  void followFromNames() {
    // documentation of Python's module uuid: uuid5(NAMESPACE_DNS, 'python.org'); the name space DNS
    // is that of RFC 9562, section 6.6, from memory
    assertThat(
            GlobalIds.named(UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8"), "python.org"))
        .isEqualTo(UUID.fromString("886313e1-3b8a-5372-9b90-0c9aee199e5d"));
  }

  @Test
  void ofOneNameTwiceAreTwo() {
    GlobalIds ids = new GlobalIds("a");
    GlobalIds others = new GlobalIds("a");
    StepValue first = ids.of("x");
    assertThat(ids.of("x")).isNotEqualTo(first);
    assertThat(others.of("x")).isEqualTo(first);
    assertThat(new GlobalIds("b").of("x")).isNotEqualTo(first);
  }
}
