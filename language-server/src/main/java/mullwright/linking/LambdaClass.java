package mullwright.linking;

import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SUPER;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;
import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.ARETURN;
import static org.objectweb.asm.Opcodes.DUP;
import static org.objectweb.asm.Opcodes.GETFIELD;
import static org.objectweb.asm.Opcodes.H_INVOKEINTERFACE;
import static org.objectweb.asm.Opcodes.H_INVOKESTATIC;
import static org.objectweb.asm.Opcodes.H_NEWINVOKESPECIAL;
import static org.objectweb.asm.Opcodes.ILOAD;
import static org.objectweb.asm.Opcodes.INVOKEINTERFACE;
import static org.objectweb.asm.Opcodes.INVOKESPECIAL;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.INVOKEVIRTUAL;
import static org.objectweb.asm.Opcodes.IRETURN;
import static org.objectweb.asm.Opcodes.NEW;
import static org.objectweb.asm.Opcodes.POP;
import static org.objectweb.asm.Opcodes.POP2;
import static org.objectweb.asm.Opcodes.PUTFIELD;
import static org.objectweb.asm.Opcodes.PUTSTATIC;
import static org.objectweb.asm.Opcodes.RETURN;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

/**
 * The class one lambda or method reference becomes: a field for each value it holds, and the one
 * method of its interface, which calls what the compiler made of its body.
 *
 * <p>Source: the contract of {@link java.lang.invoke.LambdaMetafactory#metafactory}, whose
 * arguments the call site carries.
 */
final class LambdaClass {
  /** The field with the one object of a lambda that holds nothing. */
  static final String ONLY = "ONLY";

  /** The method that makes the object of a lambda from what it holds. */
  static final String OF = "of";

  private static final String OBJECT = "java/lang/Object";
  private static final String CONSTRUCTOR = "<init>";

  private final String name;
  private final ClassNode type;
  private final String host;
  private final InvokeDynamicInsnNode site;
  private final Type[] held;
  private final Type face;

  /**
   * @param name the name the class gets
   * @param type the class the lambda stands in
   * @param host the name of the class whose nest it belongs to
   * @param site the call site the compiler left
   */
  LambdaClass(String name, ClassNode type, String host, InvokeDynamicInsnNode site) {
    this.name = name;
    this.type = type;
    this.host = host;
    this.site = site;
    this.held = Type.getArgumentTypes(site.desc);
    this.face = Type.getReturnType(site.desc);
  }

  /** Whether it holds nothing, so that one object serves all. */
  boolean isAlone() {
    return held.length == 0;
  }

  byte[] bytes() {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    writer.visit(
        type.version,
        ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC,
        name,
        null,
        OBJECT,
        new String[] {face.getInternalName()});
    writer.visitSource(type.sourceFile, null);
    writer.visitNestHost(host);
    constructor(writer);
    if (isAlone()) {
      only(writer);
    } else {
      of(writer);
    }
    body(writer);
    writer.visitEnd();
    return writer.toByteArray();
  }

  private String constructorType() {
    return Type.getMethodDescriptor(Type.VOID_TYPE, held);
  }

  private void constructor(ClassWriter writer) {
    MethodVisitor code =
        writer.visitMethod(ACC_PRIVATE, CONSTRUCTOR, constructorType(), null, null);
    code.visitCode();
    code.visitVarInsn(ALOAD, 0);
    code.visitMethodInsn(INVOKESPECIAL, OBJECT, CONSTRUCTOR, "()V", false);
    int slot = 1;
    for (int i = 0; i < held.length; i++) {
      writer.visitField(ACC_PRIVATE | ACC_FINAL, field(i), held[i].getDescriptor(), null, null);
      code.visitVarInsn(ALOAD, 0);
      code.visitVarInsn(held[i].getOpcode(ILOAD), slot);
      code.visitFieldInsn(PUTFIELD, name, field(i), held[i].getDescriptor());
      slot += held[i].getSize();
    }
    end(code, RETURN);
  }

  private void only(ClassWriter writer) {
    writer.visitField(ACC_STATIC | ACC_FINAL, ONLY, face.getDescriptor(), null, null);
    MethodVisitor code = writer.visitMethod(ACC_STATIC, "<clinit>", "()V", null, null);
    code.visitCode();
    code.visitTypeInsn(NEW, name);
    code.visitInsn(DUP);
    code.visitMethodInsn(INVOKESPECIAL, name, CONSTRUCTOR, "()V", false);
    code.visitFieldInsn(PUTSTATIC, name, ONLY, face.getDescriptor());
    end(code, RETURN);
  }

  private void of(ClassWriter writer) {
    MethodVisitor code = writer.visitMethod(ACC_STATIC, OF, site.desc, null, null);
    code.visitCode();
    code.visitTypeInsn(NEW, name);
    code.visitInsn(DUP);
    int slot = 0;
    for (Type one : held) {
      code.visitVarInsn(one.getOpcode(ILOAD), slot);
      slot += one.getSize();
    }
    code.visitMethodInsn(INVOKESPECIAL, name, CONSTRUCTOR, constructorType(), false);
    end(code, ARETURN);
  }

  private void body(ClassWriter writer) {
    Type erased = (Type) site.bsmArgs[0];
    Handle called = (Handle) site.bsmArgs[1];
    Type exact = (Type) site.bsmArgs[2];
    MethodVisitor code =
        writer.visitMethod(ACC_PUBLIC, site.name, erased.getDescriptor(), null, null);
    code.visitCode();
    if (called.getTag() == H_NEWINVOKESPECIAL) {
      code.visitTypeInsn(NEW, called.getOwner());
      code.visitInsn(DUP);
    }
    arguments(code, wanted(called), erased.getArgumentTypes(), exact.getArgumentTypes());
    code.visitMethodInsn(
        instruction(called),
        called.getOwner(),
        called.getName(),
        called.getDesc(),
        called.isInterface());
    result(code, given(called), erased.getReturnType(), exact.getReturnType());
    end(code, erased.getReturnType().getOpcode(IRETURN));
  }

  private void arguments(MethodVisitor code, List<Type> wanted, Type[] erased, Type[] exact) {
    for (int i = 0; i < held.length; i++) {
      code.visitVarInsn(ALOAD, 0);
      code.visitFieldInsn(GETFIELD, name, field(i), held[i].getDescriptor());
      Conversion.write(code, held[i], held[i], wanted.get(i));
    }
    int slot = 1;
    for (int i = 0; i < erased.length; i++) {
      code.visitVarInsn(erased[i].getOpcode(ILOAD), slot);
      slot += erased[i].getSize();
      Conversion.write(code, erased[i], exact[i], wanted.get(held.length + i));
    }
  }

  private static void result(MethodVisitor code, Type given, Type erased, Type exact) {
    if (erased.getSort() != Type.VOID) {
      Conversion.write(code, given, given, Conversion.isPrimitive(erased) ? erased : exact);
    } else if (given.getSize() > 0) {
      code.visitInsn(given.getSize() == 1 ? POP : POP2);
    }
  }

  /** What the body takes, its own object first where it has one. */
  private static List<Type> wanted(Handle called) {
    List<Type> wanted = new ArrayList<>();
    if (called.getTag() != H_INVOKESTATIC && called.getTag() != H_NEWINVOKESPECIAL) {
      wanted.add(Type.getObjectType(called.getOwner()));
    }
    wanted.addAll(List.of(Type.getArgumentTypes(called.getDesc())));
    return wanted;
  }

  private static Type given(Handle called) {
    return called.getTag() == H_NEWINVOKESPECIAL
        ? Type.getObjectType(called.getOwner())
        : Type.getReturnType(called.getDesc());
  }

  // within a nest a private method is called like any other
  private static int instruction(Handle called) {
    return switch (called.getTag()) {
      case H_INVOKESTATIC -> INVOKESTATIC;
      case H_NEWINVOKESPECIAL -> INVOKESPECIAL;
      case H_INVOKEINTERFACE -> INVOKEINTERFACE;
      default -> called.isInterface() ? INVOKEINTERFACE : INVOKEVIRTUAL;
    };
  }

  private static String field(int i) {
    return "held" + i;
  }

  private static void end(MethodVisitor code, int instruction) {
    code.visitInsn(instruction);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }
}
