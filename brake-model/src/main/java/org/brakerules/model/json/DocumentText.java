package org.brakerules.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** The text of a document: not too large, good UTF-8, without its byte-order mark. */
final class DocumentText {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private DocumentText() {}

  /**
   * Reads to the end of the stream or to the largest size, and leaves the stream open.
   *
   * @throws InvalidJobException if the document is too large or not UTF-8
   * @throws UncheckedIOException if the stream cannot be read
   */
  static String read(DocumentKind kind, InputStream in) {
    try {
      byte[] bytes = in.readNBytes(StrictJson.MOST_BYTES + 1);
      refuseTooLarge(kind, bytes.length);
      return withoutMark(decoded(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Checks a text.
   *
   * @throws InvalidJobException if the document is too large
   */
  static String of(DocumentKind kind, String text) {
    refuseTooLarge(kind, text.length());
    return withoutMark(text);
  }

  private static void refuseTooLarge(DocumentKind kind, int size) {
    if (size > StrictJson.MOST_BYTES) {
      throw new InvalidJobException(
          List.of(
              new Problem(
                  "",
                  1,
                  1,
                  "a document of more than 5 MB",
                  "a " + kind.inFull() + " of 5 MB at most")));
    }
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  private static String decoded(byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    boolean isGood = !decoder.decode(in, out, true).isError();
    String text = out.flip().toString();
    if (!isGood) {
      throw notUtf8(withoutMark(text), bytes[in.position()]);
    }
    return text;
  }

  private static InvalidJobException notUtf8(String before, byte culprit) {
    int line = 1 + (int) before.chars().filter(character -> character == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    String found = String.format(Locale.ROOT, "the byte %02X", culprit);
    return new InvalidJobException(
        List.of(new Problem("", line, column, found, "a document saved as UTF-8")));
  }
}
