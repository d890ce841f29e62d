package org.brakerules.harness.figures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import org.brakerules.calc.stroke.LostMotion;
import org.brakerules.figure.JobFigures;
import org.brakerules.figure.WheelEndFigures;

/** Draws the figures of a job, two drawings a wheel end at most. */
public final class Drawings {

  private Drawings() {}

  /** The drawings of a job by their file names. */
  public static Map<String, String> of(JobFigures figures) {
    Map<String, String> drawings = new LinkedHashMap<>();
    try {
      for (WheelEndFigures end : figures.wheelEnds()) {
        add(end, drawings);
      }
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return drawings;
  }

  /**
   * Writes drawings into a folder, which is made if there is none. Each file is whole or not there.
   *
   * @throws IOException if one cannot be written
   */
  public static void write(Map<String, String> drawings, Path folder) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, String> drawing : drawings.entrySet()) {
      Path unfinished = folder.resolve(drawing.getKey() + ".part");
      try {
        Files.writeString(unfinished, drawing.getValue());
        Files.move(
            unfinished, folder.resolve(drawing.getKey()), StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    }
  }

  private static void add(WheelEndFigures end, Map<String, String> drawings)
      throws XMLStreamException {
    String name = end.wheelEnd().toString();
    String file = name.replace('/', '-');
    if (!end.readings().isEmpty()) {
      drawings.put(file + "-readings.svg", new ReadingsDrawing(name, end.readings()).draw());
    }
    if (end.lostMotion().isPresent()) {
      LostMotion lost = end.lostMotion().get();
      drawings.put(file + "-stroke-budget.svg", new StrokeBudget(name, lost).draw());
    }
  }
}
