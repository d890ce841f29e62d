package org.brakerules.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.brakerules.model.job.BrakeJob;

/**
 * Reads brake jobs from JSON.
 *
 * <p>Reading is strict: an unknown field, a field that is there twice, a null, a number without
 * unit or a value larger than any brake has is refused, not guessed at. All problems of a document
 * are reported together, each with its line and column. A document that is not JSON has one
 * problem, the place where it stops being JSON; so has a document larger than any brake job: 5 MB,
 * 32 levels, texts of 20,000 characters.
 */
public final class JobReader {

  private JobReader() {}

  /**
   * Reads a job from a text.
   *
   * @throws InvalidJobException if the text is no brake job
   */
  public static BrakeJob read(String json) {
    return job(DocumentText.of(DocumentKind.JOB, json));
  }

  /**
   * Reads a job from UTF-8 bytes, to the end of the stream; the stream is left open.
   *
   * @throws InvalidJobException if the bytes are no brake job
   * @throws UncheckedIOException if the stream cannot be read
   */
  public static BrakeJob read(InputStream json) {
    return job(DocumentText.read(DocumentKind.JOB, json));
  }

  /**
   * Reads a job from a UTF-8 file.
   *
   * @throws InvalidJobException if the file holds no brake job
   * @throws UncheckedIOException if the file cannot be read
   */
  public static BrakeJob read(Path file) {
    try (InputStream json = Files.newInputStream(file)) {
      return read(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BrakeJob job(String document) {
    Problems problems = new Problems();
    Node root = TreeReader.read(DocumentKind.JOB, document, problems);
    return new JobAssembly(problems).job(root).orElseThrow(problems::asException);
  }
}
