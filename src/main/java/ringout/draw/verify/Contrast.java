package ringout.draw.verify;

import java.util.List;
import ringout.draw.paper.Area;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.verify.Seen.Line;
import ringout.draw.verify.Seen.Patch;
import ringout.draw.verify.Seen.Text;

/** Contrast by the formula of WCAG 2: text at least 4.5, lines that carry meaning at least 3 on white. */
public final class Contrast {
    private static final double TEXT = 4.5;
    private static final double LINE = 3;

    private Contrast() {}

    /** {@return the relative luminance of a colour {@code #rrggbb}, 0 for black to 1 for white} */
    public static double luminance(String hex) {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** {@return the contrast of two colours, 1 to 21} */
    public static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    static void check(Seen seen, List<Flaw> flaws) {
        for (Text text : seen.texts) {
            String ground = groundOf(seen, text);
            if (!ground.startsWith("#") || ratio(text.fill(), ground) < TEXT) {
                String words = "\"" + text.words() + "\" in " + text.fill() + " on " + ground;
                flaws.add(new Flaw(Kind.LOW_CONTRAST, words, text.area().centre()));
            }
        }
        for (Line line : seen.lines) {
            boolean ofWire = line.group().is("line") || line.group().is("bar");
            if (ofWire && ratio(line.stroke(), "#ffffff") < LINE) {
                flaws.add(new Flaw(
                        Kind.LOW_CONTRAST,
                        "a line in " + line.stroke(),
                        line.points().get(0)));
            }
        }
        for (Patch patch : seen.patches) {
            boolean outline = patch.width() > 0 && patch.stroke().startsWith("#");
            if (outline && ratio(patch.stroke(), "#ffffff") < LINE) {
                flaws.add(new Flaw(
                        Kind.LOW_CONTRAST,
                        "an outline in " + patch.stroke(),
                        patch.area().centre()));
            }
        }
    }

    private static String groundOf(Seen seen, Text text) {
        String ground = "#ffffff";
        Area area = text.area();
        for (Patch patch : seen.patches) {
            boolean below = patch.order() < text.order() && !patch.fill().equals("none");
            if (below && patch.area().contains(area.centre())) {
                ground = patch.fill();
            }
        }
        return ground;
    }
}
