package mullwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** What is found by height is what going through all finds, in the same order. */
class ByHeightTest {
  private record Stretch(long from, long to) {}

  @Test
  void findsWhatGoingThroughAllFinds() {
    SplittableRandom random = new SplittableRandom(11);
    for (int run = 0; run < 300; run++) {
      List<Stretch> all = new ArrayList<>();
      boolean sorted = random.nextBoolean();
      long at = -50;
      for (int count = random.nextInt(30); count > 0; count--) {
        at = sorted ? at + random.nextInt(4) : random.nextLong(-50, 50);
        all.add(new Stretch(at, at + random.nextInt(random.nextInt(10) == 0 ? 60 : 6)));
      }
      ByHeight<Stretch> byHeight =
          new ByHeight<>(
              all,
              all.stream().mapToLong(Stretch::from).toArray(),
              all.stream().mapToLong(Stretch::to).toArray());
      for (long from = -60; from < 60; from += 3) {
        long low = from;
        long high = from + random.nextInt(8);
        assertThat(byHeight.touching(new Length(low), new Length(high)))
            .isEqualTo(all.stream().filter(s -> s.from <= high && low <= s.to).toList());
      }
    }
  }
}
