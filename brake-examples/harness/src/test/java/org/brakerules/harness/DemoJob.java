package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The jobs that the first pages of the documentation show. */
enum DemoJob {
  SOUND_CAMSHAFT("sound-camshaft"),
  WORN_CAMSHAFT("worn-camshaft"),
  WHEEL_ON("wheel-on");

  private final String name;

  DemoJob(String name) {
    this.name = name;
  }

  Path file() {
    return Path.of("..", "jobs", name + ".json");
  }

  String path() {
    return file().toString();
  }

  String text() throws IOException {
    return Files.readString(file());
  }

  /** The report of the job as it was read and found right by a person. */
  Path report() {
    return Path.of("src", "test", "resources", "reports", name + ".txt");
  }
}
