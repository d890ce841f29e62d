package org.brakerules.internal.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.brakerules.internal.table.Fingerprint;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.RuleBasePack;
import org.brakerules.internal.table.Tables;

/**
 * Puts the rule base into one file, as a step of the build. Whatever is wrong between rules and
 * tables ends the build here, so that nobody has to look for it when a job is decided.
 */
final class RuleBasePacking {

  private static final String TABLE = ".csv";

  private RuleBasePacking() {}

  /**
   * Writes the pack.
   *
   * @param args the file to write
   * @throws RuleBaseException if rules and tables do not fit
   */
  public static void main(String[] args) throws IOException {
    try (OutputStream out = Files.newOutputStream(Path.of(args[0]))) {
      RuleBasePack.write(files(), out);
    }
  }

  /** The files of the pack: the tables, what the rules say of themselves, and the fingerprint. */
  static Map<String, byte[]> files() {
    RuleBaseFiles base = RuleBaseFiles.ofThisArtifact();
    Tables tables = Tables.load(base);
    Map<String, RuleText> rules = RuleTexts.of(CompiledRules.models(), tables, base);
    Map<String, byte[]> files = new LinkedHashMap<>();
    Fingerprint.files(base)
        .filter(file -> file.endsWith(TABLE))
        .forEach(file -> base.open(file).ifPresent(in -> files.put(file, bytes(in))));
    files.put(RuleRegister.FILE, bytes(RuleRegister.write(rules.values())));
    files.put(Fingerprint.FILE, bytes(Fingerprint.of(base).fingerprint()));
    return files;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] bytes(InputStream opened) {
    try (InputStream in = opened) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
