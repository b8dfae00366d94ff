package mullwright.model;

import java.util.List;

/** The forces of a bracket; two are equal if they say the same, wherever they stand. */
final class BracketLoads {
  private final List<Members.Load> loads;
  private final List<Object> said;

  BracketLoads(List<Members.Load> loads) {
    this.loads = List.copyOf(loads);
    this.said =
        loads.stream()
            .<Object>map(
                load ->
                    List.of(load.force().value(), load.direction(), load.arm().map(Given::value)))
            .toList();
  }

  List<Members.Load> loads() {
    return loads;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BracketLoads loads && said.equals(loads.said);
  }

  @Override
  public int hashCode() {
    return said.hashCode();
  }
}
