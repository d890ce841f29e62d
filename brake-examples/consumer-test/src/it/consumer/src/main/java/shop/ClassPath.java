package shop;

import java.io.File;
import java.nio.file.Path;

/** Prints the name of every jar and folder this program runs with. */
final class ClassPath {

  private ClassPath() {}

  public static void main(String[] args) {
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      System.out.println(Path.of(entry).getFileName());
    }
  }
}
