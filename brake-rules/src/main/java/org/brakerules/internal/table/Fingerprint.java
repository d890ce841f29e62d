package org.brakerules.internal.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.brakerules.model.decision.RuleBaseVersion;

/** Tells one rule base from another: a digest of every file that can change a verdict. */
public final class Fingerprint {

  private static final List<String> OF_ALL =
      List.of("sources.csv", RuleSetFolders.INDEX, "cautions.csv");
  private static final List<String> OF_COMPONENT = List.of("drl", "limits.csv", "points.csv");

  /** Its name in the pack of this artifact. */
  public static final String FILE = "fingerprint.txt";

  private Fingerprint() {}

  /** The version of the artifact with the digest of its rules and tables. */
  public static RuleBaseVersion ofRuleBase() {
    return ofRuleBase(RuleBasePack.ofThisArtifact());
  }

  /** The version of the artifact with the digest that the build made of its rules and tables. */
  public static RuleBaseVersion ofRuleBase(RuleBasePack pack) {
    return new RuleBaseVersion(version(), new String(pack.read(FILE), StandardCharsets.US_ASCII));
  }

  /** The version of the artifact with the digest of other rules and tables. */
  public static RuleBaseVersion of(RuleBaseFiles base) {
    MessageDigest digest = sha256();
    files(base).forEach(file -> add(digest, base, file));
    return new RuleBaseVersion(version(), HexFormat.of().formatHex(digest.digest()));
  }

  /** The names of all files, in a fixed order. */
  public static Stream<String> files(RuleBaseFiles base) {
    Stream<String> components =
        Tables.components().stream()
            .flatMap(
                component -> OF_COMPONENT.stream().map(suffix -> Tables.file(component, suffix)));
    return Stream.of(OF_ALL.stream(), new RuleSetFolders(base).names(), components)
        .flatMap(names -> names);
  }

  private static void add(MessageDigest digest, RuleBaseFiles base, String file) {
    Optional<InputStream> opened = base.open(file);
    if (opened.isEmpty()) {
      return;
    }
    try (InputStream in = opened.get()) {
      digest.update(file.getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      digest.update(in.readAllBytes());
      digest.update((byte) 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String version() {
    Properties properties = new Properties();
    try (InputStream in =
        Fingerprint.class.getResourceAsStream("/org/brakerules/version.properties")) {
      if (in == null) {
        throw new RuleBaseException("The artifact has no version.properties.");
      }
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }
}
