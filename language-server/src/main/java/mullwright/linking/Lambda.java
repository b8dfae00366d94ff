package mullwright.linking;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

/**
 * One lambda or method reference, as its call site tells it.
 *
 * <p>Source: the contract of {@link java.lang.invoke.LambdaMetafactory#metafactory}, whose
 * arguments the call site carries.
 *
 * @param site what the compiler left
 * @param number among those of its class
 */
record Lambda(InvokeDynamicInsnNode site, int number) {
  private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";

  /**
   * True for a call site that makes a lambda. The other factory is for lambdas that can be
   * serialised or have further interfaces: rare, and left as they are.
   */
  static boolean isMadeBy(InvokeDynamicInsnNode site) {
    return site.bsm.getOwner().equals(METAFACTORY) && site.bsm.getName().equals("metafactory");
  }

  /** The interface. */
  Type face() {
    return Type.getReturnType(site.desc);
  }

  /** The types of the values it holds. */
  Type[] held() {
    return Type.getArgumentTypes(site.desc);
  }

  /** Whether it holds nothing, so that one object serves all. */
  boolean isAlone() {
    return held().length == 0;
  }

  /** The one method of the interface, as the class file knows it: name and type. */
  String method() {
    return site.name + erased().getDescriptor();
  }

  /** The type of that method without what generics say of it. */
  Type erased() {
    return (Type) site.bsmArgs[0];
  }

  /** The type of that method, with it. */
  Type exact() {
    return (Type) site.bsmArgs[2];
  }

  /** What the compiler made of the body. */
  Handle body() {
    return (Handle) site.bsmArgs[1];
  }

  /** What the body takes, its own object first where it has one: the held values, then the rest. */
  List<Type> taken() {
    Handle body = body();
    List<Type> taken = new ArrayList<>();
    if (body.getTag() != Opcodes.H_INVOKESTATIC && body.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
      taken.add(Type.getObjectType(body.getOwner()));
    }
    taken.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
    return taken;
  }

  /** What the body gives back. */
  Type given() {
    return body().getTag() == Opcodes.H_NEWINVOKESPECIAL
        ? Type.getObjectType(body().getOwner())
        : Type.getReturnType(body().getDesc());
  }

  /** How the body is called; within a nest a private method is called like any other. */
  int call() {
    return switch (body().getTag()) {
      case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
      case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
      default -> body().isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    };
  }
}
