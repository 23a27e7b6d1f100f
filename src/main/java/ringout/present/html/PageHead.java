package ringout.present.html;

import ringout.model.Aircraft;

/**
 * What stands at the head of the page.
 *
 * @param aircraft the aircraft
 * @param hash of the data, as on every sheet
 * @param version of this program
 */
public record PageHead(Aircraft aircraft, String hash, String version) {
    /** {@return designation and name} */
    public String title() {
        return aircraft.designation().known().map(code -> code + " ").orElse("") + aircraft.name();
    }

    /** {@return tail, revision and hash} */
    public String mark() {
        String tail = aircraft.tail().known().map(name -> "tail " + name + ", ").orElse("");
        String revision = aircraft.typeRevision()
                .known()
                .map(letter -> "revision " + letter
                        + aircraft.tailRevision().known().map(n -> "." + n).orElse("") + ", ")
                .orElse("");
        return tail + revision + "data " + hash;
    }
}
