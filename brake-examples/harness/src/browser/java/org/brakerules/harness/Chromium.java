package org.brakerules.harness;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.StreamSupport;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The Chromium of this machine, without a window and without a network. */
final class Chromium implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofMinutes(3);
  private static final int PRINT_ATTEMPTS = 3;

  private final ChromeDriver driver;
  private final String axe;

  private Chromium(ChromeDriver driver, String axe) {
    this.driver = driver;
    this.axe = axe;
  }

  /**
   * Starts it.
   *
   * @throws IllegalStateException if the browser or its driver is not installed
   */
  static Chromium start() {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(installed("chromium"));
    options.addArguments(
        "--headless",
        "--hide-scrollbars",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--host-resolver-rules=MAP * ~NOTFOUND");
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(installed("chromedriver"))
            .usingAnyFreePort()
            .build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(PATIENCE);
    return new Chromium(driver, axe());
  }

  private static File installed(String program) {
    return Arrays.stream(System.getenv("PATH").split(File.pathSeparator, -1))
        .map(folder -> new File(folder, program))
        .filter(File::canExecute)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    program
                        + " is not on the path; install Debian's packages chromium and"
                        + " chromium-driver"));
  }

  private static String axe() {
    try (InputStream script = Chromium.class.getResourceAsStream("/axe.min.js")) {
      if (script == null) {
        throw new IllegalStateException("no axe.min.js on the class path");
      }
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  void open(Path page) {
    log(LogType.BROWSER);
    log(LogType.PERFORMANCE);
    driver.get(page.toUri().toString());
  }

  /** What the open page wrote to the console, each line with its level. */
  List<String> console() {
    return log(LogType.BROWSER).stream().map(LogEntry::toString).toList();
  }

  /** What was asked of disk or network since the page was opened, the page itself left out. */
  List<String> requests() {
    return log(LogType.PERFORMANCE).stream()
        .map(LogEntry::getMessage)
        .filter(event -> event.contains("\"Network.requestWillBeSent\""))
        .filter(event -> !event.contains("\"type\":\"Document\""))
        .toList();
  }

  private List<LogEntry> log(String type) {
    return StreamSupport.stream(driver.manage().logs().get(type).spliterator(), false).toList();
  }

  /** What the accessibility checker calls an error, each with the first place it was found. */
  List<String> barriers() {
    driver.executeScript(axe);
    Object answer =
        driver.executeAsyncScript(
            """
            const done = arguments[arguments.length - 1];
            axe.run(document, {resultTypes: ['violations']}).then(found => done(
              found.violations.map(one => one.id + ', ' + one.impact + ', ' + one.nodes.length
                + ' times: ' + one.help + ': ' + one.nodes[0].html.slice(0, 200))));
            """);
    return ((List<?>) answer).stream().map(Object::toString).toList();
  }

  /** The smallest letters of the open page on paper in points, those in pictures as scaled. */
  double smallestPrint(Paper paper) {
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", paper.pixels(), "height", 1000, "deviceScaleFactor", 1, "mobile", false));
    Object pixels =
        driver.executeScript(
            """
            return Math.min(...[...document.querySelectorAll('body *')]
              .filter(one => one.checkVisibility() && !['title', 'desc'].includes(one.localName)
                && [...one.childNodes].some(node => node.nodeType == 3 && node.data.trim() != ''))
              .map(one => parseFloat(getComputedStyle(one).fontSize)
                * (one.ownerSVGElement ? one.getScreenCTM().a : 1)));
            """);
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    return ((Number) pixels).doubleValue() * 72 / 96;
  }

  /**
   * The open page as it comes out of the printer. Chromium now and then answers "Printing failed"
   * to a page that it prints when asked again, so it is asked {@value #PRINT_ATTEMPTS} times.
   */
  void print(Paper paper, Path pdf) throws IOException {
    Files.write(pdf, Base64.getDecoder().decode(printed(paper, PRINT_ATTEMPTS)));
  }

  private String printed(Paper paper, int attempts) {
    try {
      return String.valueOf(
          driver
              .executeCdpCommand(
                  "Page.printToPDF",
                  Map.of("paperWidth", paper.width(), "paperHeight", paper.height()))
              .get("data"));
    } catch (WebDriverException failure) {
      if (attempts == 1) {
        throw failure;
      }
      return printed(paper, attempts - 1);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
