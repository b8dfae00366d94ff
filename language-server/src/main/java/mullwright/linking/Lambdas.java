package mullwright.linking;

import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SUPER;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;
import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.ARETURN;
import static org.objectweb.asm.Opcodes.BIPUSH;
import static org.objectweb.asm.Opcodes.DUP;
import static org.objectweb.asm.Opcodes.GETSTATIC;
import static org.objectweb.asm.Opcodes.ILOAD;
import static org.objectweb.asm.Opcodes.INVOKESPECIAL;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.NEW;
import static org.objectweb.asm.Opcodes.PUTFIELD;
import static org.objectweb.asm.Opcodes.PUTSTATIC;
import static org.objectweb.asm.Opcodes.RETURN;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InsnList;
import org.objectweb.asm.tree.IntInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/**
 * The class that some lambdas of one class become together: an object of it knows which of them it
 * is and holds their values; each method of their interfaces goes by that number to a body.
 *
 * <p>One class for many, because a class costs a cold start more than what its methods do.
 */
final class Lambdas {
  /** So many in one class: a method that grew too long would never be compiled. */
  static final int MOST = 32;

  static final String NUMBER = "number";

  private static final String OBJECT = "java/lang/Object";
  private static final String CONSTRUCTOR = "<init>";
  private static final String OF = "of";
  private static final String ONLY = "only";

  private final String name;
  private final List<Lambda> lambdas = new ArrayList<>();

  Lambdas(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  boolean isFull() {
    return lambdas.size() == MOST;
  }

  /** Takes one more; what stands at its call site from now on. */
  InsnList take(InvokeDynamicInsnNode site) {
    Lambda lambda = new Lambda(site, lambdas.size());
    lambdas.add(lambda);
    InsnList instead = new InsnList();
    if (lambda.isAlone()) {
      instead.add(
          new FieldInsnNode(
              GETSTATIC, name, ONLY + lambda.number(), lambda.face().getDescriptor()));
    } else {
      instead.add(number(lambda));
      instead.add(new MethodInsnNode(INVOKESTATIC, name, OF, maker(lambda), false));
    }
    return instead;
  }

  private static AbstractInsnNode number(Lambda lambda) {
    return new IntInsnNode(BIPUSH, lambda.number());
  }

  /** Of the method that makes an object: what it holds, then its number; its interface. */
  private static String maker(Lambda lambda) {
    return Type.getMethodDescriptor(lambda.face(), held(lambda));
  }

  private static Type[] held(Lambda lambda) {
    return Stream.concat(Arrays.stream(lambda.held()), Stream.of(Type.INT_TYPE))
        .toArray(Type[]::new);
  }

  private static String constructor(Lambda lambda) {
    return Type.getMethodDescriptor(Type.VOID_TYPE, held(lambda));
  }

  /**
   * @param type the class the lambdas stand in
   * @param host the name of the class whose nest they belong to
   */
  byte[] bytes(ClassNode type, String host) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    Set<String> faces = new LinkedHashSet<>();
    lambdas.forEach(lambda -> faces.add(lambda.face().getInternalName()));
    writer.visit(
        type.version,
        ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC,
        name,
        null,
        OBJECT,
        faces.toArray(String[]::new));
    writer.visitSource(type.sourceFile, null);
    writer.visitNestHost(host);
    fields(writer);
    Set<String> made = new LinkedHashSet<>();
    Map<String, List<Lambda>> methods = new LinkedHashMap<>();
    for (Lambda lambda : lambdas) {
      if (made.add(constructor(lambda))) {
        constructor(writer, lambda);
      }
      if (!lambda.isAlone() && made.add(maker(lambda))) {
        maker(writer, lambda);
      }
      methods.computeIfAbsent(lambda.method(), any -> new ArrayList<>()).add(lambda);
    }
    alone(writer);
    methods.values().forEach(same -> new LambdaMethod(name, same).write(writer));
    writer.visitEnd();
    return writer.toByteArray();
  }

  private void fields(ClassWriter writer) {
    writer.visitField(ACC_PRIVATE | ACC_FINAL, NUMBER, "I", null, null);
    Set<HeldField> fields = new LinkedHashSet<>();
    lambdas.forEach(lambda -> fields.addAll(HeldField.of(lambda)));
    for (HeldField field : fields) {
      writer.visitField(
          ACC_PRIVATE | ACC_FINAL, field.name(), field.kind().getDescriptor(), null, null);
    }
  }

  private void constructor(ClassWriter writer, Lambda lambda) {
    MethodVisitor code =
        writer.visitMethod(ACC_PRIVATE, CONSTRUCTOR, constructor(lambda), null, null);
    code.visitCode();
    code.visitVarInsn(ALOAD, 0);
    code.visitMethodInsn(INVOKESPECIAL, OBJECT, CONSTRUCTOR, "()V", false);
    int slot = 1;
    for (HeldField field : HeldField.of(lambda)) {
      code.visitVarInsn(ALOAD, 0);
      code.visitVarInsn(field.kind().getOpcode(ILOAD), slot);
      code.visitFieldInsn(PUTFIELD, name, field.name(), field.kind().getDescriptor());
      slot += field.kind().getSize();
    }
    code.visitVarInsn(ALOAD, 0);
    code.visitVarInsn(ILOAD, slot);
    code.visitFieldInsn(PUTFIELD, name, NUMBER, "I");
    end(code, RETURN);
  }

  private void maker(ClassWriter writer, Lambda lambda) {
    MethodVisitor code = writer.visitMethod(ACC_STATIC, OF, maker(lambda), null, null);
    code.visitCode();
    code.visitTypeInsn(NEW, name);
    code.visitInsn(DUP);
    int slot = 0;
    for (Type one : held(lambda)) {
      code.visitVarInsn(one.getOpcode(ILOAD), slot);
      slot += one.getSize();
    }
    code.visitMethodInsn(INVOKESPECIAL, name, CONSTRUCTOR, constructor(lambda), false);
    end(code, ARETURN);
  }

  /** The objects of those that hold nothing. */
  private void alone(ClassWriter writer) {
    List<Lambda> alone = lambdas.stream().filter(Lambda::isAlone).toList();
    if (alone.isEmpty()) {
      return;
    }
    MethodVisitor code = writer.visitMethod(ACC_STATIC, "<clinit>", "()V", null, null);
    code.visitCode();
    for (Lambda lambda : alone) {
      String face = lambda.face().getDescriptor();
      writer.visitField(ACC_STATIC | ACC_FINAL, ONLY + lambda.number(), face, null, null);
      code.visitTypeInsn(NEW, name);
      code.visitInsn(DUP);
      number(lambda).accept(code);
      code.visitMethodInsn(INVOKESPECIAL, name, CONSTRUCTOR, constructor(lambda), false);
      code.visitFieldInsn(PUTSTATIC, name, ONLY + lambda.number(), face);
    }
    end(code, RETURN);
  }

  private static void end(MethodVisitor code, int instruction) {
    code.visitInsn(instruction);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }
}
