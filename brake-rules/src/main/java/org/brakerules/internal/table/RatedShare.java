package org.brakerules.internal.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Share;

/**
 * A limit that is a share of the rated stroke marked on the chamber, such as {@code 80 % of
 * layout.chamber.ratedStroke}.
 *
 * @param share the share
 */
public record RatedShare(Share share) {

  static final String ATTRIBUTE = "chamber.ratedStroke";

  private static final Pattern FORM =
      Pattern.compile("(.+ %) of layout\\." + Pattern.quote(ATTRIBUTE));

  /** Reads the cell of a table; empty if it says something else. */
  static Optional<RatedShare> parse(String cell) {
    Matcher form = FORM.matcher(cell);
    return form.matches()
        ? Optional.of(new RatedShare(Share.parse(form.group(1))))
        : Optional.empty();
  }

  /** The limit of a brake; empty if its rated stroke is not stated. */
  Optional<Length> of(Layout layout) {
    return layout.chamber().ratedStroke().map(this::of);
  }

  /** A part of a nanometre is cut off, which makes the limit stricter by less than one. */
  private Length of(Length rated) {
    long nanometres =
        BigDecimal.valueOf(rated.nanometres())
            .multiply(share.percent())
            .movePointLeft(2)
            .setScale(0, RoundingMode.DOWN)
            .longValueExact();
    return new Length(nanometres, rated.unit());
  }
}
