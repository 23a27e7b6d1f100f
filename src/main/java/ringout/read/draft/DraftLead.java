package ringout.read.draft;

import java.util.List;
import java.util.Optional;
import ringout.model.Datum;
import ringout.model.LeadKind;
import ringout.model.PinMap;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.text.Span;

/**
 * A row of the list with its ends taken apart.
 *
 * @param row the row as it is being read
 * @param from the one end
 * @param to the other end
 */
record DraftLead(Bag row, EndText from, EndText to) {
    /** Where it stands. */
    Span at() {
        return row.at();
    }

    /** Its name, or its row. */
    String name() {
        return row.key().isEmpty() ? "row " + at().line() : row.key();
    }

    /** Whether its ends are whole plugs. */
    boolean isWhole() {
        return from.pin().isEmpty() && to.pin().isEmpty();
    }

    /** What it carries, where the list says so. */
    Optional<LeadKind> kind() {
        return value("kind").map(LeadKind.class::cast);
    }

    /** Signal of its wire, where the list says so. */
    String signal() {
        return value("signal").map(Object::toString).orElse("");
    }

    /** Pins of an end that the list names, in order: the pin of the end, or those of the pin map. */
    List<String> pins(boolean atFrom) {
        String pin = atFrom ? from.pin() : to.pin();
        if (!pin.isEmpty()) {
            return List.of(pin);
        }
        return value("pins")
                .map(value -> ((PinMap) value)
                        .pairs().stream()
                                .map(pair -> atFrom ? pair.from() : pair.to())
                                .toList())
                .orElse(List.of());
    }

    /** Whether a field is empty. */
    boolean isEmpty(String field) {
        return row.get(slot(field)).isEmpty();
    }

    /** Gives a field that the list leaves open. */
    void put(String field, Object value) {
        row.put(slot(field), value);
    }

    private Optional<Object> value(String field) {
        return row.get(slot(field))
                .filter(value -> value instanceof Datum.Known<?>)
                .map(value -> ((Datum.Known<?>) value).value());
    }

    private Slot slot(String field) {
        return row.shape().slot(field).orElseThrow();
    }
}
