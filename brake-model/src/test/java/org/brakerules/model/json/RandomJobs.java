package org.brakerules.model.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.Odometer;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.job.Size;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Jobs with parts of every kind and anything stated of them; the same seed gives the same jobs. */
final class RandomJobs {

  private static final List<String> TEXTS = List.of("H-4417", "a \"b\" \\ c", "Größe 30", "🛠 {}");

  /** The texts of a layout. */
  private static final List<String> CHAMBER_TYPES = List.of("", "9", "30", "B");

  /** The texts of a part. */
  private static final List<String> CODES = List.of("", "FF", "GH");

  private final Random random;

  RandomJobs(long seed) {
    random = new Random(seed);
  }

  BrakeJob next() {
    BrakeJobBuilder job =
        BrakeJob.builder()
            .date(LocalDate.of(2000 + random.nextInt(50), 1 + random.nextInt(12), 28))
            .ruleSet("us-federal")
            .scope(any(Scope.class));
    if (random.nextBoolean()) {
      job.reference(any(TEXTS));
    }
    if (random.nextBoolean()) {
      job.acceptance(any(Acceptance.class));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      Length thickness = new Length((1 + random.nextInt(100)) * 25_400L, LengthUnit.INCH);
      int count = 1 + random.nextInt(ShimsAtHand.MOST);
      job.shimsAtHand(new ShimsAtHand(thickness, count, any(Condition.class)));
    }
    boolean isCombination = random.nextBoolean();
    addUnit(job, isCombination ? "tractor" : "");
    if (isCombination) {
      addUnit(job, "trailer-1");
    }
    return job.build();
  }

  private void addUnit(BrakeJobBuilder job, String unit) {
    if (random.nextBoolean()) {
      job.builtOn(unit, LocalDate.of(1999, 5, 1));
    }
    int axle = 1 + random.nextInt(WheelEndPath.MOST_AXLES);
    job.axle(unit, axle, any(AxleKind.class));
    for (Side side : Side.values()) {
      WheelEndPath path = new WheelEndPath(unit, axle, side);
      job.wheelEnd(new WheelEnd(path, layout(), parts(path)));
      addMakersLimit(job, path);
      if (random.nextBoolean()) {
        Length value = new Length(random.nextInt(1000) * 25_400L, LengthUnit.INCH);
        job.size(new StatedSize(any(Size.class), path.toString(), value));
      }
      if (random.nextBoolean()) {
        job.earlierLining(
            new EarlierLining(
                path + "/lining/upper",
                LocalDate.of(1999, 5, 1 + random.nextInt(28)),
                new Length((1 + random.nextInt(1000)) * 25_400L, LengthUnit.INCH),
                new Odometer(BigDecimal.valueOf(random.nextInt(1000)), "km"),
                new Odometer(new BigDecimal("1000.5"), "km")));
      }
    }
  }

  private void addMakersLimit(BrakeJobBuilder job, WheelEndPath path) {
    if (random.nextBoolean()) {
      String page = random.nextBoolean() ? "12" : "";
      job.makersLimit(
          new MakersLimit(
              "camshaft.end-play.max",
              path + "/camshaft",
              Quantities.parse(Length.class, length()),
              any(TEXTS),
              page));
    }
  }

  private Layout layout() {
    return random.nextInt(4) == 0 ? Layout.UNKNOWN : any(Layout.class, null);
  }

  private List<Part> parts(WheelEndPath path) {
    List<Part> parts = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      for (Station station : kind.stations()) {
        if (random.nextInt(3) == 0) {
          int number = 1 + random.nextInt(Math.min(3, kind.mostAtOnePlace()));
          Tag tag =
              new Tag(
                  path.place(kind, station).numbered(number),
                  any(Presence.class),
                  any(Condition.class),
                  any(Disturbance.class));
          parts.add(any(kind.recordType(), tag));
        }
      }
    }
    return parts;
  }

  private <R> R any(Class<R> record, Tag tag) {
    RecordComponent[] components = record.getRecordComponents();
    Object[] values = Arrays.stream(components).map(one -> valueOf(one, tag)).toArray();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<R> constructor = record.getConstructor(types);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private Object valueOf(RecordComponent component, Tag tag) {
    Class<?> type = component.getType();
    if (type == Tag.class) {
      return tag;
    }
    if (type.isEnum()) {
      return any(Arrays.asList(type.getEnumConstants()));
    }
    if (type == String.class) {
      return component.getName().equals("frictionCode") ? any(CODES) : any(CHAMBER_TYPES);
    }
    if (type == Measurement.class) {
      return measurement(component);
    }
    if (type == Optional.class) {
      return random.nextBoolean() ? Optional.empty() : Optional.of(quantity(component));
    }
    return any(type, tag);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the quantity is of the component's kind
  private Measurement<?> measurement(RecordComponent component) {
    List<Reading> readings = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      String written = text(component);
      Quantity value = Quantities.parse((Class) kindOf(component), written);
      Optional uncertainty =
          random.nextBoolean() ? Optional.empty() : Optional.of(quantity(component));
      Optional<Pressure> pressure =
          random.nextBoolean() ? Optional.empty() : Optional.of(Pressure.parse("85 psi"));
      readings.add(
          new Reading(
              value,
              written,
              any(Station.class),
              any(Method.class),
              uncertainty,
              pressure,
              any(Moment.class)));
    }
    return new Measurement(readings);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private Quantity<?> quantity(RecordComponent component) {
    return Quantities.parse((Class) kindOf(component), text(component));
  }

  /** The text of a quantity that is not larger than any brake has. */
  private String text(RecordComponent component) {
    Class<?> kind = kindOf(component);
    AtMost atMost = component.getAnnotation(AtMost.class);
    if (atMost != null && random.nextInt(10) == 0) {
      return atMost.value();
    }
    if (kind == Length.class) {
      return length();
    }
    if (kind == Angle.class) {
      return any(List.of("1/4 turn", "12.5 deg"));
    }
    if (kind == Torque.class) {
      return any(List.of("15 lbf.ft", "20 N.m", "0.5 lbf.in"));
    }
    return kind == Share.class
        ? "50 %"
        : kind == Force.class ? any(List.of("30 lbf", "0.1 kN")) : "90 psi";
  }

  private String length() {
    return any(List.of("0.012 in", "1/64 in", ".3 mm", "0 in", "0.40  mm", "0.015625 in"));
  }

  private static Class<?> kindOf(RecordComponent component) {
    return (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
  }

  private <E extends Enum<E>> E any(Class<E> type) {
    return any(Arrays.asList(type.getEnumConstants()));
  }

  private <T> T any(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
