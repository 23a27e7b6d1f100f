package ringout.finding;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Span;

/**
 * A short print of the rows a finding rests on: equal as long as no value in them changes, wherever the rows stand. A
 * waiver that carries it lapses by itself when one of them changes.
 */
public final class Fingerprint {
    private static final int LENGTH = 8;

    private final Aircraft aircraft;
    private final Map<String, Object> rows = new HashMap<>();

    /** Knows the rows of an aircraft. */
    public Fingerprint(Aircraft aircraft) {
        this.aircraft = aircraft;
    }

    private Map<String, Object> rows() {
        if (rows.isEmpty()) {
            for (Lead lead : aircraft.leads()) {
                rows.put(lead.id(), lead);
            }
            for (Unit unit : aircraft.units()) {
                rows.put(unit.ref(), unit);
            }
        }
        return rows;
    }

    /** The print of the rows of a finding: first eight digits of the SHA-256 of their values. */
    public String of(Finding finding) {
        StringBuilder text = new StringBuilder();
        TreeSet<String> names = new TreeSet<>();
        finding.at().forEach(place -> names.add(place.row()));
        for (String name : names) {
            Object row = rows().get(name);
            if (row != null) {
                write(row, text);
            }
        }
        return digest(text);
    }

    private static String digest(StringBuilder text) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void write(Object value, StringBuilder text) {
        if (value instanceof List<?> list) {
            text.append('[');
            list.forEach(item -> write(item, text));
            text.append(']');
        } else if (modelRecord(value)) {
            text.append('{');
            for (Slot slot : Shape.of(value.getClass()).slots()) {
                if (slot.kind() != Slot.Kind.SPAN) {
                    write(slot.get(value), text);
                    text.append('|');
                }
            }
            text.append('}');
        } else {
            text.append(value);
        }
    }

    private static boolean modelRecord(Object value) {
        return value instanceof Record
                && value.getClass().getPackage().equals(Lead.class.getPackage())
                && value.getClass().getRecordComponents().length > 0
                && value.getClass().getRecordComponents()[0].getType() == Span.class;
    }
}
