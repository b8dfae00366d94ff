package mullwright.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Word;

/**
 * Finds the parts a wall names: by their own name, by the role they play, or as the system says.
 */
final class SystemParts {
  private final Optional<Part.WallSystem> system;
  private final CatalogMerge catalog;
  private final Collector collector;
  private final Set<Role> missing;

  /**
   * @param missing the roles already told to be missing in the system
   */
  SystemParts(
      Optional<Part.WallSystem> system,
      CatalogMerge catalog,
      Collector collector,
      Set<Role> missing) {
    this.system = system;
    this.catalog = catalog;
    this.collector = collector;
    this.missing = new HashSet<>(missing);
  }

  /** The roles told to be missing in the system so far. */
  Set<Role> missing() {
    return missing;
  }

  Optional<Part.WallSystem> system() {
    return system;
  }

  Catalog catalog() {
    return catalog.catalog();
  }

  /** The name of a part in a clause, as written even if there is no such part (then reported). */
  Optional<String> named(Said said, ClauseWord clause, PartKind... kinds) {
    return said.clause(clause, Clause.Named.class)
        .map(
            named -> {
              find(said, named.name(), kinds);
              return named.name().text();
            });
  }

  void find(Said said, Word name, PartKind... kinds) {
    catalog.find(new Mention(List.of(kinds), name.text(), said.spot().at(name)), collector);
  }

  /** Sets the profile {@code as} names, by its own name or its role in the system. */
  void profile(Claim claim) {
    Said said = claim.said;
    said.clause(ClauseWord.AS, Clause.Named.class)
        .ifPresent(clause -> claim.setNamed(Facet.PROFILE, profile(said, clause.name()), clause));
  }

  private String profile(Said said, Word name) {
    Optional<Role> role = role(name.text());
    if (role.isPresent() && !name.quoted()) {
      return ofRole(role.get(), said.spot().at(name)).map(Given::value).orElse("");
    }
    profileNamed(said, name);
    return name.text();
  }

  private void profileNamed(Said said, Word name) {
    Origin origin = said.spot().at(name);
    if (catalog.catalog().find(PartKind.PROFILE, name.text()).isPresent()) {
      catalog.find(new Mention(List.of(PartKind.PROFILE), name.text(), origin), collector);
    } else if (catalog.isComplete()) {
      List<String> known = new ArrayList<>();
      for (Role role : Role.values()) {
        known.add(role.spelling());
      }
      catalog.catalog().all(PartKind.PROFILE).forEach(part -> known.add(part.name()));
      collector.unknown("profile", name.text(), known, origin);
    }
  }

  private static Optional<Role> role(String word) {
    for (Role role : Role.values()) {
      if (role.spelling().equals(word)) {
        return Optional.of(role);
      }
    }
    return Optional.empty();
  }

  /** The system's profile for a role; a system without one is reported once. */
  Optional<Given<String>> ofRole(Role role, Origin asked) {
    if (system.isEmpty()) {
      return Optional.empty();
    }
    Given<String> profile = system.get().profiles().get(role);
    if (profile == null && missing.add(role)) {
      String word = role.name().toLowerCase(Locale.ROOT);
      collector.missing(
          "system " + system.get().name(), "its " + word, word + " some-profile", asked);
    }
    return Optional.ofNullable(profile);
  }

  /** True if the system has a profile for the role. */
  boolean has(Role role) {
    return system.map(known -> known.profiles().containsKey(role)).orElse(false);
  }

  /** {@code bolted 2 x hex-half}. */
  void bolts(Claim claim) {
    Said said = claim.said;
    said.clause(ClauseWord.BOLTED, Clause.Counted.class)
        .ifPresent(
            clause -> {
              find(said, clause.name(), PartKind.FASTENER);
              said.values(collector)
                  .count(clause.count(), "bolts", Limits.NAMES)
                  .ifPresent(
                      count ->
                          claim.set(
                              Facet.BOLTED,
                              new Facet.Bolts(count, clause.name().text()),
                              clause.range(),
                              clause.name().range()));
            });
  }

  /** Sets the facet to the part a clause names, if it names one. */
  void set(Claim claim, Facet<String> facet, ClauseWord clause, PartKind... kinds) {
    named(claim.said, clause, kinds)
        .ifPresent(
            name -> claim.set(facet, name, claim.said.statement().clause(clause).get().range()));
  }

  static Optional<Members.Fixing> fixing(Narrower.Resolved resolved) {
    return resolved
        .get(Facet.BOLTED)
        .map(
            bolts ->
                new Members.Fixing(
                    bolts.value().count(), Given.stated(bolts.value().fastener(), bolts.origin())));
  }
}
