package mullwright.model;

import java.util.Locale;

/** What a profile does in the frame. */
public enum Role {
  MULLION,
  JAMB,
  CORNER,
  SILL,
  HEAD,
  INTERMEDIATE;

  /** As written. */
  public String spelling() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True for roles that stand. */
  public boolean vertical() {
    return this == MULLION || this == JAMB || this == CORNER;
  }
}
