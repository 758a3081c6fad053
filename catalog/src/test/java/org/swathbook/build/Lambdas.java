package org.swathbook.build;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntSupplier;
import java.util.function.LongUnaryOperator;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One of each kind of lambda and method reference, for the test that turns them into classes. */
@SuppressWarnings("UnnecessaryLambda")
final class Lambdas implements Supplier<List<String>> {
  private static int counted;
  private final String own = "own";

  /** A body in an interface, which Java calls otherwise than one in a class. */
  private interface Named {
    String name();

    default Supplier<String> twice() {
      return () -> once() + once();
    }

    private String once() {
      return name();
    }
  }

  private interface Keeps<T extends Comparable<T>> {
    T greater(T a, T b);
  }

  private static class Inner {
    private final int n;

    private Inner(int n) {
      this.n = n;
    }

    private int times(int by) {
      return n * by;
    }

    Supplier<Integer> later(long more, double share) {
      return () -> (int) (n + more + share);
    }
  }

  private static int count() {
    return ++counted;
  }

  private static Runnable holdingNothing() {
    return Lambdas::count;
  }

  private static long wide(int n) {
    return 10L * n;
  }

  private static <T extends Comparable<T>> T greater(T a, T b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private static String all(String... parts) {
    return String.join("+", parts);
  }

  private String mine(String text) {
    return own + text;
  }

  /** What all of them say, in order. */
  @Override
  public List<String> get() {
    List<String> out = new ArrayList<>();
    int kept = 7;
    long more = 5_000_000_000L;
    Function<String, String> none = t -> t + "!";
    Function<String, String> holds = t -> t + kept + more + own;
    Function<String, String> bound = this::mine;
    out.add(none.apply("a") + holds.apply("b") + bound.apply("c"));
    IntFunction<Inner> made = Inner::new;
    BiFunction<Inner, Integer, Integer> called = Inner::times;
    out.add("" + called.apply(made.apply(3), 4));
    ToLongFunction<Integer> widened = Integer::intValue;
    ToDoubleFunction<Long> fromBox = n -> n;
    ToDoubleFunction<Integer> unboxed = Integer::longValue;
    LongUnaryOperator plain = Math::abs;
    DoubleUnaryOperator root = Math::sqrt;
    Function<Integer, Long> boxed = Lambdas::wide;
    out.add(
        ""
            + widened.applyAsLong(2)
            + fromBox.applyAsDouble(3L)
            + unboxed.applyAsDouble(4)
            + plain.applyAsLong(-5)
            + root.applyAsDouble(9)
            + boxed.apply(6));
    Runnable dropped = Lambdas::count;
    dropped.run();
    IntSupplier again = Lambdas::count;
    out.add("" + (again.getAsInt() > 1));
    List<Runnable> met = List.of(holdingNothing(), holdingNothing());
    out.add("" + (met.get(0) == met.get(1)));
    Keeps<String> bounded = Lambdas::greater;
    out.add(bounded.greater("x", "y"));
    Function<String, String> many = Lambdas::all;
    out.add(many.apply("one"));
    IntFunction<String[]> array = String[]::new;
    out.add("" + array.apply(3).length);
    Function<int[], int[]> copied = int[]::clone;
    out.add("" + copied.apply(new int[] {1, 2}).length);
    Named named = () -> "n";
    out.add(named.twice().get());
    out.add("" + new Inner(1).later(2, 3.5).get());
    Supplier<String> kind = (Supplier<String> & Serializable) () -> "kept";
    out.add(kind.get());
    Comparator<String> order = Comparator.comparing(String::length);
    out.add("" + Stream.of("ccc", "a", "bb").sorted(order.thenComparing(t -> t)).toList());
    Map<String, List<Integer>> map = new TreeMap<>();
    IntStream.range(0, 3)
        .forEach(i -> map.computeIfAbsent("k" + i % 2, k -> new ArrayList<>()).add(i));
    out.add(map.toString());
    ToIntFunction<CharSequence> length = CharSequence::length;
    out.add("" + length.applyAsInt("four"));
    Supplier<Supplier<String>> nested = () -> () -> own + kept;
    out.add(nested.get().get());
    return out;
  }
}
