package mullwright.model;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;

/**
 * The catalogs of several files as one: which part a name means, and the names of parts inside the
 * catalogs found.
 */
final class CatalogMerge {
  private final List<FileReading> files;
  private final boolean complete;
  private final Map<PartKind, Map<String, Part>> parts = new EnumMap<>(PartKind.class);
  private final Collector facts = new Collector();
  private final List<Twice> twice = new java.util.ArrayList<>();
  private final Catalog catalog;

  /** A name that two files define. */
  record Twice(Part first, Part second) {}

  private CatalogMerge(List<FileReading> files, boolean complete) {
    this.files = files;
    this.complete = complete;
    for (FileReading file : files) {
      file.parts().forEach(this::add);
    }
    completeSystems();
    catalog = new Catalog(parts);
    for (FileReading file : files) {
      file.mentions().forEach(mention -> find(mention, facts));
    }
  }

  /**
   * @param files in the order in which a name is looked for
   * @param complete false if not all catalogs could be read: unknown names are then not reported
   */
  static CatalogMerge of(List<FileReading> files, boolean complete) {
    return new CatalogMerge(files, complete);
  }

  boolean isOf(List<FileReading> others, boolean othersComplete) {
    if (files.size() != others.size() || complete != othersComplete) {
      return false;
    }
    for (int i = 0; i < files.size(); i++) {
      if (files.get(i) != others.get(i)) {
        return false;
      }
    }
    return true;
  }

  boolean isComplete() {
    return complete;
  }

  Catalog catalog() {
    return catalog;
  }

  /** References and problems of the names inside the catalogs. */
  Collector facts() {
    return facts;
  }

  /** Names that two files define. */
  List<Twice> twice() {
    return twice;
  }

  private void add(PartKind kind, Map<String, Part> named) {
    Map<String, Part> ofKind = parts.computeIfAbsent(kind, key -> new LinkedHashMap<>());
    named.forEach(
        (name, part) -> {
          Part before = ofKind.putIfAbsent(name, part);
          if (before != null) {
            twice.add(new Twice(before, part));
          }
        });
  }

  /** The glass plane of a system is its profiles' depth unless stated. */
  private void completeSystems() {
    Map<String, Part> systems = parts.get(PartKind.SYSTEM);
    if (systems != null) {
      systems.replaceAll((name, part) -> completed((Part.WallSystem) part));
    }
  }

  private Part.WallSystem completed(Part.WallSystem system) {
    if (!system.glassPlane().assumed()) {
      return system;
    }
    for (Role role : Role.values()) {
      Given<String> name = system.profiles().get(role);
      Part part =
          name == null ? null : parts.getOrDefault(PartKind.PROFILE, Map.of()).get(name.value());
      if (part instanceof Part.Profile profile) {
        Given<Length> plane =
            Given.assumed(
                profile.depth().value(), system.origin(), "the depth of " + profile.name());
        return new Part.WallSystem(
            system.name(),
            system.origin(),
            system.profiles(),
            system.parts(),
            system.sillClip(),
            system.headClip(),
            plane);
      }
    }
    return system;
  }

  /** The part a mention means; if there is none, that is reported. */
  Optional<Part> find(Mention mention, Collector collector) {
    for (PartKind kind : mention.kinds()) {
      Part part = parts.getOrDefault(kind, Map.of()).get(mention.name());
      if (part != null) {
        collector.names(CatalogReader.symbol(part.name(), part.origin()), mention.origin());
        return Optional.of(part);
      }
    }
    if (complete) {
      PartKind kind = mention.kinds().get(0);
      collector.unknown(
          kind.spelling(),
          mention.name(),
          parts.getOrDefault(kind, Map.of()).keySet(),
          mention.origin());
    }
    return Optional.empty();
  }
}
