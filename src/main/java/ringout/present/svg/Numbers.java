package ringout.present.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as text: at most three decimals, no exponent, no minus before zero. */
final class Numbers {
    private Numbers() {}

    static String of(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
