package mullwright.model;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import mullwright.syntax.Argument;
import mullwright.syntax.Statement;
import mullwright.syntax.Word;

/** Reads the parts of a catalog block. */
final class CatalogReader {
  private final Collector collector;
  private final List<Mention> mentions;
  private final Map<PartKind, Map<String, Part>> parts = new EnumMap<>(PartKind.class);

  /**
   * @param mentions takes the names of parts that parts name
   */
  CatalogReader(Collector collector, List<Mention> mentions) {
    this.collector = collector;
    this.mentions = mentions;
  }

  /** By kind, then by name, in the order read. */
  Map<PartKind, Map<String, Part>> parts() {
    return parts;
  }

  void read(Statement statement, Spot spot, Scope scope) {
    Optional<PartKind> kind = PartKind.of(statement.keyword().text());
    Optional<Word> name = statement.argument(Argument.Name.class).map(Argument.Name::word);
    if (kind.isEmpty()) {
      List<String> known = Stream.of(PartKind.values()).map(PartKind::spelling).toList();
      collector.unknown(
          "kind of part", statement.keyword().text(), known, spot.at(statement.keyword()));
      return;
    }
    if (name.isEmpty()) {
      return;
    }
    Origin origin = spot.at(name.get());
    Map<String, Part> ofKind = parts.computeIfAbsent(kind.get(), key -> new LinkedHashMap<>());
    Part before = ofKind.get(name.get().text());
    if (before != null) {
      collector.duplicate(kind.get().spelling(), name.get().text(), before.origin(), origin);
      return;
    }
    collector.defines(symbol(name.get().text(), origin), origin);
    Properties.Reading reading = new Properties.Reading(spot, scope, collector, mentions);
    Properties properties = new Properties(PartSchema.of(kind.get()), reading, origin);
    statement.block().ifPresent(block -> properties.read(block.statements()));
    ofKind.put(name.get().text(), part(kind.get(), name.get().text(), properties));
  }

  static Symbol symbol(String name, Origin origin) {
    return new Symbol(Symbol.Kind.PART, "", name, origin);
  }

  private static Part part(PartKind kind, String name, Properties properties) {
    return switch (kind) {
      case SYSTEM -> FrameParts.system(name, properties);
      case PROFILE -> FrameParts.profile(name, properties);
      case REINFORCEMENT -> FrameParts.reinforcement(name, properties);
      case SLEEVE -> FrameParts.sleeve(name, properties);
      case SHEAR_BLOCK -> FrameParts.shearBlock(name, properties);
      case CLIP -> FixingParts.clip(name, properties);
      case ANCHOR -> FixingParts.anchor(name, properties);
      case SPREAD_PLATE -> FixingParts.spreadPlate(name, properties);
      case FASTENER -> FixingParts.fastener(name, properties);
      case PRESSURE_PLATE -> CoverParts.pressurePlate(name, properties);
      case FACE_CAP -> CoverParts.faceCap(name, properties);
      case GLASS -> new GlassPart(name, properties).read();
      default -> FixingParts.plain(kind, name, properties);
    };
  }
}
