package mullwright.quantity;

/** The fineness a length is printed to. */
public enum Step {
  SIXTEENTH(UnitSystem.US, Length.ofInches(1, 16)),
  THIRTY_SECOND(UnitSystem.US, Length.ofInches(1, 32)),
  SIXTY_FOURTH(UnitSystem.US, Length.ofInches(1, 64)),
  TENTH_MILLIMETRE(UnitSystem.SI, Length.ofMillimetres(1, 10)),
  MILLIMETRE(UnitSystem.SI, Length.ofMillimetres(1));

  private final UnitSystem system;
  private final Length length;

  Step(UnitSystem system, Length length) {
    this.system = system;
    this.length = length;
  }

  public UnitSystem system() {
    return system;
  }

  public Length length() {
    return length;
  }
}
