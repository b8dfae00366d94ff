package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Predicate;

/**
 * Decides which of several statements about one thing holds: the narrower one, clause by clause.
 *
 * <p>A statement is narrower than another if what it names is a proper subset of what the other
 * names; a wall that is {@code like} another wins over that one's statements. What the narrower
 * does not set it inherits from wider statements of the same keyword; another keyword replaces.
 * Where two of which neither is narrower set one clause differently, that is a {@link
 * ModelProblem.Conflict}, once for the pair, and the first in the text is taken.
 */
final class Narrower {
  private final String what;
  private final IntFunction<String> where;
  private final Collector collector;
  private final List<Claim> claims = new ArrayList<>();
  private final Map<Long, Boolean> narrower = new HashMap<>();
  private final Map<Said, Integer> statements = new IdentityHashMap<>();
  private final Set<Long> conflicts = new HashSet<>();
  private final Map<Claim, Set<Claim>> overriddenBy = new LinkedHashMap<>();
  private long reached;
  private boolean full;

  private int[] groupOf = {};
  private final List<List<Integer>> groups = new ArrayList<>();
  private final List<Resolved> resolved = new ArrayList<>();

  /**
   * @param what the kind of thing, for problems
   * @param where names the thing a key stands for
   */
  Narrower(String what, IntFunction<String> where, Collector collector) {
    this.what = what;
    this.where = where;
    this.collector = collector;
  }

  /** What holds for a thing. */
  static final class Resolved {
    private final Claim winner;
    private final Origin origin;
    private final Map<Facet<?>, Claim> setters;

    private Resolved(Claim winner, Map<Facet<?>, Claim> setters) {
      this.winner = winner;
      this.origin = winner.said.origin();
      this.setters = setters;
    }

    String keyword() {
      return winner.keyword;
    }

    /** The statement that won. */
    Said said() {
      return winner.said;
    }

    Origin origin() {
      return origin;
    }

    /** The claim whose value of that facet holds, or null. */
    Claim setter(Facet<?> facet) {
      return setters.get(facet);
    }

    <T> Optional<Given<T>> get(Facet<T> facet) {
      Claim setter = setters.get(facet);
      return setter == null ? Optional.empty() : setter.find(facet);
    }
  }

  /** Adds a claim; claims are added in the order of the text, lower layers first. */
  void add(Claim claim) {
    int size = claim.reach.cardinality();
    if (reached + size > Limits.REACH) {
      if (!full) {
        full = true;
        collector.problem(
            new ModelProblem.TooMany(
                "things named", Limits.REACH, reached + size, claim.said.origin()));
      }
      return;
    }
    reached += size;
    if (size > 0) {
      claims.add(claim);
    }
  }

  /** Sorts the keys into groups about which the same claims speak. */
  void solve() {
    int keys = 0;
    for (Claim claim : claims) {
      keys = Math.max(keys, claim.offset + claim.reach.length());
    }
    groupOf = new int[keys];
    Arrays.fill(groupOf, 0);
    groups.add(List.of());
    Map<Long, Integer> next = new HashMap<>();
    for (int i = 0; i < claims.size(); i++) {
      Claim claim = claims.get(i);
      BitSet reach = claim.reach;
      // neighbours mostly come from one group, and go to one
      int from = -1;
      int to = -1;
      int bit = reach.nextSetBit(0);
      while (bit >= 0) {
        int end = reach.nextClearBit(bit);
        for (int key = claim.offset + bit; key < claim.offset + end; key++) {
          if (groupOf[key] != from) {
            from = groupOf[key];
            long step = (long) from << 32 | i;
            Integer group = next.get(step);
            if (group == null) {
              group = grown(groups.get(from), i, claim);
              next.put(step, group);
            }
            to = group;
          }
          groupOf[key] = to;
        }
        bit = reach.nextSetBit(end);
      }
    }
    for (int group = 0; group < groups.size(); group++) {
      resolved.add(null);
    }
  }

  private int grown(List<Integer> group, int claim, Claim added) {
    if (group.size() >= Limits.STATEMENTS_OF_ONE_THING) {
      collector.problem(
          new ModelProblem.TooMany(
              "statements about one " + what,
              Limits.STATEMENTS_OF_ONE_THING,
              group.size() + 1L,
              added.said.origin()));
      added.holds = true;
      groups.add(group);
      return groups.size() - 1;
    }
    List<Integer> more = new ArrayList<>(group.size() + 1);
    more.addAll(group);
    more.add(claim);
    groups.add(more);
    return groups.size() - 1;
  }

  /** The keys anything speaks of are below this. */
  int keys() {
    return groupOf.length;
  }

  /** What holds for that key, or null if nothing speaks of it. */
  Resolved at(int key) {
    int group = group(key);
    if (groups.get(group).isEmpty()) {
      return null;
    }
    Resolved known = resolved.get(group);
    if (known == null) {
      known = resolve(groups.get(group), key);
      resolved.set(group, known);
    }
    return known;
  }

  /** The number of the group a key is in: keys of one group have the same claims. 0 for none. */
  int group(int key) {
    return key < groupOf.length ? groupOf[key] : 0;
  }

  /** How many groups there are, that of no claims included. */
  int groups() {
    return groups.size();
  }

  /** The claims about a key, in the order of the text. */
  List<Claim> claimsAt(int key) {
    List<Claim> about = new ArrayList<>();
    for (int i : groups.get(group(key))) {
      about.add(claims.get(i));
    }
    return about;
  }

  /** Those of the claims about a key that set the facet and that no other such one overrides. */
  List<Claim> narrowest(int key, Facet<?> facet) {
    List<Integer> setting = new ArrayList<>();
    for (int i : groups.get(group(key))) {
      if (claims.get(i).sets(facet)) {
        setting.add(i);
      }
    }
    List<Claim> found = new ArrayList<>();
    for (int i : narrowest(setting)) {
      found.add(claims.get(i));
    }
    return found;
  }

  /** What holds for a key if some of the claims about it are not heard. */
  Resolved without(int key, Predicate<Claim> unheard) {
    List<Integer> heard = new ArrayList<>();
    for (int i : groups.get(group(key))) {
      if (!unheard.test(claims.get(i))) {
        heard.add(i);
      }
    }
    return resolve(heard, key);
  }

  /** Reports two claims about a key that set a facet differently. */
  void conflict(Claim one, Claim other, int key, Facet<?> facet) {
    conflict(
        claims.indexOf(one),
        claims.indexOf(other),
        key,
        facet.name(),
        one.shown(facet),
        other.shown(facet));
  }

  private Resolved resolve(List<Integer> group, int key) {
    List<Integer> narrowest = narrowest(group);
    Claim winner = claims.get(narrowest.get(0));
    for (int i : narrowest) {
      Claim other = claims.get(i);
      if (!other.keyword.equals(winner.keyword)) {
        conflict(
            narrowest.get(0), i, key, ModelProblem.Conflict.KIND, winner.keyword, other.keyword);
      }
    }
    winner.holds = true;
    List<Integer> same = new ArrayList<>();
    Set<Facet<?>> facets = new LinkedHashSet<>();
    for (int i : group) {
      Claim claim = claims.get(i);
      if (claim.keyword.equals(winner.keyword)) {
        same.add(i);
        claim.facets().forEach(facets::add);
      }
      if (claim != winner) {
        overriddenBy.computeIfAbsent(claim, k -> new LinkedHashSet<>()).add(winner);
      }
    }
    Map<Facet<?>, Claim> setters = new HashMap<>();
    for (Facet<?> facet : facets) {
      setters.put(facet, setter(same, facet, key));
    }
    return new Resolved(winner, setters);
  }

  private Claim setter(List<Integer> same, Facet<?> facet, int key) {
    List<Integer> setting = new ArrayList<>();
    for (int i : same) {
      if (claims.get(i).sets(facet)) {
        setting.add(i);
      }
    }
    List<Integer> narrowest = narrowest(setting);
    Claim first = claims.get(narrowest.get(0));
    for (int i : narrowest) {
      Claim other = claims.get(i);
      if (!first.agrees(other, facet)) {
        conflict(narrowest.get(0), i, key, facet.name(), first.shown(facet), other.shown(facet));
      }
    }
    first.holds = true;
    return first;
  }

  private List<Integer> narrowest(List<Integer> group) {
    if (group.size() == 1) {
      return group;
    }
    List<Integer> narrowest = new ArrayList<>();
    for (int one : group) {
      boolean beaten = false;
      for (int other : group) {
        if (one != other && beats(other, one)) {
          beaten = true;
          break;
        }
      }
      if (!beaten) {
        narrowest.add(one);
      }
    }
    return narrowest;
  }

  private boolean beats(int one, int other) {
    long pair = (long) one << 32 | other;
    Boolean known = narrower.get(pair);
    if (known == null) {
      known = beats(claims.get(one), claims.get(other));
      narrower.put(pair, known);
    }
    return known;
  }

  private static boolean beats(Claim one, Claim other) {
    if (one.said.layer() != other.said.layer()) {
      return one.said.layer() > other.said.layer();
    }
    if (one.named == other.named || one.named.equals(other.named)) {
      return false;
    }
    BitSet outside = (BitSet) one.named.clone();
    outside.andNot(other.named);
    return outside.isEmpty();
  }

  private void conflict(int one, int other, int key, String clause, String a, String b) {
    Claim first = claims.get(one);
    Claim second = claims.get(other);
    second.holds = true;
    int firstStatement = statements.computeIfAbsent(first.said, said -> statements.size());
    int secondStatement = statements.computeIfAbsent(second.said, said -> statements.size());
    if (conflicts.add((long) firstStatement << 32 | secondStatement)) {
      collector.problem(
          new ModelProblem.Conflict(
              what, where.apply(key), clause, a, b, first.said.origin(), second.said.origin()));
    }
  }

  /**
   * Reports statements of the wall itself of which nothing holds anywhere; call when all keys were
   * asked for.
   */
  void reportShadowed() {
    Set<Said> holding = Collections.newSetFromMap(new IdentityHashMap<>());
    int top = 0;
    for (Claim claim : claims) {
      top = Math.max(top, claim.said.layer());
      if (claim.holds) {
        holding.add(claim.said);
      }
    }
    for (Claim claim : claims) {
      if (claim.said.layer() == top && holding.add(claim.said)) {
        List<Origin> by =
            overriddenBy.getOrDefault(claim, Set.of()).stream()
                .map(winner -> winner.said.origin())
                .distinct()
                .limit(3)
                .toList();
        collector.problem(new ModelProblem.Shadowed(what, by, claim.said.origin()));
      }
    }
  }
}
