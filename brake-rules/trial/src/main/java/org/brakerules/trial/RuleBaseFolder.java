package org.brakerules.trial;

import java.io.Closeable;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.brakerules.BrakeRules;

/** The rule files of this artifact as a folder, whether they lie in a jar or beside it. */
public final class RuleBaseFolder implements Closeable {

  private static final String SOURCES = "/" + TrialRules.RULES + "/sources.csv";
  private static final int DEPTH = 4;

  private final Path path;
  private final Optional<FileSystem> jar;

  private RuleBaseFolder(Path path, Optional<FileSystem> jar) {
    this.path = path;
    this.jar = jar;
  }

  /**
   * Opens it.
   *
   * @throws IOException if the jar cannot be read
   */
  public static RuleBaseFolder ofThisArtifact() throws IOException {
    URI sources = uri(Objects.requireNonNull(BrakeRules.class.getResource(SOURCES)));
    if (sources.getScheme().equals("jar")) {
      FileSystem jar = FileSystems.newFileSystem(sources, Map.of());
      return new RuleBaseFolder(jar.getPath("/"), Optional.of(jar));
    }
    Path folder = Path.of(sources);
    for (int i = 0; i < DEPTH; i++) {
      folder = Objects.requireNonNull(folder.getParent());
    }
    return new RuleBaseFolder(folder, Optional.empty());
  }

  /**
   * A folder that somebody works in.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @throws IOException if there is none
   */
  public static RuleBaseFolder of(Path resources) throws IOException {
    if (!Files.isDirectory(resources.resolve(TrialRules.RULES))) {
      throw new IOException("there is no folder " + TrialRules.RULES + " in " + resources);
    }
    return new RuleBaseFolder(resources, Optional.empty());
  }

  /** The folder with {@code org/brakerules/rules} in it. */
  public Path path() {
    return path;
  }

  @Override
  public void close() throws IOException {
    if (jar.isPresent()) {
      jar.get().close();
    }
  }

  private static URI uri(URL url) {
    try {
      return url.toURI();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
