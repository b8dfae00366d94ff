package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AscendingTest {
  @Test
  void isWhereTheLibrarysOwnSearchWouldPutANewOne() {
    Random random = new Random(20);
    for (int round = 0; round < 5_000; round++) {
      int[] places = random.ints(random.nextInt(40), 0, 1_000).distinct().sorted().toArray();
      int sought = random.nextInt(1_000);
      int found = Arrays.binarySearch(places, sought);
      int before = found < 0 ? -found - 1 : found;

      assertThat(Ascending.leading(places.length, i -> places[i] < sought)).isEqualTo(before);
    }
  }

  @Test
  void looksAtNothingOutsideItsPart() {
    int[] heights = {9, 9, 1, 2, 2, 3, 0};

    assertThat(Ascending.leading(2, 6, i -> heights[i] <= 2)).isEqualTo(5);
    assertThat(Ascending.leading(2, 6, i -> heights[i] <= 3)).isEqualTo(6);
    assertThat(Ascending.leading(2, 6, i -> heights[i] < 1)).isEqualTo(2);
  }

  @Test
  void needsNoLookAtNothing() {
    assertThat(
            Ascending.leading(
                0,
                i -> {
                  throw new AssertionError("looked at " + i);
                }))
        .isZero();
  }

  @Test
  void findsOneOfAThousandInTenLooks() {
    int[] looks = new int[1];

    Ascending.leading(
        1_000,
        i -> {
          looks[0]++;
          return i < 637;
        });

    assertThat(looks[0]).isLessThanOrEqualTo(10);
  }
}
