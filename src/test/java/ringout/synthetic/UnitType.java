package ringout.synthetic;

import java.util.List;
import java.util.Map;

/**
 * A unit type as the generator knows it.
 *
 * @param name name in the library
 * @param plugs its plugs by what they are for
 * @param row its record
 */
record UnitType(String name, Map<String, Plug> plugs, Row row) {
    /**
     * A plug.
     *
     * @param name name in the library
     * @param fit its class
     * @param contacts its contacts in the order of the plug
     */
    record Plug(String name, Fit fit, List<Contact> contacts) {
        /** The contact of a function. */
        Contact contact(String function) {
            return contacts.stream()
                    .filter(contact -> contact.function().equals(function))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no " + function + " on " + name));
        }

        boolean has(String function) {
            return contacts.stream().anyMatch(contact -> contact.function().equals(function) && !contact.unused());
        }

        String family() {
            return fit.family(contacts.size());
        }
    }

    /**
     * A contact.
     *
     * @param function what it does, the same word on every plug it may meet
     * @param number its number
     * @param role its role
     */
    record Contact(String function, String number, String role) {
        boolean unused() {
            return role.equals("none");
        }
    }

    Plug plug(String use) {
        Plug plug = plugs.get(use);
        if (plug == null) {
            throw new IllegalArgumentException("no plug for " + use + " on " + name);
        }
        return plug;
    }
}
