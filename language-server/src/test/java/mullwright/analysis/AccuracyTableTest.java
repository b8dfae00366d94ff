package mullwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class AccuracyTableTest {
  /** Print a new one with {@link AccuracyTable#main} when a method has changed on purpose. */
  @Test
  void publishedTableIsWhatTheMethodsDoToday() throws IOException {
    try (InputStream in =
        AccuracyTable.class.getResourceAsStream("accuracy-glass-wind-thermal.md")) {
      String published =
          new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      assertThat(AccuracyTable.text()).isEqualTo(published);
    }
  }
}
