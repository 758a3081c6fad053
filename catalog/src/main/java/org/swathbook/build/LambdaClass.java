package org.swathbook.build;

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
import static org.objectweb.asm.Opcodes.GETSTATIC;
import static org.objectweb.asm.Opcodes.H_INVOKEINTERFACE;
import static org.objectweb.asm.Opcodes.H_INVOKESPECIAL;
import static org.objectweb.asm.Opcodes.H_INVOKESTATIC;
import static org.objectweb.asm.Opcodes.H_INVOKEVIRTUAL;
import static org.objectweb.asm.Opcodes.H_NEWINVOKESPECIAL;
import static org.objectweb.asm.Opcodes.ILOAD;
import static org.objectweb.asm.Opcodes.INVOKEINTERFACE;
import static org.objectweb.asm.Opcodes.INVOKESPECIAL;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.INVOKEVIRTUAL;
import static org.objectweb.asm.Opcodes.IRETURN;
import static org.objectweb.asm.Opcodes.NEW;
import static org.objectweb.asm.Opcodes.PUTFIELD;
import static org.objectweb.asm.Opcodes.PUTSTATIC;
import static org.objectweb.asm.Opcodes.RETURN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.FieldNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * One lambda or method reference as a class: a final field for each value that it holds, and the
 * one method of its interface, which calls the method that the compiler made of the body. One that
 * holds nothing has a single instance. It is a nestmate of the class that it stands in, whose
 * private methods it may call.
 */
final class LambdaClass {
  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String OBJECT = "java/lang/Object";
  private static final String ONLY = "ONLY";
  private static final String OF = "of";

  private final ClassNode node = new ClassNode();
  private final InvokeDynamicInsnNode lambda;
  private final Handle body;
  private final Type[] held;

  private LambdaClass(ClassNode in, InvokeDynamicInsnNode lambda, int number) {
    this.lambda = lambda;
    this.body = (Handle) lambda.bsmArgs[1];
    this.held = Type.getArgumentTypes(lambda.desc);
    node.version = in.version;
    node.access = ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC;
    node.name = in.name + "$$Lambda" + number;
    node.superName = OBJECT;
    node.interfaces = List.of(Type.getReturnType(lambda.desc).getInternalName());
    node.sourceFile = in.sourceFile;
    node.nestHostClass = in.nestHostClass == null ? in.name : in.nestHostClass;
  }

  /**
   * The class of a lambda.
   *
   * @param in the class that it stands in
   * @param number of the lambda in that class
   * @return empty when it is no lambda, or one that Java must link itself
   */
  static Optional<LambdaClass> of(ClassNode in, InvokeDynamicInsnNode lambda, int number) {
    // The other factory method makes serializable ones and such with a second interface.
    if (!lambda.bsm.getOwner().equals(FACTORY) || !lambda.bsm.getName().equals("metafactory")) {
      return Optional.empty();
    }
    LambdaClass made = new LambdaClass(in, lambda, number);
    // A method of an array has no class to call it by; one called by super is not ours to call.
    if (made.body.getOwner().startsWith("[")
        || made.body.getTag() == H_INVOKESPECIAL && !made.body.getOwner().equals(in.name)) {
      return Optional.empty();
    }
    return made.addMethod() ? Optional.of(made.addMaking()) : Optional.empty();
  }

  ClassNode node() {
    return node;
  }

  /** What takes the place of the lambda: it leaves the instance where the lambda left it. */
  AbstractInsnNode instance() {
    return held.length == 0
        ? new FieldInsnNode(GETSTATIC, node.name, ONLY, "L" + node.name + ";")
        : new MethodInsnNode(INVOKESTATIC, node.name, OF, lambda.desc, false);
  }

  private LambdaClass addMaking() {
    String made = Type.getMethodDescriptor(Type.VOID_TYPE, held);
    MethodNode init = new MethodNode(ACC_PRIVATE, "<init>", made, null, null);
    init.visitVarInsn(ALOAD, 0);
    init.visitMethodInsn(INVOKESPECIAL, OBJECT, "<init>", "()V", false);
    int slot = 1;
    for (int i = 0; i < held.length; i++) {
      String type = held[i].getDescriptor();
      node.fields.add(new FieldNode(ACC_PRIVATE | ACC_FINAL, field(i), type, null, null));
      init.visitVarInsn(ALOAD, 0);
      init.visitVarInsn(held[i].getOpcode(ILOAD), slot);
      init.visitFieldInsn(PUTFIELD, node.name, field(i), type);
      slot += held[i].getSize();
    }
    init.visitInsn(RETURN);
    init.visitMaxs(3, slot);
    node.methods.add(init);
    if (held.length == 0) {
      addOnly(made);
    } else {
      addOf(made);
    }
    return this;
  }

  private static String field(int i) {
    return "held" + i;
  }

  private void addOnly(String made) {
    String type = "L" + node.name + ";";
    node.fields.add(new FieldNode(ACC_STATIC | ACC_FINAL, ONLY, type, null, null));
    MethodNode start = new MethodNode(ACC_STATIC, "<clinit>", "()V", null, null);
    start.visitTypeInsn(NEW, node.name);
    start.visitInsn(DUP);
    start.visitMethodInsn(INVOKESPECIAL, node.name, "<init>", made, false);
    start.visitFieldInsn(PUTSTATIC, node.name, ONLY, type);
    start.visitInsn(RETURN);
    start.visitMaxs(2, 0);
    node.methods.add(start);
  }

  private void addOf(String made) {
    MethodNode of = new MethodNode(ACC_STATIC, OF, lambda.desc, null, null);
    of.visitTypeInsn(NEW, node.name);
    of.visitInsn(DUP);
    int slot = 0;
    for (Type type : held) {
      of.visitVarInsn(type.getOpcode(ILOAD), slot);
      slot += type.getSize();
    }
    of.visitMethodInsn(INVOKESPECIAL, node.name, "<init>", made, false);
    of.visitInsn(ARETURN);
    of.visitMaxs(slot + 2, slot);
    node.methods.add(of);
  }

  /** The method of the interface; false when values would have to be turned in a way unknown. */
  private boolean addMethod() {
    Type seen = (Type) lambda.bsmArgs[0];
    Type meant = (Type) lambda.bsmArgs[2];
    boolean isNew = body.getTag() == H_NEWINVOKESPECIAL;
    MethodNode method = new MethodNode(ACC_PUBLIC, lambda.name, seen.getDescriptor(), null, null);
    Conversion conversion = new Conversion(method);
    if (isNew) {
      method.visitTypeInsn(NEW, body.getOwner());
      method.visitInsn(DUP);
    }
    List<Type> wanted = wanted();
    for (int i = 0; i < held.length; i++) {
      method.visitVarInsn(ALOAD, 0);
      method.visitFieldInsn(GETFIELD, node.name, field(i), held[i].getDescriptor());
      if (!conversion.turn(held[i], held[i], wanted.get(i))) {
        return false;
      }
    }
    int slot = 1;
    int stack = 2;
    for (Type type : held) {
      stack += type.getSize();
    }
    Type[] arguments = seen.getArgumentTypes();
    for (int i = 0; i < arguments.length; i++) {
      method.visitVarInsn(arguments[i].getOpcode(ILOAD), slot);
      slot += arguments[i].getSize();
      Type want = wanted.get(held.length + i);
      stack += Math.max(arguments[i].getSize(), want.getSize());
      if (!conversion.turn(arguments[i], meant.getArgumentTypes()[i], want)) {
        return false;
      }
    }
    method.visitMethodInsn(
        opcode(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
    Type got = isNew ? Type.getObjectType(body.getOwner()) : Type.getReturnType(body.getDesc());
    Type due = seen.getReturnType();
    if (due.getSort() == Type.VOID) {
      conversion.drop(got);
      method.visitInsn(RETURN);
    } else if (conversion.turn(got, got, due)) {
      method.visitInsn(due.getOpcode(IRETURN));
    } else {
      return false;
    }
    method.visitMaxs(stack + 2, slot);
    node.methods.add(method);
    return true;
  }

  /** Types that the body takes: what it is called on, and its arguments. */
  private List<Type> wanted() {
    List<Type> all = new ArrayList<>();
    if (body.getTag() != H_INVOKESTATIC && body.getTag() != H_NEWINVOKESPECIAL) {
      all.add(Type.getObjectType(body.getOwner()));
    }
    all.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
    return all;
  }

  private int opcode() {
    return switch (body.getTag()) {
      case H_INVOKESTATIC -> INVOKESTATIC;
      case H_NEWINVOKESPECIAL -> INVOKESPECIAL;
      case H_INVOKEINTERFACE -> INVOKEINTERFACE;
      // A private method of a nestmate is called as any other.
      case H_INVOKESPECIAL -> body.isInterface() ? INVOKEINTERFACE : INVOKEVIRTUAL;
      case H_INVOKEVIRTUAL -> INVOKEVIRTUAL;
      default -> throw new IllegalStateException("a lambda of a field: " + body);
    };
  }
}
