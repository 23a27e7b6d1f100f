package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Situation;
import ringout.check.installation.AntennaDistance;
import ringout.check.installation.CompassField;
import ringout.model.Datum;
import ringout.sheet.document.Block;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;
import ringout.solve.field.HeadingError;

/** The magnetic and antenna sheet. */
final class MagneticSheet {
    private static final double READING_MM = 24;

    private MagneticSheet() {}

    static Document of(PackSource from) {
        Situation at = new Situation(from.circuit());
        List<Block> compass = new ArrayList<>();
        compass.add(new Paragraph(
                "Computed from the pairs declared near each compass, between idle and full throttle: law of"
                        + " Biot and Savart, or the long pair where the route is not given. Steady currents and iron are calibrated"
                        + " away and are not in it, nor is a pair nobody declared. Prove it: restrained, heading at idle and at full"
                        + " throttle on the stand. Swing the compass after any change of payload, wiring or pack."));
        compass.add(fields(from, at));
        CompassField.of(at).forEach(field -> {
            field.pairs().forEach(words -> compass.add(new Paragraph(field.compass() + ": " + words)));
            field.uncounted()
                    .forEach(pair -> compass.add(new Paragraph(
                            field.compass() + ": " + pair + " is not counted, a datum of it is missing")));
        });
        return from.upright(
                "magnetic-and-antenna",
                "Magnetic and antenna sheet",
                List.of(
                        new Section("Compass", compass),
                        new Section(
                                "Antennas",
                                List.of(
                                        new Paragraph(
                                                "Distances between the middles of units, or of the antenna unit a coaxial"
                                                        + " lead leads to. Gain, shielding by the frame and noise of processors are"
                                                        + " not in it."),
                                        antennas(at)))));
    }

    static Table fields(PackSource from, Situation at) {
        TableBuilder table = Table.named(
                "compass",
                Column.text("compass"),
                Column.number("level field", "uT"),
                Column.number("field of the Earth", "uT level"),
                Column.number("heading error up to", "deg"),
                Column.writeIn("error as read", "deg", READING_MM));
        Datum<Double> earth = from.aircraft().airframe().earthFieldUt();
        for (CompassField field : CompassField.of(at)) {
            boolean told = !field.pairs().isEmpty() && field.uncounted().isEmpty();
            table.row(
                    field.compass(),
                    told ? number(field.levelUt()) : "cannot tell",
                    earth.isKnown() ? number(earth.or(0.0)) : "?",
                    told && earth.isKnown() ? number(HeadingError.degrees(field.levelUt(), earth.or(0.0))) : "?",
                    "");
        }
        return table.table();
    }

    static Table antennas(Situation at) {
        TableBuilder table = Table.named(
                "antennas",
                Column.text("transmitter"),
                Column.text("bands"),
                Column.text("minds it"),
                Column.number("apart", "mm"),
                Column.number("at least", "mm"),
                Column.text("source of the limit"));
        for (AntennaDistance one : AntennaDistance.of(at)) {
            boolean near = one.apartMm().isPresent() && one.apartMm().getAsDouble() < one.limitMm();
            table.row(
                    near ? Row.Kind.GRAVE : Row.Kind.LINE,
                    one.sender(),
                    one.bands(),
                    one.other(),
                    one.apartMm().isPresent()
                            ? String.format(Locale.ROOT, "%.0f", one.apartMm().getAsDouble())
                            : "position not given",
                    Conductors.cell(Datum.of(one.limitMm())),
                    one.source());
        }
        return table.table();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
