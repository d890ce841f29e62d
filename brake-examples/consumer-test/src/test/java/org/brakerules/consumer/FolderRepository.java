package org.brakerules.consumer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;

/** The folder the build has just published to. */
final class FolderRepository {

  static final String VERSION = System.getProperty("published.version");

  private static final Path OURS = Path.of("target/repository/org/brakerules");

  private FolderRepository() {}

  /** The file of an artifact that ends so, such as {@code -sources.jar}. */
  static Path file(String artifact, String end) {
    return OURS.resolve(artifact).resolve(VERSION).resolve(artifact + "-" + VERSION + end);
  }

  static String pom(String artifact) throws IOException {
    return Files.readString(file(artifact, ".pom"));
  }

  static List<String> entries(String artifact, String end) throws IOException {
    try (JarFile jar = new JarFile(file(artifact, end).toFile())) {
      return jar.stream().map(ZipEntry::getName).toList();
    }
  }

  static String moduleName(String artifact) throws IOException {
    try (JarFile jar = new JarFile(file(artifact, ".jar").toFile())) {
      return jar.getManifest().getMainAttributes().getValue("Automatic-Module-Name");
    }
  }
}
