package ringout.present.pdf;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.sheet.document.Column;
import ringout.sheet.document.Row;
import ringout.sheet.document.Table;

/**
 * Shares the width of a table among its columns: each gets what its longest word needs, and of the rest as much as its longest
 * text could use. When not even the words have room, all give way in proportion and long words are broken.
 */
final class ColumnWidths {
    /** Left and right of the text of a cell, together, mm: a millimetre each, and half of the borders. */
    static final double PADDING = 2.6;

    private static final double LARGEST_WORD_MM = 60;
    private static final double LARGEST_HEAD_MM = 24;
    private static final double HAND = 0.5;

    /** The formatter rounds the width of each letter to a thousandth of the em. */
    private static final double ROUNDED = 1.01;

    private static final double LARGEST_TEXT_MM = 200;
    private static final double SHORT_TEXT_MM = 30;
    private static final double USUAL = 1.2;

    private ColumnWidths() {}

    /** {@return the width of each column in mm; they fill the width given} */
    static double[] of(Table table, double width) {
        int count = table.columns().size();
        double[] least = new double[count];
        double[] liked = new double[count];
        for (int i = 0; i < count; i++) {
            Column column = table.columns().get(i);
            least[i] = Math.max(column.leastMm(), words(column.head(), Weight.BOLD) + PADDING);
            least[i] = Math.max(least[i], words(column.unit(), Weight.REGULAR) + PADDING);
            liked[i] = Math.max(least[i], head(column) + PADDING);
            double longest = 0;
            double sum = 0;
            for (Row row : table.rows()) {
                Weight weight = row.kind() == Row.Kind.LINE ? Weight.REGULAR : Weight.BOLD;
                String cell = row.cells().get(i);
                double text = width(cell, weight);
                least[i] = Math.max(least[i], words(cell, weight) + PADDING);
                longest = Math.max(longest, text);
                sum += text;
            }
            // A column with one long text among short ones needs less room than one of long texts.
            double usual =
                    SHORT_TEXT_MM + USUAL * sum / Math.max(1, table.rows().size());
            double text = Math.min(LARGEST_TEXT_MM, Math.min(longest, usual));
            liked[i] = Math.max(Math.max(liked[i], least[i]), text + PADDING);
        }
        return shared(table, least, liked, width);
    }

    private static double[] shared(Table table, double[] least, double[] liked, double width) {
        double sumLeast = DoubleStream.of(least).sum();
        double sumLiked = DoubleStream.of(liked).sum();
        double[] widths = new double[least.length];
        if (sumLeast >= width) {
            Arrays.setAll(widths, i -> least[i] * width / sumLeast);
        } else if (sumLiked >= width) {
            double part = (width - sumLeast) / (sumLiked - sumLeast);
            Arrays.setAll(widths, i -> least[i] + (liked[i] - least[i]) * part);
        } else {
            double[] grows = new double[least.length];
            Arrays.setAll(grows, i -> growth(table.columns().get(i)) * liked[i]);
            double sum = DoubleStream.of(grows).sum();
            double rest = width - sumLiked;
            Arrays.setAll(widths, i -> liked[i] + (sum > 0 ? grows[i] / sum : 1.0 / least.length) * rest);
        }
        return widths;
    }

    private static double growth(Column column) {
        return switch (column.form()) {
            case TEXT -> 1;
            case WRITE_IN -> HAND;
            default -> 0;
        };
    }

    /** Width of a head on one line, or on two when it is long. */
    private static double head(Column column) {
        double line = Math.max(width(column.head(), Weight.BOLD), width(column.unit(), Weight.REGULAR));
        return line <= LARGEST_HEAD_MM ? line : Math.min(LARGEST_HEAD_MM, line / 2 + PADDING);
    }

    private static double words(String text, Weight weight) {
        double widest = 0;
        for (String word : text.split(" ", -1)) {
            widest = Math.max(widest, width(word, weight));
        }
        return Math.min(LARGEST_WORD_MM, widest);
    }

    private static double width(String text, Weight weight) {
        return Lettering.width(text, Lettering.SMALL, weight) * ROUNDED;
    }
}
