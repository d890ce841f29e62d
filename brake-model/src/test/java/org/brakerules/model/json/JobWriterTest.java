package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.brakerules.model.job.BrakeJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A job that was written reads back as the same job. */
class JobWriterTest {

  static Stream<BrakeJob> jobs() {
    return Stream.concat(
        Stream.of(SampleJobs.full(), SampleJobs.smallest(), SampleJobs.combination())
            .map(JobReader::read),
        Stream.generate(new RandomJobs(1)::next).limit(200));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void a_written_job_reads_back_as_the_same_job_and_the_same_text(BrakeJob job) {
    String written = JobWriter.write(job);

    BrakeJob readBack = JobReader.read(written);

    assertThat(readBack).isEqualTo(job);
    assertThat(JobWriter.write(readBack)).isEqualTo(written);
  }

  @Test
  void a_job_is_written_as_people_write_it() {
    assertThat(JobWriter.write(JobReader.read(SampleJobs.full())))
        .isEqualTo(SampleJobs.full().replace("2 1/2 in", "2.5 in"));
  }
}
