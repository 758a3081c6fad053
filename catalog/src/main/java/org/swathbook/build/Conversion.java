package org.swathbook.build;

import static org.objectweb.asm.Opcodes.CHECKCAST;
import static org.objectweb.asm.Opcodes.I2D;
import static org.objectweb.asm.Opcodes.I2L;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.INVOKEVIRTUAL;
import static org.objectweb.asm.Opcodes.L2D;
import static org.objectweb.asm.Opcodes.POP;
import static org.objectweb.asm.Opcodes.POP2;

import java.util.Map;
import java.util.Optional;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.MethodNode;

/**
 * Turns the value on top of the stack from the type that an interface shows it in into the one that
 * a method takes: casts, boxes, takes out of boxes and widens as the language does in a call.
 */
final class Conversion {
  private static final Map<String, Type> IN_BOX =
      Map.of(
          "java/lang/Boolean", Type.BOOLEAN_TYPE,
          "java/lang/Character", Type.CHAR_TYPE,
          "java/lang/Byte", Type.BYTE_TYPE,
          "java/lang/Short", Type.SHORT_TYPE,
          "java/lang/Integer", Type.INT_TYPE,
          "java/lang/Float", Type.FLOAT_TYPE,
          "java/lang/Long", Type.LONG_TYPE,
          "java/lang/Double", Type.DOUBLE_TYPE);

  private final MethodNode method;

  Conversion(MethodNode method) {
    this.method = method;
  }

  /**
   * Turns the value, where that is known how.
   *
   * @param seen its type on the stack, with type variables erased
   * @param meant what it is in truth; a subtype of what is seen
   * @param want the type to leave
   * @return false when it is not known
   */
  boolean turn(Type seen, Type meant, Type want) {
    if (isPrimitive(meant)) {
      return isPrimitive(want) ? widen(meant, want) : box(meant);
    }
    if (!isPrimitive(want)) {
      cast(seen, want);
      return true;
    }
    Optional<Type> inside = Optional.ofNullable(IN_BOX.get(meant.getInternalName()));
    if (inside.isEmpty()) {
      return false;
    }
    cast(seen, meant);
    Type of = inside.get();
    method.visitMethodInsn(
        INVOKEVIRTUAL,
        meant.getInternalName(),
        of.getClassName() + "Value",
        Type.getMethodDescriptor(of),
        false);
    return widen(of, want);
  }

  /** Takes a result off the stack that nobody wants. */
  void drop(Type got) {
    if (got.getSize() > 0) {
      method.visitInsn(got.getSize() == 2 ? POP2 : POP);
    }
  }

  private void cast(Type seen, Type want) {
    if (!seen.equals(want) && !want.getInternalName().equals("java/lang/Object")) {
      method.visitTypeInsn(CHECKCAST, want.getInternalName());
    }
  }

  private boolean box(Type of) {
    for (Map.Entry<String, Type> box : IN_BOX.entrySet()) {
      if (box.getValue().equals(of)) {
        String made = Type.getMethodDescriptor(Type.getObjectType(box.getKey()), of);
        method.visitMethodInsn(INVOKESTATIC, box.getKey(), "valueOf", made, false);
        return true;
      }
    }
    return false;
  }

  private boolean widen(Type from, Type to) {
    if (from.equals(to)) {
      return true;
    }
    String way = from.getDescriptor() + to.getDescriptor();
    switch (way) {
      case "IJ" -> method.visitInsn(I2L);
      case "ID" -> method.visitInsn(I2D);
      case "JD" -> method.visitInsn(L2D);
      default -> {
        return false;
      }
    }
    return true;
  }

  private static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }
}
