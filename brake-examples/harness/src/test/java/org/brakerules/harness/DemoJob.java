package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The demo jobs of an invented yard: between them they show every table of the rule base. */
enum DemoJob {
  FIRST_JOB("first-job"),
  WORN_CAMSHAFT("worn-camshaft"),
  WORN_OUT_WHEEL_END("worn-out-wheel-end"),
  CLEAN_RELINE("clean-reline"),
  FINISHED_REBUILD("finished-rebuild"),
  WHEEL_ON("wheel-on"),
  TANDEM_AXLES("tandem-axles"),
  OIL_ON_THE_LINING("oil-on-the-lining"),
  CRACKED_DRUM("cracked-drum"),
  DAMAGED_SPRING_BRAKE("damaged-spring-brake"),
  TRACTOR_AND_TRAILER("tractor-and-trailer");

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

  /** The figures of the job as they were worked out again by a person. */
  Path figures() {
    return Path.of("src", "test", "resources", "figures", name + ".txt");
  }

  /** The parts list of the job as it was read and found right by a person. */
  Path parts() {
    return Path.of("src", "test", "resources", "parts", name + ".txt");
  }

  /** The order of work of the job as it was read and found right by a person. */
  Path plan() {
    return Path.of("src", "test", "resources", "plans", name + ".txt");
  }

  /** The report of the job as it was read and found right by a person. */
  Path report() {
    return Path.of("src", "test", "resources", "reports", name + ".txt");
  }
}
