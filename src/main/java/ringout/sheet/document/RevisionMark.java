package ringout.sheet.document;

import java.util.ArrayList;
import java.util.List;
import ringout.model.Aircraft;
import ringout.model.seal.Seal;

/**
 * What ties a page to an aircraft and to the data it was made from. Every page carries it, so that a page of another aircraft
 * or of yesterday's list cannot slip in.
 *
 * @param aircraft designation and name of the type
 * @param tail serial-numbered aircraft; empty for the type itself
 * @param typeRevision revision letter of the design; empty when none is given
 * @param tailRevision revision number of the as-built; empty when none is given
 * @param state state of the aircraft the document is about
 * @param hash first digits of the hash of the data
 */
public record RevisionMark(
        String aircraft, String tail, String typeRevision, String tailRevision, String state, String hash) {
    /** {@return the mark of an aircraft in one state} */
    public static RevisionMark of(Aircraft aircraft, String state) {
        return new RevisionMark(
                aircraft.designation().known().map(code -> code + " ").orElse("") + aircraft.name(),
                aircraft.tail().or(""),
                aircraft.typeRevision().or(""),
                aircraft.tailRevision().or(""),
                state,
                Seal.ofList(aircraft).mark());
    }

    /** {@return the mark in one line: {@code LW-6 Linewarden, rev C, tail 03, as-built 5, as flown, data 1a2b3c4d}} */
    public String words() {
        List<String> parts = new ArrayList<>(List.of(aircraft));
        add(parts, "rev ", typeRevision);
        add(parts, "tail ", tail);
        add(parts, "as-built ", tailRevision);
        add(parts, "", state);
        add(parts, "data ", hash);
        return String.join(", ", parts);
    }

    /** {@return what ties a page to its data, short enough for its foot} */
    public String footWords() {
        List<String> parts = new ArrayList<>();
        add(parts, "rev ", typeRevision);
        add(parts, "tail ", tail);
        add(parts, "as-built ", tailRevision);
        add(parts, "data ", hash);
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String before, String text) {
        if (!text.isEmpty()) {
            parts.add(before + text);
        }
    }
}
