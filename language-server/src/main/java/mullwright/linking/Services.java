package mullwright.linking;

import static org.objectweb.asm.Opcodes.AASTORE;
import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SUPER;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;
import static org.objectweb.asm.Opcodes.ANEWARRAY;
import static org.objectweb.asm.Opcodes.ARETURN;
import static org.objectweb.asm.Opcodes.DUP;
import static org.objectweb.asm.Opcodes.INVOKESPECIAL;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.NEW;
import static org.objectweb.asm.Opcodes.SIPUSH;
import static org.objectweb.asm.Opcodes.V17;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.LdcInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Lists the providers of services ahead: to look for them at run time opens Java's own modules and
 * the jar, some eight thousand entries of it, and every start would do so.
 *
 * <p>Meant are the calls {@code ServiceLoader.load(Service.class, loader)} of which all is taken,
 * by {@code forEach} or a loop. Where a provider may never be made, as behind {@code stream} or
 * {@code findFirst}, the call stays. The order is that of the jar's list, as before.
 */
final class Services {
  private static final String LOADER = "java/util/ServiceLoader";
  private static final String ALL = "()Ljava/util/List;";

  /** What a list can do in the loader's place. */
  private static final Set<String> TAKES_ALL = Set.of("forEach", "iterator");

  private final Map<String, List<String>> providers;

  /**
   * @param providers the classes a jar lists for each service, all by their internal names
   */
  Services(Map<String, List<String>> providers) {
    this.providers = providers;
  }

  /** The class that lists a service's providers. */
  static String lister(String service) {
    return service + "$$Providers";
  }

  /** Lets a method take the list in place of what it would look for; the services it asked for. */
  List<String> link(MethodNode method) {
    List<String> linked = new ArrayList<>();
    for (AbstractInsnNode instruction : method.instructions.toArray()) {
      if (instruction instanceof MethodInsnNode load
          && load.owner.equals(LOADER)
          && load.name.equals("load")) {
        String service = asked(load);
        MethodInsnNode use = use(load);
        if (service != null && use != null && providers.containsKey(service)) {
          for (int i = 0; i < 3; i++) {
            method.instructions.remove(load.getPrevious());
          }
          method.instructions.set(
              load, new MethodInsnNode(INVOKESTATIC, lister(service), "all", ALL, false));
          use.setOpcode(Opcodes.INVOKEINTERFACE);
          use.owner = "java/lang/Iterable";
          use.itf = true;
          linked.add(service);
        }
      }
    }
    return linked;
  }

  /** The service of {@code load(Service.class, Some.class.getClassLoader())}; null of another. */
  private static String asked(MethodInsnNode load) {
    AbstractInsnNode loader = load.getPrevious();
    AbstractInsnNode some = loader == null ? null : loader.getPrevious();
    AbstractInsnNode service = some == null ? null : some.getPrevious();
    return loader instanceof MethodInsnNode call
            && call.name.equals("getClassLoader")
            && some instanceof LdcInsnNode
            && service instanceof LdcInsnNode name
            && name.cst instanceof Type type
        ? type.getInternalName()
        : null;
  }

  /** What is next done with a loader, if it takes all there is; else null. */
  private static MethodInsnNode use(MethodInsnNode load) {
    for (AbstractInsnNode next = load.getNext(); next != null; next = next.getNext()) {
      if (next instanceof MethodInsnNode call && call.owner.equals(LOADER)) {
        return TAKES_ALL.contains(call.name) ? call : null;
      }
    }
    return null;
  }

  /** That class: {@code all()} makes one of each. */
  byte[] listing(String service) {
    List<String> all = providers.get(service);
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    writer.visit(
        V17,
        ACC_PUBLIC | ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC,
        lister(service),
        null,
        "java/lang/Object",
        null);
    MethodVisitor method = writer.visitMethod(ACC_PUBLIC | ACC_STATIC, "all", ALL, null, null);
    method.visitCode();
    method.visitIntInsn(SIPUSH, all.size());
    method.visitTypeInsn(ANEWARRAY, service);
    for (int i = 0; i < all.size(); i++) {
      method.visitInsn(DUP);
      method.visitIntInsn(SIPUSH, i);
      method.visitTypeInsn(NEW, all.get(i));
      method.visitInsn(DUP);
      method.visitMethodInsn(INVOKESPECIAL, all.get(i), "<init>", "()V", false);
      method.visitInsn(AASTORE);
    }
    method.visitMethodInsn(
        INVOKESTATIC, "java/util/List", "of", "([Ljava/lang/Object;)Ljava/util/List;", true);
    method.visitInsn(ARETURN);
    method.visitMaxs(0, 0);
    method.visitEnd();
    writer.visitEnd();
    return writer.toByteArray();
  }
}
