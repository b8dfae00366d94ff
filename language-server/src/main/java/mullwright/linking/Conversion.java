package mullwright.linking;

import static org.objectweb.asm.Opcodes.CHECKCAST;
import static org.objectweb.asm.Opcodes.F2D;
import static org.objectweb.asm.Opcodes.I2D;
import static org.objectweb.asm.Opcodes.I2F;
import static org.objectweb.asm.Opcodes.I2L;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.INVOKEVIRTUAL;
import static org.objectweb.asm.Opcodes.L2D;
import static org.objectweb.asm.Opcodes.L2F;

import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;

/**
 * Turns the value on top of the stack into the type wanted: boxed, unboxed, widened or cast.
 *
 * <p>Source: Java Language Specification, chapter 5, as far as {@link
 * java.lang.invoke.LambdaMetafactory} allows it between a body and its interface.
 */
final class Conversion {
  private Conversion() {}

  static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  /**
   * @param has the type of the value as the class file knows it
   * @param known what it is known to be, where the class file knows less
   * @param want the type it must have
   */
  static void write(MethodVisitor code, Type has, Type known, Type want) {
    if (isPrimitive(has) && isPrimitive(want)) {
      widen(code, has, want);
    } else if (isPrimitive(has)) {
      box(code, has);
    } else if (isPrimitive(want)) {
      Type held = unboxed(known, want);
      unbox(code, held);
      widen(code, held, want);
    } else if (!want.equals(has) && !want.getInternalName().equals("java/lang/Object")) {
      code.visitTypeInsn(CHECKCAST, want.getInternalName());
    }
  }

  /** Calls {@code valueOf} of a primitive's class. */
  private static void box(MethodVisitor code, Type primitive) {
    String owner = boxOf(primitive);
    code.visitMethodInsn(
        INVOKESTATIC,
        owner,
        "valueOf",
        Type.getMethodDescriptor(Type.getObjectType(owner), primitive),
        false);
  }

  private static void unbox(MethodVisitor code, Type primitive) {
    String owner = boxOf(primitive);
    code.visitTypeInsn(CHECKCAST, owner);
    code.visitMethodInsn(
        INVOKEVIRTUAL,
        owner,
        primitive.getClassName() + "Value",
        Type.getMethodDescriptor(primitive),
        false);
  }

  private static void widen(MethodVisitor code, Type from, Type to) {
    boolean small = from.getSort() <= Type.INT;
    switch (to.getSort()) {
      case Type.LONG -> convert(code, small, I2L);
      case Type.FLOAT -> {
        convert(code, small, I2F);
        convert(code, from.getSort() == Type.LONG, L2F);
      }
      case Type.DOUBLE -> {
        convert(code, small, I2D);
        convert(code, from.getSort() == Type.LONG, L2D);
        convert(code, from.getSort() == Type.FLOAT, F2D);
      }
      default -> {
        // an int holds all that is smaller
      }
    }
  }

  private static void convert(MethodVisitor code, boolean needed, int instruction) {
    if (needed) {
      code.visitInsn(instruction);
    }
  }

  /** The class of a primitive: {@code java/lang/Integer} for {@code int}. */
  static String boxOf(Type primitive) {
    return switch (primitive.getSort()) {
      case Type.BOOLEAN -> "java/lang/Boolean";
      case Type.CHAR -> "java/lang/Character";
      case Type.BYTE -> "java/lang/Byte";
      case Type.SHORT -> "java/lang/Short";
      case Type.INT -> "java/lang/Integer";
      case Type.LONG -> "java/lang/Long";
      case Type.FLOAT -> "java/lang/Float";
      case Type.DOUBLE -> "java/lang/Double";
      default -> throw new IllegalArgumentException(primitive + " is not primitive");
    };
  }

  private static Type unboxed(Type known, Type otherwise) {
    return switch (known.getInternalName()) {
      case "java/lang/Boolean" -> Type.BOOLEAN_TYPE;
      case "java/lang/Character" -> Type.CHAR_TYPE;
      case "java/lang/Byte" -> Type.BYTE_TYPE;
      case "java/lang/Short" -> Type.SHORT_TYPE;
      case "java/lang/Integer" -> Type.INT_TYPE;
      case "java/lang/Long" -> Type.LONG_TYPE;
      case "java/lang/Float" -> Type.FLOAT_TYPE;
      case "java/lang/Double" -> Type.DOUBLE_TYPE;
      default -> otherwise;
    };
  }
}
