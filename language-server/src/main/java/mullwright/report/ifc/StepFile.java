package mullwright.report.ifc;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Collects data instances and writes them as an exchange structure of ISO 10303-21.
 *
 * <p>Instances are numbered as they are added.
 */
final class StepFile {
  private final StringBuilder data = new StringBuilder();
  private final Map<String, StepValue.Reference> shared = new HashMap<>();
  private int count;

  /** Adds an instance. */
  StepValue.Reference add(String entity, StepValue... values) {
    return write(instance(entity, values));
  }

  /** An instance that may be the same for all who need an equal one: a point, a direction. */
  StepValue.Reference share(String entity, StepValue... values) {
    String instance = instance(entity, values);
    StepValue.Reference known = shared.get(instance);
    if (known == null) {
      known = write(instance);
      shared.put(instance, known);
    }
    return known;
  }

  private StepValue.Reference write(String instance) {
    count++;
    data.append('#').append(count).append('=').append(instance).append(";\n");
    return new StepValue.Reference(count);
  }

  private static String instance(String entity, StepValue... values) {
    return Arrays.stream(values)
        .map(StepValue::spelling)
        .collect(Collectors.joining(",", entity + "(", ")"));
  }

  /**
   * The whole file.
   *
   * @param description what it holds
   * @param name of the file
   * @param time when it was made, as ISO 8601 writes it
   * @param program what made it
   * @param schema name of the schema its data follow
   */
  String write(String description, String name, String time, String program, String schema) {
    return "ISO-10303-21;\nHEADER;\n"
        + "FILE_DESCRIPTION(("
        + StepValue.text(description).spelling()
        + "),'2;1');\nFILE_NAME("
        + StepValue.text(name).spelling()
        + ","
        + StepValue.text(time).spelling()
        + ",(''),(''),"
        + StepValue.text(program).spelling()
        + ","
        + StepValue.text(program).spelling()
        + ",'');\nFILE_SCHEMA(("
        + StepValue.text(schema).spelling()
        + "));\nENDSEC;\nDATA;\n"
        + data
        + "ENDSEC;\nEND-ISO-10303-21;\n";
  }
}
