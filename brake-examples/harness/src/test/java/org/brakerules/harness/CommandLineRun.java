package org.brakerules.harness;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One run of the command line in this process: what it answered. */
record CommandLineRun(int exitCode, String out, String err) {

  static CommandLineRun of(String... args) {
    return withInput("", args);
  }

  static CommandLineRun withInput(String input, String... args) {
    return of(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), args);
  }

  static CommandLineRun of(InputStream in, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal = new Terminal(in, new PrintWriter(out), new PrintWriter(err));
    int exitCode = Main.run(terminal, args);
    return new CommandLineRun(exitCode, out.toString(), err.toString());
  }

  /** The output with every run of blanks and line ends as one blank, for texts that are wrapped. */
  String unwrapped() {
    return out.replaceAll("\\s+", " ");
  }

  List<String> complaints() {
    return err.lines().toList();
  }
}
