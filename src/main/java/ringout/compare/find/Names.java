package ringout.compare.find;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.compare.match.Match;
import ringout.graph.Directory;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.End;

/**
 * Says whether two texts name the same thing: {@code FC-CAN1-2}, {@code FC.CAN1.2} and {@code FC-CAN1-H} may be one contact, and
 * a unit, plug or lead of the other aircraft is told by its name in the base.
 */
final class Names {
    private static final String SEPARATORS = "-.:/@ ";

    private final Match match;
    private final Map<String, String> leads = new HashMap<>();
    private final boolean plain;

    Names(Match match) {
        this.match = match;
        match.pairs().forEach(pair -> {
            if (!pair.base().id().equals(pair.other().id())) {
                leads.put(fold(pair.other().id()), fold(pair.base().id()));
            }
        });
        plain = leads.isEmpty() && !renamed();
    }

    /** Whether any unit has another name in the other aircraft. */
    private boolean renamed() {
        Directory here = match.base().directory();
        for (int unit = 0; unit < here.count(); unit++) {
            int twin = match.unit(unit);
            if (twin >= 0
                    && !fold(here.name(unit))
                            .equals(fold(match.other().directory().name(twin)))) {
                return true;
            }
        }
        return false;
    }

    /** Whether equal words always name the same thing, because nothing has another name. */
    boolean plain() {
        return plain;
    }

    /** Whether a text of the base and one of the other aircraft mean the same. */
    boolean same(String here, String there) {
        return (plain && here.equals(there)) || here(here).equals(there(there));
    }

    /** A text of the base as it is compared. */
    String here(String text) {
        return meant(match.base(), text, true);
    }

    /** A text of the other aircraft as it is compared, in the names of the base. */
    String there(String text) {
        String lead = leads.get(fold(text));
        return lead == null ? meant(match.other(), text, false) : lead;
    }

    private String meant(Wiring wiring, String text, boolean base) {
        String plain = text.strip();
        Directory directory = wiring.directory();
        Optional<Integer> unit = directory.find(plain);
        if (unit.isPresent()) {
            return unit(unit.get(), base);
        }
        Optional<Integer> owner = owner(directory, plain);
        if (owner.isEmpty()) {
            return plain;
        }
        Site site = directory.resolve(new End(plain));
        if (site instanceof Site.OnPlug on) {
            return unit(on.unit(), base) + "-" + plug(directory, on.unit(), on.plug());
        }
        if (site instanceof Site.OnPin on) {
            return unit(on.unit(), base) + "-" + plug(directory, on.unit(), on.plug()) + "-"
                    + directory.layout(on.unit()).pin(on.pin()).number();
        }
        String name = directory.name(owner.get());
        return unit(owner.get(), base) + "-"
                + plain.substring(name.length() + 1).strip();
    }

    /** The unit a text begins with: UNIT:port; nothing for free words. */
    private static Optional<Integer> owner(Directory directory, String text) {
        for (int i = text.length() - 1; i > 0; i--) {
            if (SEPARATORS.indexOf(text.charAt(i)) >= 0) {
                Optional<Integer> unit = directory.find(text.substring(0, i));
                if (unit.isPresent()) {
                    return unit;
                }
            }
        }
        return Optional.empty();
    }

    private String unit(int unit, boolean base) {
        if (base) {
            return match.base().directory().name(unit);
        }
        int known = match.unitBack(unit);
        return known >= 0
                ? match.base().directory().name(known)
                : match.other().directory().name(unit);
    }

    private static String plug(Directory directory, int unit, int plug) {
        return directory.type(unit).plugs().get(plug).name();
    }

    static String fold(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }
}
