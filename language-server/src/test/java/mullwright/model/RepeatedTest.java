package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A repeated list is the list of its elements, whatever is done with it: held against a plain one.
 */
class RepeatedTest {
  /** Said at a place: its word and its height, and where. */
  private record Thing(String word, long height, int line, int second, int third) {
    Thing at(int line, int second, int third) {
      return new Thing(word, height, line, second, third);
    }
  }

  private final List<Thing> plain = new ArrayList<>();

  private List<Thing> filled(SplittableRandom random, int lines, boolean sorted) {
    Repeated.Builder<Thing> builder = new Repeated.Builder<>(1, Thing::at);
    List<Thing> said = new ArrayList<>();
    for (int i = random.nextInt(200); i > 0; i--) {
      if (said.isEmpty() || random.nextInt(5) == 0) {
        said.add(new Thing("w" + random.nextInt(4), random.nextInt(6), -1, -1, -1));
        builder.say(said.get(said.size() - 1));
      }
      int which = random.nextInt(said.size());
      int[] place = {random.nextInt(lines), random.nextInt(9), random.nextInt(9)};
      builder.add(which, place[0], place[1], place[2]);
      plain.add(said.get(which).at(place[0], place[1], place[2]));
    }
    if (sorted) {
      plain.sort(Comparator.comparing(Thing::line).thenComparing(Thing::height));
    }
    return sorted ? builder.list(lines, Thing::height) : builder.list();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void itsElementsAreThoseAdded(long seed) {
    assertThat(filled(new SplittableRandom(seed), 7, false)).isEqualTo(plain);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void byFirstNumberAndThenFromBelow(long seed) {
    assertThat(filled(new SplittableRandom(seed), 7, true)).isEqualTo(plain);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 5, 100})
  void ofPlacesNumberedBeforeThoseOfWhichSomethingIsSaid(int bare) {
    SplittableRandom random = new SplittableRandom(bare);
    List<Thing> said = List.of(new Thing("a", 1, -1, -1, -1), new Thing("b", 2, -1, -1, -1));
    int[] which = new int[40];
    int[] places = new int[Repeated.NUMBERS * which.length];
    for (int i = 0; i < which.length; i++) {
      which[i] = random.nextInt(100) < bare ? -1 : random.nextInt(2);
      places[Repeated.NUMBERS * i] = random.nextInt(9);
      places[Repeated.NUMBERS * i + 1] = random.nextInt(9);
      places[Repeated.NUMBERS * i + 2] = random.nextInt(9);
      if (which[i] >= 0) {
        plain.add(said.get(which[i]).at(places[3 * i], places[3 * i + 1], places[3 * i + 2]));
      }
    }
    assertThat(Repeated.of(said, which, places, Thing::at)).isEqualTo(plain);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void thoseAtSomePlaces(long seed) {
    Repeated<Thing> all = (Repeated<Thing>) filled(new SplittableRandom(seed), 7, true);
    BitSet kept = BitSet.valueOf(new long[] {0b101100110});
    assertThat(all.where(1, kept))
        .isEqualTo(plain.stream().filter(thing -> kept.get(thing.second())).toList());
    List<Integer> lines = new ArrayList<>();
    all.eachNumber(0, lines::add);
    assertThat(lines).isEqualTo(plain.stream().map(Thing::line).toList());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whereTwoOfTheSamePlacesDiffer(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Repeated<Thing> one = (Repeated<Thing>) filled(random, 7, false);
    Repeated.Builder<Thing> builder = new Repeated.Builder<>(4, Thing::at);
    List<Integer> differing = new ArrayList<>();
    for (int i = 0; i < plain.size(); i++) {
      Thing was = plain.get(i);
      boolean other = random.nextInt(4) == 0;
      Thing is = other ? new Thing(was.word() + "!", was.height(), -1, -1, -1) : was;
      builder.add(builder.say(is), was.line(), was.second(), was.third());
      if (other) {
        differing.add(i);
      }
    }
    Repeated<Thing> two = (Repeated<Thing>) builder.list();
    assertThat(one.hasPlacesOf(two)).isTrue();
    List<Integer> told = new ArrayList<>();
    one.differences(two, (left, right) -> left.word().equals(right.word()), told::add);
    assertThat(told).isEqualTo(differing);
  }
}
