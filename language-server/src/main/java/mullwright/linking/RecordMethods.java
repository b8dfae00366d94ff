package mullwright.linking;

import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.BIPUSH;
import static org.objectweb.asm.Opcodes.CHECKCAST;
import static org.objectweb.asm.Opcodes.F_SAME;
import static org.objectweb.asm.Opcodes.GETFIELD;
import static org.objectweb.asm.Opcodes.IADD;
import static org.objectweb.asm.Opcodes.ICONST_0;
import static org.objectweb.asm.Opcodes.ICONST_1;
import static org.objectweb.asm.Opcodes.IFEQ;
import static org.objectweb.asm.Opcodes.IFNE;
import static org.objectweb.asm.Opcodes.IF_ACMPEQ;
import static org.objectweb.asm.Opcodes.IF_ICMPNE;
import static org.objectweb.asm.Opcodes.IMUL;
import static org.objectweb.asm.Opcodes.INSTANCEOF;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.IRETURN;
import static org.objectweb.asm.Opcodes.LCMP;

import java.util.Arrays;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Writes out the equality and the hash code of a record, which the compiler leaves to be made at
 * run time. The text of a record stays: it is for people, and no start asks for it.
 *
 * <p>Source: the contract of {@link java.lang.runtime.ObjectMethods}; the hash code is its {@code
 * 31 h + c}, so that the order of a hashed collection is the same either way.
 */
final class RecordMethods {
  private static final int MULTIPLIER = 31;

  private RecordMethods() {}

  /**
   * @return whether the method was one of the two and is now written out
   */
  static boolean write(ClassNode record, MethodNode method) {
    for (AbstractInsnNode instruction : method.instructions.toArray()) {
      if (instruction instanceof InvokeDynamicInsnNode site
          && site.bsm.getOwner().equals("java/lang/runtime/ObjectMethods")) {
        // the record, the names of its components, then a handle for each
        List<Handle> components =
            Arrays.stream(site.bsmArgs).skip(2).map(Handle.class::cast).toList();
        if (site.name.equals("equals")) {
          empty(method);
          equality(record.name, components, method);
          return true;
        }
        if (site.name.equals("hashCode")) {
          empty(method);
          hashCode(record.name, components, method);
          return true;
        }
      }
    }
    return false;
  }

  private static void empty(MethodNode method) {
    method.instructions.clear();
    method.localVariables = null;
  }

  private static void equality(String record, List<Handle> components, MethodVisitor code) {
    Label yes = new Label();
    Label no = new Label();
    code.visitVarInsn(ALOAD, 0);
    code.visitVarInsn(ALOAD, 1);
    code.visitJumpInsn(IF_ACMPEQ, yes);
    code.visitVarInsn(ALOAD, 1);
    code.visitTypeInsn(INSTANCEOF, record);
    code.visitJumpInsn(IFEQ, no);
    for (Handle component : components) {
      component(record, component, code);
      code.visitVarInsn(ALOAD, 1);
      code.visitTypeInsn(CHECKCAST, record);
      code.visitFieldInsn(GETFIELD, record, component.getName(), component.getDesc());
      unless(Type.getType(component.getDesc()), no, code);
    }
    answer(yes, ICONST_1, code);
    answer(no, ICONST_0, code);
    code.visitMaxs(4, 2);
  }

  private static void answer(Label at, int answer, MethodVisitor code) {
    code.visitLabel(at);
    code.visitFrame(F_SAME, 0, null, 0, null);
    code.visitInsn(answer);
    code.visitInsn(IRETURN);
  }

  /** Goes on if the two values on top of the stack are the same, else elsewhere. */
  private static void unless(Type type, Label elsewhere, MethodVisitor code) {
    switch (type.getSort()) {
      case Type.LONG -> {
        code.visitInsn(LCMP);
        code.visitJumpInsn(IFNE, elsewhere);
      }
      case Type.FLOAT, Type.DOUBLE -> {
        String order = Type.getMethodDescriptor(Type.INT_TYPE, type, type);
        code.visitMethodInsn(INVOKESTATIC, Conversion.boxOf(type), "compare", order, false);
        code.visitJumpInsn(IFNE, elsewhere);
      }
      case Type.ARRAY, Type.OBJECT -> {
        String equality = "(Ljava/lang/Object;Ljava/lang/Object;)Z";
        code.visitMethodInsn(INVOKESTATIC, "java/util/Objects", "equals", equality, false);
        code.visitJumpInsn(IFEQ, elsewhere);
      }
      default -> code.visitJumpInsn(IF_ICMPNE, elsewhere);
    }
  }

  private static void hashCode(String record, List<Handle> components, MethodVisitor code) {
    code.visitInsn(ICONST_0);
    for (Handle component : components) {
      code.visitIntInsn(BIPUSH, MULTIPLIER);
      code.visitInsn(IMUL);
      component(record, component, code);
      Type type = Type.getType(component.getDesc());
      if (Conversion.isPrimitive(type)) {
        String hash = Type.getMethodDescriptor(Type.INT_TYPE, type);
        code.visitMethodInsn(INVOKESTATIC, Conversion.boxOf(type), "hashCode", hash, false);
      } else {
        String hash = "(Ljava/lang/Object;)I";
        code.visitMethodInsn(INVOKESTATIC, "java/util/Objects", "hashCode", hash, false);
      }
      code.visitInsn(IADD);
    }
    code.visitInsn(IRETURN);
    code.visitMaxs(4, 1);
  }

  private static void component(String record, Handle component, MethodVisitor code) {
    code.visitVarInsn(ALOAD, 0);
    code.visitFieldInsn(GETFIELD, record, component.getName(), component.getDesc());
  }
}
