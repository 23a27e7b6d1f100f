package ringout.read.table;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Bytes of a table to text: UTF-8, UTF-16 or Windows-1252, told apart by the byte-order mark or, without one, by the bytes
 * themselves. Text that is none of these is refused, never repaired.
 */
final class TextDecoder {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int SAMPLE = 4096;

    private TextDecoder() {}

    /** The outcome. */
    sealed interface Decoded {
        /**
         * Text, without a byte-order mark.
         *
         * @param text the text
         */
        record Text(String text) implements Decoded {}

        /**
         * Not text.
         *
         * @param why what it looks like
         * @param hint what to do
         */
        record Junk(String why, String hint) implements Decoded {}
    }

    /** Decodes a file. */
    static Decoded decode(byte[] bytes) {
        if (starts(bytes, 'P', 'K', 3, 4) || starts(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
            return new Decoded.Junk("this is a spreadsheet file, not a table in text", "save it as CSV");
        }
        if (starts(bytes, 0xef, 0xbb, 0xbf)) {
            return strict(bytes, 3, StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xff, 0xfe)) {
            return strict(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xfe, 0xff)) {
            return strict(bytes, 2, StandardCharsets.UTF_16BE);
        }
        int zeros = zeros(bytes);
        if (zeros != 0) {
            return zeros == 1
                    ? strict(bytes, 0, StandardCharsets.UTF_16LE)
                    : zeros == 2 ? strict(bytes, 0, StandardCharsets.UTF_16BE) : junk();
        }
        return strict(bytes, 0, StandardCharsets.UTF_8) instanceof Decoded.Text text ? text : old(bytes);
    }

    private static boolean starts(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[i] & 0xff) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    /** 0 no zero bytes, 1 at odd places only, 2 at even places only, 3 anywhere. */
    private static int zeros(byte[] bytes) {
        int places = 0;
        for (int i = 0; i < Math.min(SAMPLE, bytes.length); i++) {
            if (bytes[i] == 0) {
                places |= i % 2 == 1 ? 1 : 2;
            }
        }
        return places;
    }

    private static Decoded strict(byte[] bytes, int skip, Charset charset) {
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        try {
            CharBuffer chars = decoder.decode(ByteBuffer.wrap(bytes, skip, bytes.length - skip));
            return new Decoded.Text(chars.toString());
        } catch (CharacterCodingException e) {
            return junk();
        }
    }

    /** Not UTF-8: one byte a letter, unless other places are UTF-8, for then two encodings are mixed. */
    private static Decoded old(byte[] bytes) {
        for (int i = 0; i + 1 < bytes.length; i++) {
            int a = bytes[i] & 0xff;
            int b = bytes[i + 1] & 0xff;
            if (a >= 0xc3 && a <= 0xf4 && b >= 0x80 && b < 0xa0) {
                return new Decoded.Junk("parts of the file are UTF-8 and parts are not", "save it again as UTF-8");
            }
        }
        return strict(bytes, 0, WINDOWS);
    }

    private static Decoded junk() {
        return new Decoded.Junk("this is not readable as text", "save it as CSV, UTF-8");
    }
}
