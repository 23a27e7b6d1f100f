package ringout.model.shape;

import java.util.Locale;
import ringout.model.Awg;

/** Wire gauges as people write them: 26, AWG 26, 4/0, 0000. */
final class WireSizes {
    private WireSizes() {}

    static Parsed awg(String text) {
        String plain = text.strip()
                .toLowerCase(Locale.ROOT)
                .replace("awg", "")
                .replace("#", "")
                .strip();
        if (plain.matches("[1-4]/0")) {
            return new Parsed.Good(new Awg(1 - (plain.charAt(0) - '0')));
        }
        if (plain.matches("0{1,4}")) {
            return new Parsed.Good(new Awg(1 - plain.length()));
        }
        if (plain.matches("\\d{1,4}([.,]0+)?")) {
            return new Parsed.Good(new Awg(Integer.parseInt(plain.replaceAll("[.,]0+$", ""))));
        }
        return new Parsed.Bad("'" + text + "' is not a wire gauge", "write 26, 4/0, or give mm2 in its own column");
    }
}
