package ringout.read.draft;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.model.LeadKind;
import ringout.text.Span;

/** What the rows of a list use of one plug: the pins they name, what the leads carry, and where it is first met. */
final class PlugUse {
    /** Stands for the contacts of a plug of which nothing is known. */
    static final String UNKNOWN = "?";

    private final String name;
    private final Span at;
    private final Set<LeadKind> kinds = new LinkedHashSet<>();
    private final Map<String, String> signals = new LinkedHashMap<>();

    /** A plug first met at a cell. */
    PlugUse(String name, Span at) {
        this.name = name;
        this.at = at;
    }

    void add(DraftLead lead, boolean atFrom) {
        lead.kind().ifPresent(kinds::add);
        lead.pins(atFrom).forEach(pin -> signals.merge(pin, lead.signal(), (a, b) -> a.isEmpty() ? b : a));
    }

    void add(PlugUse other) {
        kinds.addAll(other.kinds);
        other.signals.forEach((pin, signal) -> signals.merge(pin, signal, (a, b) -> a.isEmpty() ? b : a));
    }

    String name() {
        return name;
    }

    Span at() {
        return at;
    }

    /** What its leads carry, when they agree. */
    Optional<LeadKind> kind() {
        return kinds.size() == 1 ? Optional.of(kinds.iterator().next()) : Optional.empty();
    }

    /** The pins the rows name, numbers in order, then names as they were met. */
    List<String> pins() {
        List<String> pins = new ArrayList<>(signals.keySet());
        pins.sort(Comparator.comparingInt(pin -> pin.matches("\\d{1,4}") ? Integer.parseInt(pin) : Integer.MAX_VALUE));
        return pins;
    }

    /** Adds pins that are known from elsewhere. */
    void addPins(Collection<String> pins) {
        pins.forEach(pin -> signals.putIfAbsent(pin, ""));
    }

    /** Whether nothing is known of its pins. */
    boolean isBare() {
        return signals.isEmpty() || signals.keySet().equals(Set.of(UNKNOWN));
    }

    /** The signal a row says for a pin, or empty. */
    String signal(String pin) {
        return signals.getOrDefault(pin, "");
    }

    /** What makes two plugs alike. */
    String form() {
        return name + kinds + pins();
    }
}
