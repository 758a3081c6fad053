package org.swathbook.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Run by the build: turns the lambdas and method references of compiled classes into classes of
 * their own. Java links each of them when it is met for the first time, which a class archive
 * hardly shortens: some 90 µs each, of which a short command meets eight hundred. A small class out
 * of the archive takes a tenth of that. What is made is what {@link
 * java.lang.invoke.LambdaMetafactory} would make at run time; what it would make otherwise than
 * {@link LambdaClass} can is left to it.
 */
public final class LambdaClasses {
  private final Map<String, ClassNode> classes = new TreeMap<>();
  private final Map<String, ClassNode> changed = new TreeMap<>();
  private final Map<String, List<String>> newMembers = new HashMap<>();

  private LambdaClasses() {}

  /**
   * Changes the classes of folders in place; classes that were changed before stay as they are.
   *
   * @param args folders of compiled classes
   */
  public static void main(String[] args) throws IOException {
    for (String folder : args) {
      new LambdaClasses().change(Path.of(folder));
    }
  }

  private void change(Path folder) throws IOException {
    for (Path file : classFiles(folder)) {
      ClassNode node = new ClassNode();
      new ClassReader(Files.readAllBytes(file)).accept(node, 0);
      classes.put(node.name, node);
    }
    for (ClassNode node : List.copyOf(classes.values())) {
      takeOut(node);
    }
    newMembers.forEach(this::join);
    for (ClassNode node : changed.values()) {
      ClassWriter writer = new ClassWriter(0);
      node.accept(writer);
      Files.write(folder.resolve(node.name + ".class"), writer.toByteArray());
    }
  }

  private static List<Path> classFiles(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(f -> f.toString().endsWith(".class")).toList();
    }
  }

  private void takeOut(ClassNode node) {
    int number = 0;
    for (MethodNode method : node.methods) {
      for (AbstractInsnNode instruction : method.instructions.toArray()) {
        if (instruction instanceof InvokeDynamicInsnNode lambda) {
          Optional<LambdaClass> made = LambdaClass.of(node, lambda, number);
          if (made.isPresent()) {
            number++;
            method.instructions.set(instruction, made.get().instance());
            changed.put(node.name, node);
            add(made.get().node());
          }
        }
      }
    }
  }

  private void add(ClassNode made) {
    changed.put(made.name, made);
    newMembers.computeIfAbsent(made.nestHostClass, h -> new ArrayList<>()).add(made.name);
  }

  /** A nest is named from both sides: by its members, and by the class that is its host. */
  private void join(String name, List<String> members) {
    ClassNode host = classes.get(name);
    if (host == null) {
      throw new IllegalStateException("the class " + name + " is not in the folder");
    }
    List<String> all = new ArrayList<>();
    if (host.nestMembers != null) {
      all.addAll(host.nestMembers);
    }
    all.addAll(members);
    host.nestMembers = all;
    changed.put(name, host);
  }
}
