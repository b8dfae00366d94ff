package mullwright.linking;

import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.DUP;
import static org.objectweb.asm.Opcodes.F_SAME;
import static org.objectweb.asm.Opcodes.GETFIELD;
import static org.objectweb.asm.Opcodes.H_NEWINVOKESPECIAL;
import static org.objectweb.asm.Opcodes.ILOAD;
import static org.objectweb.asm.Opcodes.IRETURN;
import static org.objectweb.asm.Opcodes.NEW;
import static org.objectweb.asm.Opcodes.POP;
import static org.objectweb.asm.Opcodes.POP2;

import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;

/**
 * A method of the class that lambdas have become: by the number of the object, the body of one of
 * them is called.
 *
 * @param owner the name of the class
 * @param lambdas those whose interface has this method, in the order of their numbers
 */
record LambdaMethod(String owner, List<Lambda> lambdas) {
  void write(ClassWriter writer) {
    Lambda first = lambdas.get(0);
    MethodVisitor code =
        writer.visitMethod(
            ACC_PUBLIC, first.site().name, first.erased().getDescriptor(), null, null);
    code.visitCode();
    if (lambdas.size() == 1) {
      call(code, first);
    } else {
      choose(code);
    }
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void choose(MethodVisitor code) {
    int[] numbers = lambdas.stream().mapToInt(Lambda::number).toArray();
    Label[] labels = lambdas.stream().map(any -> new Label()).toArray(Label[]::new);
    code.visitVarInsn(ALOAD, 0);
    code.visitFieldInsn(GETFIELD, owner, Lambdas.NUMBER, "I");
    // no object has another number: the last serves for all that is left
    code.visitLookupSwitchInsn(labels[labels.length - 1], numbers, labels);
    for (int i = 0; i < labels.length; i++) {
      code.visitLabel(labels[i]);
      code.visitFrame(F_SAME, 0, null, 0, null);
      call(code, lambdas.get(i));
    }
  }

  private void call(MethodVisitor code, Lambda lambda) {
    Handle body = lambda.body();
    if (body.getTag() == H_NEWINVOKESPECIAL) {
      code.visitTypeInsn(NEW, body.getOwner());
      code.visitInsn(DUP);
    }
    arguments(code, lambda);
    code.visitMethodInsn(
        lambda.call(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
    result(code, lambda.given(), lambda.erased().getReturnType(), lambda.exact().getReturnType());
    code.visitInsn(lambda.erased().getReturnType().getOpcode(IRETURN));
  }

  private void arguments(MethodVisitor code, Lambda lambda) {
    List<Type> taken = lambda.taken();
    Type[] held = lambda.held();
    List<HeldField> fields = HeldField.of(lambda);
    for (int i = 0; i < held.length; i++) {
      code.visitVarInsn(ALOAD, 0);
      code.visitFieldInsn(
          GETFIELD, owner, fields.get(i).name(), fields.get(i).kind().getDescriptor());
      Type has = Conversion.isPrimitive(held[i]) ? held[i] : fields.get(i).kind();
      Conversion.write(code, has, held[i], taken.get(i));
    }
    Type[] erased = lambda.erased().getArgumentTypes();
    Type[] exact = lambda.exact().getArgumentTypes();
    int slot = 1;
    for (int i = 0; i < erased.length; i++) {
      code.visitVarInsn(erased[i].getOpcode(ILOAD), slot);
      slot += erased[i].getSize();
      Conversion.write(code, erased[i], exact[i], taken.get(held.length + i));
    }
  }

  private static void result(MethodVisitor code, Type given, Type erased, Type exact) {
    if (erased.getSort() != Type.VOID) {
      Conversion.write(code, given, given, Conversion.isPrimitive(erased) ? erased : exact);
    } else if (given.getSize() > 0) {
      code.visitInsn(given.getSize() == 1 ? POP : POP2);
    }
  }
}
