package org.brakerules.harness.parts;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.harness.report.Page;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.parts.AxleCover;
import org.brakerules.parts.ChosenKit;
import org.brakerules.parts.Counted;
import org.brakerules.parts.KitCover;
import org.brakerules.parts.Shortfall;

/**
 * The kits that cover an axle.
 *
 * @param page where they are written
 * @param shelf the kits there were
 */
record KitsReport(Page page, KitShelf shelf) {

  private static final int LABEL = 12;

  void write(AxleCover axle) {
    if (axle.kits().isEmpty()) {
      page.paragraph(2, "No kit of the shelf brings anything that is to be ordered.");
    }
    axle.kits().forEach(this::kit);
    page.gap();
    counted("Loose", axle.loose(), "no kit of the shelf brings it");
    counted("Save", axle.salvage(), "from the worn shoes, no chosen kit brings it");
    counted("Spared", axle.spared(), "need not come off the worn shoes, the kits bring it");
    counted("Left over", axle.leftOver(), "");
    axle.shortfalls().forEach(this::shortfall);
    confirm(axle);
    if (!axle.frictionCode().isEmpty()) {
      label("Lining", "friction code " + axle.frictionCode());
    }
    axle.price().ifPresent(price -> label("Price", priced(price, axle.unpriced())));
    if (!axle.kits().isEmpty()) {
      label("Choice", axle.statement());
    }
  }

  private void confirm(AxleCover axle) {
    if (!axle.countAndConfirm().isEmpty()) {
      String words =
          axle.countAndConfirm().stream()
              .map(
                  line ->
                      PartsReport.counted(line.amount().pieces())
                          + line.item().inWords(line.amount().pieces()))
              .collect(Collectors.joining("; "));
      label("Confirm", words + " (count them first: the choice holds for these numbers)");
    }
  }

  void total(KitCover cover) {
    Optional<BigDecimal> price = cover.price();
    if (price.isPresent() && cover.axles().size() > 1) {
      int unpriced = cover.axles().stream().mapToInt(AxleCover::unpriced).sum();
      page.gap();
      page.paragraph(0, "All kits together: " + priced(price.get(), unpriced));
    }
  }

  private void kit(ChosenKit chosen) {
    String price =
        chosen.kit().price().isEmpty()
            ? ", no price"
            : ", "
                + written(chosen.kit().price().get())
                + " each, "
                + written(chosen.price().orElseThrow());
    page.paragraph(
        2, chosen.count() + " x " + chosen.kit().id() + ": " + chosen.kit().title() + price);
  }

  private void counted(String label, List<Counted> pieces, String why) {
    if (!pieces.isEmpty()) {
      String words =
          pieces.stream()
              .map(one -> one.pieces() + " " + one.item().inWords(one.pieces()))
              .collect(Collectors.joining("; "));
      label(label, words + (why.isEmpty() ? "" : " (" + why + ")"));
    }
  }

  private void shortfall(Shortfall shortfall) {
    label(
        "Short",
        shortfall.kitId()
            + " holds "
            + shortfall.holds()
            + " "
            + shortfall.item().inWords(shortfall.holds())
            + " where "
            + shortfall.needed()
            + " are needed");
  }

  private String priced(BigDecimal price, int unpriced) {
    return written(price) + (unpriced == 0 ? "" : ", and " + unpriced + " without a price");
  }

  private String written(BigDecimal price) {
    int decimals = shelf.currency().map(KitShelf::decimals).orElse(0);
    int scale = Math.max(decimals, price.stripTrailingZeros().scale());
    return price.setScale(scale).toPlainString()
        + shelf.currency().map(currency -> " " + currency).orElse("");
  }

  private void label(String label, String words) {
    page.labelled(2, label, LABEL, words);
  }
}
