package ringout.draw.harness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.draw.face.Contact;
import ringout.draw.face.ContactSign;
import ringout.draw.face.Face;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.wire.WireColour;
import ringout.model.ContactHalf;
import ringout.model.Datum;
import ringout.model.Plug;

/**
 * The face of the lead's half of each plug. Rows and the side of pin 1 are taken from the words of the list ({@code 2 rows},
 * {@code 2x4}, {@code pin 1 right, mating face}); where it says nothing, one row with pin 1 on the left of the wire side.
 */
final class PlugFaces {
    private static final Pattern GRID = Pattern.compile("\\b([2-9])\\s*(?:x|\u00d7|by)\\s*(\\d+)\\b");
    private static final Pattern ROWS = Pattern.compile("\\b(two|three|four|[2-9])[- ]rows?\\b");
    private static final Pattern RIGHT = Pattern.compile("\\bpin (?:1|one) (?:on |at )?(?:the )?right\\b");
    private static final Pattern LEFT = Pattern.compile("\\bpin (?:1|one) (?:on |at )?(?:the )?left\\b");
    private static final int LONGEST_ROW = 40;

    private final Wiring wiring;

    PlugFaces(Circuit circuit) {
        this.wiring = circuit.wiring();
    }

    /** Whether the list tells how the contacts of a plug lie. */
    static boolean told(Plug plug) {
        String words = plug.face().or("").toLowerCase(Locale.ROOT);
        return LEFT.matcher(words).find() || RIGHT.matcher(words).find();
    }

    /** The face of the lead's half at a plug of a unit, or at a joint. */
    Face of(int unit, int plug) {
        String name = wiring.plugName(unit, plug);
        if (wiring.directory().isJoint(unit)) {
            return new Face(name, List.of(List.of(new Contact("1", "", true))), ContactSign.OTHER);
        }
        List<Contact> contacts = new ArrayList<>();
        Optional<Datum<ContactHalf>> half = Optional.empty();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            List<String> colours = new ArrayList<>();
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                boolean from = wire.fromPin() == pin;
                half = half.or(() ->
                        Optional.of(from ? wire.lead().fromHalf() : wire.lead().toHalf()));
                String colour = WireColour.of(wiring, wire);
                if (!colour.isEmpty() && !colours.contains(colour)) {
                    colours.add(colour);
                }
            }
            String letters = String.join("/", colours);
            contacts.add(new Contact(wiring.pin(pin).number(), letters, wiring.wiresAt(pin).length > 0));
        }
        Plug record = wiring.directory().type(unit).plugs().get(plug);
        ContactSign sign = sign(half.flatMap(Datum::known), record.half());
        return new Face(name, rows(contacts, words(record)), sign);
    }

    private static String words(Plug plug) {
        return (plug.face().or("") + " " + plug.family().or("")).toLowerCase(Locale.ROOT);
    }

    /** The contacts of the lead's half: as told, else the counterpart of the unit's. */
    private static ContactSign sign(Optional<ContactHalf> ofLead, Datum<ContactHalf> ofUnit) {
        if (ofLead.isPresent()) {
            return sign(ofLead.get(), ContactHalf.PINS);
        }
        return ofUnit.known().map(half -> sign(half, ContactHalf.SOCKETS)).orElse(ContactSign.OTHER);
    }

    private static ContactSign sign(ContactHalf half, ContactHalf filled) {
        if (half == ContactHalf.NEUTRAL) {
            return ContactSign.OTHER;
        }
        return half == filled ? ContactSign.PIN : ContactSign.SOCKET;
    }

    private static List<List<Contact>> rows(List<Contact> contacts, String words) {
        int rows = Math.max(rowCount(words), (contacts.size() + LONGEST_ROW - 1) / LONGEST_ROW);
        int columns = (contacts.size() + rows - 1) / rows;
        boolean mating = words.contains("mating");
        boolean reversed = (mating ? LEFT : RIGHT).matcher(words).find();
        List<List<Contact>> laid = new ArrayList<>();
        for (int start = 0; start < contacts.size(); start += columns) {
            List<Contact> row = new ArrayList<>(contacts.subList(start, Math.min(contacts.size(), start + columns)));
            if (reversed) {
                Collections.reverse(row);
            }
            laid.add(row);
        }
        return laid;
    }

    private static int rowCount(String words) {
        Matcher grid = GRID.matcher(words);
        if (grid.find()) {
            return Integer.parseInt(grid.group(1));
        }
        Matcher rows = ROWS.matcher(words);
        if (!rows.find()) {
            return 1;
        }
        return switch (rows.group(1)) {
            case "two" -> 2;
            case "three" -> 3;
            case "four" -> 4;
            default -> Integer.parseInt(rows.group(1));
        };
    }
}
