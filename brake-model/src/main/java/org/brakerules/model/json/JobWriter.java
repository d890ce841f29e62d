package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Tag;
import org.brakerules.model.reading.Station;

/**
 * Writes brake jobs as JSON that {@link JobReader} reads back as an equal job.
 *
 * <p>What is not stated is left out. The same job gives the same text, with line feeds only.
 */
public final class JobWriter {

  private final JsonGenerator out;
  private final FieldWriter fields;

  private JobWriter(JsonGenerator out) {
    this.out = out;
    this.fields = new FieldWriter(out);
  }

  /** Writes a job over several lines. */
  public static String write(BrakeJob job) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = StrictJson.prettyGenerator(text)) {
      JobWriter writer = new JobWriter(out);
      writer.fields.object(job, writer::job);
      out.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void job(BrakeJob job) throws IOException {
    fields.textUnlessEmpty("reference", job.reference());
    fields.text("date", job.date());
    fields.text("ruleSet", job.ruleSet().id());
    fields.choice("scope", job.scope());
    fields.choiceUnless(Acceptance.GUARDED_IF_STATED, "acceptance", job.acceptance());
    fields.objectsUnlessEmpty("shimsAtHand", job.shimsAtHand(), this::shims);
    fields.objectsUnlessEmpty("sizes", job.sizes(), this::size);
    fields.objectsUnlessEmpty("earlierLinings", job.earlierLinings(), this::earlier);
    fields.objectsUnlessEmpty("makersLimits", job.makersLimits(), this::limit);
    fields.objects("units", job.units(), this::unit);
  }

  private void earlier(EarlierLining lining) throws IOException {
    fields.text("on", lining.on());
    fields.text("date", lining.date());
    fields.text("thickness", lining.thickness());
    fields.text("odometer", lining.odometer());
    fields.text("odometerNow", lining.odometerNow());
  }

  private void limit(MakersLimit limit) throws IOException {
    fields.text("limit", limit.limit());
    fields.textUnlessEmpty("on", limit.on());
    fields.text("value", limit.value());
    fields.text("document", limit.document());
    fields.textUnlessEmpty("page", limit.page());
  }

  private void unit(VehicleUnit unit) throws IOException {
    fields.textUnlessEmpty("unit", unit.name());
    if (unit.builtOn().isPresent()) {
      fields.text("builtOn", unit.builtOn().get());
    }
    fields.objects("axles", unit.axles(), this::axle);
  }

  private void size(StatedSize size) throws IOException {
    fields.choice("size", size.size());
    fields.textUnlessEmpty("on", size.on());
    fields.text("value", size.value());
  }

  private void shims(ShimsAtHand shims) throws IOException {
    fields.text("thickness", shims.thickness());
    out.writeNumberField("count", shims.count());
    fields.choice("condition", shims.condition());
  }

  private void axle(Axle axle) throws IOException {
    out.writeNumberField("axle", axle.number());
    fields.choiceUnless(AxleKind.UNKNOWN, "kind", axle.kind());
    fields.objects("wheelEnds", axle.wheelEnds(), this::wheelEnd);
  }

  private void wheelEnd(WheelEnd end) throws IOException {
    fields.choice("side", end.path().side());
    if (!end.layout().equals(Layout.UNKNOWN)) {
      fields.object("layout", end.layout(), this::layout);
    }
    fields.objectsUnlessEmpty("parts", end.parts(), this::part);
  }

  private void layout(Layout layout) throws IOException {
    RecordShape.of(Layout.class).writeFields(layout, Station.UNKNOWN, out);
  }

  private void part(Part part) throws IOException {
    Tag tag = part.tag();
    Place place = tag.place();
    fields.choice("part", place.kind());
    fields.choiceUnless(Station.WHOLE_PART, "station", place.station());
    if (place.number() > 1) {
      out.writeNumberField("number", place.number());
    }
    fields.choiceUnless(Presence.FITTED, "presence", tag.presence());
    fields.choiceUnless(Condition.AS_FOUND, "condition", tag.condition());
    fields.choiceUnless(Disturbance.BY_SCOPE, "disturbance", tag.disturbance());
    Record components = (Record) part;
    RecordShape.of(components.getClass()).writeFields(components, RecordShape.ownStation(tag), out);
  }
}
