package mullwright.model;

import java.util.Locale;
import java.util.Optional;

/** The kinds of part a catalog holds; the spelling is the keyword that opens the part. */
public enum PartKind {
  SYSTEM,
  PROFILE,
  REINFORCEMENT,
  SLEEVE,
  SHEAR_BLOCK,
  CLIP,
  ANCHOR,
  SPREAD_PLATE,
  GLASS,
  GASKET,
  SETTING_BLOCK,
  PRESSURE_PLATE,
  FACE_CAP,
  ZONE_DAM,
  FASTENER,
  SEALANT,
  METAL,
  ISOLATION,
  FINISH,
  INSULATION;

  /** As written: {@code shear-block}. */
  public String spelling() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind with that spelling. */
  public static Optional<PartKind> of(String spelling) {
    for (PartKind kind : values()) {
      if (kind.spelling().equals(spelling)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
