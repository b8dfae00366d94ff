package mullwright.layout;

/** Which wall of a piece a hole goes through, seen from outdoors. */
public enum HoleSide {
  /** The wall on the left. */
  LEFT,
  /** The wall on the right. */
  RIGHT,
  /** Both of them, in one line. */
  THROUGH,
  /** The wall of a horizontal that lies on the block; or a plate, which has but one. */
  WEB;

  /** The side it is on once the piece is turned end for end, glass side still outward. */
  HoleSide turned() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      default -> this;
    };
  }

  /** True if holes of both may meet in one wall. */
  public boolean meets(HoleSide other) {
    return this == other || this == THROUGH || other == THROUGH;
  }

  /** As the shop says it. */
  public String words() {
    return switch (this) {
      case LEFT -> "left";
      case RIGHT -> "right";
      case THROUGH -> "through";
      case WEB -> "";
    };
  }
}
