package mullwright.installation;

/** The kinds of step, in the order a crew would take them where nothing else decides. */
public enum WorkKind {
  ANCHOR("set anchor"),
  ISOLATION("isolate"),
  CLIP("set clip"),
  LADDER("assemble, square and hang ladder"),
  VERTICAL("set vertical"),
  SLEEVE("put sleeve in"),
  HORIZONTAL("set horizontal"),
  SQUARE("square and lock bay"),
  ZONE("dam, seal and gasket zone"),
  BLOCKS("put setting blocks in"),
  GLASS("set lite"),
  PLATE("fasten plate"),
  CAP("put cap on"),
  SEAL("seal perimeter");

  private final String words;

  WorkKind(String words) {
    this.words = words;
  }

  /** As a crew is told. */
  public String words() {
    return words;
  }
}
