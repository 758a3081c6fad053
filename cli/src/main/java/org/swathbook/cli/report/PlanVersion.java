package org.swathbook.cli.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/** Tells one version of a field's program from another, and in what they differ. */
public final class PlanVersion {
  /** Enough to tell versions of one field apart, short enough to be said on the telephone. */
  private static final int LETTERS = 6;

  private PlanVersion() {}

  /** Six letters that are the same for the same dates, products and rates, and for no others. */
  public static String of(Program program) {
    StringBuilder what = new StringBuilder(program.field().value());
    for (Pass p : program.passes()) {
      what.append('\n').append(p.at()).append(doses(p)).append(p.mix().adjuvants());
      what.append(p.mix().gallonsPerAcre());
    }
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(what.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** From an earlier version to a later one, one sentence each; nothing when both are alike. */
  public static List<String> changes(Program earlier, Program later) {
    List<String> out = new ArrayList<>();
    int both = Math.min(earlier.passes().size(), later.passes().size());
    for (int i = 0; i < both; i++) {
      pass(out, "Pass " + (i + 1) + ": ", earlier.passes().get(i), later.passes().get(i));
    }
    for (int i = both; i < later.passes().size(); i++) {
      Pass p = later.passes().get(i);
      out.add("Pass " + (i + 1) + " is new: " + p.at() + ", " + all(p) + ".");
    }
    for (int i = both; i < earlier.passes().size(); i++) {
      Pass p = earlier.passes().get(i);
      out.add("Pass " + (i + 1) + " is gone: " + p.at() + ", " + all(p) + ".");
    }
    return out;
  }

  private static void pass(List<String> out, String pass, Pass earlier, Pass later) {
    if (!earlier.at().equals(later.at())) {
      out.add(pass + "now " + later.at() + ", was " + earlier.at() + ".");
    }
    Map<String, String> before = doses(earlier);
    Map<String, String> after = doses(later);
    after.forEach(
        (product, rate) -> {
          String was = before.get(product);
          if (was == null) {
            out.add(pass + product + " " + rate + " is new.");
          } else if (!was.equals(rate)) {
            out.add(pass + product + " now " + rate + ", was " + was + ".");
          }
        });
    before.forEach(
        (product, rate) -> {
          if (!after.containsKey(product)) {
            out.add(pass + product + " " + rate + " is gone.");
          }
        });
    if (!earlier.mix().adjuvants().equals(later.mix().adjuvants())) {
      out.add(pass + "what goes in beside the products has changed.");
    }
  }

  private static String all(Pass pass) {
    List<String> out = new ArrayList<>();
    doses(pass).forEach((product, rate) -> out.add(product + " " + rate));
    return String.join(", ", out);
  }

  private static Map<String, String> doses(Pass pass) {
    Map<String, String> out = new LinkedHashMap<>();
    for (Dose d : pass.mix().doses()) {
      out.put(
          d.product().id().value(),
          Numbers.decimals(d.rate().amount(), 2) + " " + d.rate().unitText());
    }
    return out;
  }
}
