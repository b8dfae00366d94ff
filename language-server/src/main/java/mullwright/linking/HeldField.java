package mullwright.linking;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.objectweb.asm.Type;

/**
 * A field for a value that a lambda holds. Lambdas of one class share their fields: the first
 * reference of each stands in the same one.
 *
 * @param name of the field
 * @param kind {@code Object}, {@code int} (also for what is smaller), {@code long}, {@code float}
 *     or {@code double}
 */
record HeldField(String name, Type kind) {
  private enum Kind {
    REFERENCE(Type.getObjectType("java/lang/Object")),
    INT(Type.INT_TYPE),
    LONG(Type.LONG_TYPE),
    FLOAT(Type.FLOAT_TYPE),
    DOUBLE(Type.DOUBLE_TYPE);

    private final Type type;

    Kind(Type type) {
      this.type = type;
    }

    static Kind of(Type held) {
      return switch (held.getSort()) {
        case Type.LONG -> LONG;
        case Type.FLOAT -> FLOAT;
        case Type.DOUBLE -> DOUBLE;
        case Type.ARRAY, Type.OBJECT -> REFERENCE;
        default -> INT;
      };
    }
  }

  /** The fields of what a lambda holds, in its order. */
  static List<HeldField> of(Lambda lambda) {
    Map<Kind, Integer> taken = new EnumMap<>(Kind.class);
    List<HeldField> fields = new ArrayList<>();
    for (Type held : lambda.held()) {
      Kind kind = Kind.of(held);
      int place = taken.merge(kind, 1, Integer::sum);
      fields.add(new HeldField("held" + kind.type.getDescriptor().charAt(0) + place, kind.type));
    }
    return fields;
  }
}
