package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.RollerClip;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a good document becomes. */
class JobReaderTest {

  private static final WheelEndPath LEFT = WheelEndPath.of("tractor", 2, Side.LEFT);

  @Test
  void everything_a_document_states_is_in_the_job() {
    BrakeJob job = JobReader.read(SampleJobs.full());

    assertThat(job)
        .isEqualTo(
            BrakeJob.builder()
                .reference("H-4417")
                .date(LocalDate.of(2026, 11, 20))
                .ruleSet("us-federal")
                .scope(Scope.CAMSHAFT_OUT)
                .makersLimit(
                    new MakersLimit(
                        "camshaft-bushing.radial-play.max",
                        "tractor/axle2/left",
                        Length.parse("0.025 in"),
                        "Axle manual",
                        "12"))
                .builtOn("tractor", LocalDate.of(2019, 5, 1))
                .axle("tractor", 2, AxleKind.DRIVE)
                .wheelEnd(LEFT, layout(), camshaft(), bushing(), seal(), clip())
                .build());
  }

  private static Layout layout() {
    return Layout.of(CamshaftLayout.TUBE)
        .camshaftHand(Hand.RIGHT)
        .chamber(
            new ChamberSize(
                ChamberFamily.CLAMP,
                "30",
                StrokeClass.STANDARD,
                Optional.of(Length.parse("2.5 in")),
                "30"))
        .springBrake(Fitted.YES)
        .build();
  }

  private static Camshaft camshaft() {
    return Camshaft.asFound(LEFT)
        .crack(Sign.NOT_SEEN)
        .endPlay(
            Measurement.of(
                Reading.of(Length.parse("0.012 in"), Station.SPLINE_END, Method.DIAL_INDICATOR)
                    .plusOrMinus(Length.parse("0.001 in"))
                    .atReservoirPressure(Pressure.parse("85 psi"))
                    .taken(Moment.AS_FOUND)))
        .build();
  }

  private static CamshaftBushing bushing() {
    Measurement<Length> atItsOwnStation =
        Measurement.of(
            Length.parse("0.018 in"), Station.HEAD_END, Method.DIAL_INDICATOR_LIFTED_BY_HAND);
    Reading<Length> somewhere = Reading.of(Length.parse("0.5 mm"), Station.UNKNOWN, Method.UNKNOWN);
    return CamshaftBushing.asFound(LEFT, Station.HEAD_END)
        .radialPlay(atItsOwnStation.and(somewhere))
        .build();
  }

  private static CamshaftSeal seal() {
    return CamshaftSeal.builder(
            Tag.fittedNew(LEFT.place(PartKind.CAMSHAFT_SEAL, Station.HEAD_END).numbered(2)))
        .kind(SealKind.ONE_LIP)
        .lip(LipDirection.TOWARD_ADJUSTER)
        .build();
  }

  private static RollerClip clip() {
    return RollerClip.builder(
            Tag.missing(LEFT.place(PartKind.ROLLER_CLIP, Station.UPPER))
                .with(Disturbance.LEFT_ALONE))
        .build();
  }

  @Test
  void what_a_document_leaves_out_is_not_known() {
    BrakeJob job = JobReader.read(SampleJobs.smallest());

    assertThat(job.reference()).isEmpty();
    assertThat(job.ruleSet()).isEqualTo(new RuleSet("quebec"));
    assertThat(job.makersLimits()).isEmpty();
    assertThat(job.units().get(0).name()).isEmpty();
    assertThat(job.units().get(0).builtOn()).isEmpty();
    assertThat(job.units().get(0).axles().get(0).kind()).isEqualTo(AxleKind.UNKNOWN);
    assertThat(job.wheelEnds())
        .containsExactly(new WheelEnd(WheelEndPath.of(1, Side.RIGHT), Layout.UNKNOWN, List.of()));
  }

  @Test
  void a_combination_has_its_wheel_ends_in_the_order_written() {
    BrakeJob job = JobReader.read(SampleJobs.combination());

    assertThat(job.wheelEnds().map(end -> end.path().toString()))
        .containsExactly(
            "tractor/axle2/left",
            "tractor/axle2/right",
            "trailer/axle1/left",
            "trailer/axle2/left");
    assertThat(job.makersLimits()).extracting(MakersLimit::on).containsExactly("", "trailer");
  }

  @Test
  void unknown_and_not_checked_may_be_written_out() {
    String stated =
        SampleJobs.full()
            .replace("\"crack\": \"not-seen\"", "\"crack\": \"not-checked\", \"hand\": \"unknown\"")
            .replace("\"springBrake\": \"yes\"", "\"springBrake\": \"unknown\"")
            .replace("\"method\": \"dial-indicator\",", "\"method\": \"unknown\",");
    String leftOut =
        SampleJobs.full()
            .replace("\"crack\": \"not-seen\",", "")
            .replace(",\n                \"springBrake\": \"yes\"", "")
            .replace("\"method\": \"dial-indicator\",", "");

    assertThat(JobReader.read(stated)).isEqualTo(JobReader.read(leftOut));
  }

  @Test
  void empty_lists_of_parts_and_makers_limits_say_the_same_as_none() {
    String withEmptyLists =
        SampleJobs.smallest()
            .replace("\"right\"", "\"right\", \"parts\": []")
            .replace("\"units\"", "\"makersLimits\": [], \"units\"");

    assertThat(JobReader.read(withEmptyLists)).isEqualTo(JobReader.read(SampleJobs.smallest()));
  }

  @Test
  void a_reading_keeps_its_text_as_written() {
    String job = SampleJobs.full().replace("0.012 in", "1/64  in");

    Camshaft camshaft = (Camshaft) JobReader.read(job).parts().findFirst().orElseThrow();

    Reading<Length> reading = camshaft.endPlay().readings().get(0);
    assertThat(reading.written()).isEqualTo("1/64  in");
    assertThat(reading.value()).isEqualTo(Length.parse("0.015625 in"));
  }

  @Test
  void a_byte_order_mark_is_passed_over() {
    assertThat(JobReader.read("\uFEFF" + SampleJobs.full()))
        .isEqualTo(JobReader.read(SampleJobs.full()));
  }

  @Test
  void a_stream_is_read_to_its_end_and_left_open() {
    class Watched extends ByteArrayInputStream {
      boolean closed;

      Watched(byte[] bytes) {
        super(bytes);
      }

      @Override
      public void close() {
        closed = true;
      }
    }
    Watched stream = new Watched(SampleJobs.full().getBytes(StandardCharsets.UTF_8));

    assertThat(JobReader.read(stream)).isEqualTo(JobReader.read(SampleJobs.full()));
    assertThat(stream.available()).isZero();
    assertThat(stream.closed).isFalse();
  }

  @Test
  void a_file_is_read(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("job.json"), SampleJobs.smallest());

    assertThat(JobReader.read(file)).isEqualTo(JobReader.read(SampleJobs.smallest()));
  }

  @Test
  void a_file_that_is_not_there_is_no_bad_job(@TempDir Path folder) {
    assertThatThrownBy(() -> JobReader.read(folder.resolve("job.json")))
        .isInstanceOf(UncheckedIOException.class);
  }

  @Test
  void a_stream_that_fails_is_no_bad_job() {
    InputStream failing =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("The cable is out.");
          }
        };

    assertThatThrownBy(() -> JobReader.read(failing))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("The cable is out.");
  }
}
