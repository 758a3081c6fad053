package org.swathbook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

class LambdaClassesTest {
  private static final String FOLDER = "org/swathbook/build";

  @TempDir Path folder;

  @BeforeEach
  void copyClassesOfTheExample() throws Exception {
    Path compiled =
        Path.of(Lambdas.class.getProtectionDomain().getCodeSource().getLocation().toURI())
            .resolve(FOLDER);
    Files.createDirectories(folder.resolve(FOLDER));
    try (Stream<Path> all = Files.list(compiled)) {
      for (Path file :
          all.filter(f -> f.getFileName().toString().matches("Lambdas(\\$.*)?\\.class")).toList()) {
        Files.copy(file, folder.resolve(FOLDER).resolve(file.getFileName().toString()));
      }
    }
  }

  /** Loads the example from the folder, apart from the one of this test. */
  private List<String> said() throws Exception {
    URL[] place = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(place, null)) {
      Constructor<?> made =
          loader.loadClass(FOLDER.replace('/', '.') + ".Lambdas").getDeclaredConstructor();
      made.setAccessible(true);
      @SuppressWarnings("unchecked")
      Supplier<List<String>> example = (Supplier<List<String>>) made.newInstance();
      return List.copyOf(example.get());
    }
  }

  private Map<String, byte[]> files() throws IOException {
    Map<String, byte[]> out = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder.resolve(FOLDER))) {
      for (Path file : all.toList()) {
        out.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return out;
  }

  private List<InvokeDynamicInsnNode> linked() throws IOException {
    List<InvokeDynamicInsnNode> out = new ArrayList<>();
    for (byte[] bytes : files().values()) {
      ClassNode node = new ClassNode();
      new ClassReader(bytes).accept(node, 0);
      for (MethodNode method : node.methods) {
        for (AbstractInsnNode i : method.instructions) {
          if (i instanceof InvokeDynamicInsnNode lambda
              && lambda.bsm.getOwner().endsWith("LambdaMetafactory")) {
            out.add(lambda);
          }
        }
      }
    }
    return out;
  }

  @Test
  void classesSayWhatTheLambdasSaid() throws Exception {
    List<String> before = said();
    LambdaClasses.main(new String[] {folder.toString()});
    assertThat(before).hasSizeGreaterThan(10).isEqualTo(new Lambdas().get());
    assertThat(said()).isEqualTo(before);
  }

  @Test
  void onlyTheSerializableOneIsLeft() throws Exception {
    assertThat(linked()).hasSizeGreaterThan(20);
    LambdaClasses.main(new String[] {folder.toString()});
    assertThat(linked().stream().map(i -> i.bsm.getName())).containsOnly("altMetafactory");
  }

  @Test
  void aSecondTimeChangesNothing() throws Exception {
    LambdaClasses.main(new String[] {folder.toString()});
    Map<String, byte[]> once = files();
    LambdaClasses.main(new String[] {folder.toString()});
    assertThat(files()).containsExactlyEntriesOf(once);
  }
}
