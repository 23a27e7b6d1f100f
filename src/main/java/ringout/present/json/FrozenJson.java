package ringout.present.json;

import ringout.model.Aircraft;
import ringout.model.seal.Seal;

/**
 * A frozen revision: the aircraft's file with its hashes in front, in the field {@code $frozen}. Rows keep the user's order and
 * layout; the hashes are taken over the canonical text, which neither changes.
 */
public final class FrozenJson {
    private FrozenJson() {}

    /** The file, ending in \n; the aircraft is to hold all its types, none left to a library. */
    public static String of(Aircraft aircraft) {
        String json = AircraftJson.of(aircraft);
        return "{\n  \"$frozen\": {\"mark\": \"" + Seal.ofList(aircraft).mark() + "\", \"list\": \""
                + Seal.ofList(aircraft).hex() + "\", \"all\": \""
                + Seal.ofAll(aircraft).hex() + "\"},"
                + json.substring(1);
    }
}
