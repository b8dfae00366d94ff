package mullwright.linking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Classes that belong together, each with the classes its lambdas have become. */
final class LinkedClasses {
  private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";

  private final Map<String, ClassNode> classes = new LinkedHashMap<>();
  private final Map<String, Map<String, byte[]>> made = new LinkedHashMap<>();
  private final Set<ClassNode> changed = new LinkedHashSet<>();

  /**
   * @param bytes the classes by their names ({@code mullwright/model/Wall}); all that share a nest
   */
  LinkedClasses(Map<String, byte[]> bytes) {
    bytes.forEach(
        (name, code) -> {
          ClassNode type = new ClassNode();
          new ClassReader(code).accept(type, 0);
          classes.put(name, type);
        });
    classes.values().forEach(this::link);
  }

  /**
   * A class as linked, then what its lambdas have become; nothing where the class stays as it is.
   */
  Map<String, byte[]> instead(String name) {
    ClassNode type = classes.get(name);
    if (type == null || !changed.contains(type)) {
      return Map.of();
    }
    Map<String, byte[]> instead = new LinkedHashMap<>();
    ClassWriter writer = new ClassWriter(0);
    type.accept(writer);
    instead.put(name, writer.toByteArray());
    instead.putAll(made.getOrDefault(name, Map.of()));
    return instead;
  }

  private void link(ClassNode type) {
    for (MethodNode method : type.methods) {
      if (RecordMethods.write(type, method)) {
        changed.add(type);
      }
      for (AbstractInsnNode instruction : method.instructions.toArray()) {
        if (instruction instanceof InvokeDynamicInsnNode site && isLambda(site)) {
          method.instructions.set(site, lambda(type, site));
          changed.add(type);
        }
      }
    }
  }

  // the other factory is for lambdas that can be serialised or have further interfaces: rare, and
  // left as they are
  private static boolean isLambda(InvokeDynamicInsnNode site) {
    return site.bsm.getOwner().equals(METAFACTORY) && site.bsm.getName().equals("metafactory");
  }

  private AbstractInsnNode lambda(ClassNode type, InvokeDynamicInsnNode site) {
    ClassNode host = type.nestHostClass == null ? type : classes.get(type.nestHostClass);
    Map<String, byte[]> siblings = made.computeIfAbsent(type.name, any -> new LinkedHashMap<>());
    String name = type.name + "$$" + siblings.size();
    LambdaClass lambda = new LambdaClass(name, type, host.name, site);
    siblings.put(name, lambda.bytes());
    // the body of a lambda is a private method: only a member of the nest may call it
    List<String> nest = new ArrayList<>();
    if (host.nestMembers != null) {
      nest.addAll(host.nestMembers);
    }
    nest.add(name);
    host.nestMembers = nest;
    changed.add(host);
    return lambda.isAlone()
        ? new FieldInsnNode(
            Opcodes.GETSTATIC,
            name,
            LambdaClass.ONLY,
            Type.getReturnType(site.desc).getDescriptor())
        : new MethodInsnNode(Opcodes.INVOKESTATIC, name, LambdaClass.OF, site.desc, false);
  }
}
