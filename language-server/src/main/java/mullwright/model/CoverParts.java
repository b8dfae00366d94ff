package mullwright.model;

/** Makes what covers the frame: pressure plate and face cap. */
final class CoverParts {
  private CoverParts() {}

  static Part.PressurePlate pressurePlate(String name, Properties properties) {
    return new Part.PressurePlate(
        name,
        properties.origin(),
        properties.needed("width", "pressure-plate " + name),
        properties.lengthOr("end-gap"),
        properties.lengthOr("spacing"),
        properties.lengthOr("end-distance"),
        properties.stock(),
        properties.word("fastener"),
        properties.wordOr("weeps"));
  }

  static Part.FaceCap faceCap(String name, Properties properties) {
    return new Part.FaceCap(
        name,
        properties.origin(),
        properties.needed("face", "face-cap " + name),
        properties.lengthOr("end-gap"),
        properties.stock());
  }
}
