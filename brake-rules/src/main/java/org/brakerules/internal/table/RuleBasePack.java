package org.brakerules.internal.table;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The files that the rule base of this artifact is loaded from, put into one by the build: to find
 * a hundred small files on a class path takes longer than to read them.
 */
public final class RuleBasePack implements RuleBaseFiles {

  /** Written by the build beside the files it is made of. */
  private static final String RESOURCE = RuleBaseFiles.ROOT + "rule-base.pack";

  private record Place(int from, int length) {}

  private final byte[] packed;
  private final Map<String, Place> places = new HashMap<>();

  private RuleBasePack(byte[] packed) throws IOException {
    this.packed = packed;
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(packed));
    int left = in.readInt();
    while (left > 0) {
      String file = in.readUTF();
      int length = in.readInt();
      places.put(file, new Place(packed.length - in.available(), length));
      in.skipNBytes(length);
      left--;
    }
  }

  /**
   * Reads the pack of this artifact.
   *
   * @throws RuleBaseException if the build made none
   */
  public static RuleBasePack ofThisArtifact() {
    try (InputStream in = RuleBasePack.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new RuleBaseException("The artifact has no " + RESOURCE + ".");
      }
      return new RuleBasePack(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes a pack of files. */
  public static void write(Map<String, byte[]> files, OutputStream to) throws IOException {
    DataOutputStream out = new DataOutputStream(to);
    out.writeInt(files.size());
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      out.writeUTF(file.getKey());
      out.writeInt(file.getValue().length);
      out.write(file.getValue());
    }
    out.flush();
  }

  @Override
  public Optional<InputStream> open(String file) {
    return Optional.ofNullable(places.get(file))
        .map(place -> new ByteArrayInputStream(packed, place.from(), place.length()));
  }

  /**
   * The whole of a file.
   *
   * @throws RuleBaseException if the pack does not hold it
   */
  public byte[] read(String file) {
    try (InputStream in =
        open(file).orElseThrow(() -> new RuleBaseException(RESOURCE + " holds no " + file + "."))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
