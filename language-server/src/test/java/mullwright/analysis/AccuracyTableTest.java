package mullwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Print a new table with the main method of its class when a method has changed on purpose. */
class AccuracyTableTest {
  private static String published(String name) throws IOException {
    try (InputStream in = AccuracyTable.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void publishedTableIsWhatTheMethodsDoToday() throws IOException {
    assertThat(AccuracyTable.text()).isEqualTo(published("accuracy-glass-wind-thermal.md"));
  }

  @Test
  void publishedTableOfTheFrameIsWhatTheMethodsDoToday() throws IOException {
    assertThat(FrameAccuracyTable.text()).isEqualTo(published("accuracy-frame.md"));
  }

  static Stream<OutsideCheck> frame() {
    return FrameAccuracyTable.methods().values().stream().flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("frame")
  void methodsOfTheFrameAgreeWithTheOutside(OutsideCheck check) {
    check.hold();
  }
}
