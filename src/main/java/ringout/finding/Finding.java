package ringout.finding;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Something wrong, found by one check.
 *
 * @param id stable identity: code and objects, not the order of rows
 * @param code code of the check
 * @param name name of the check, for the bad thing
 * @param severity what the world does
 * @param title one line, understandable alone
 * @param objects what it is about, as the user names them
 * @param states states of the aircraft it holds in
 * @param at rows it points to
 * @param evidence why it is true
 * @param why why it matters
 * @param meter what to measure to see it; may be empty
 * @param fix the smallest change that clears it; may be empty
 * @param sketches what a drawing shows beside the badge
 * @param causes what is at fault, to fold findings of one mistake: rows and settings
 * @param explains codes of checks whose findings with a common cause this one explains
 */
public record Finding(
        String id,
        String code,
        String name,
        Severity severity,
        String title,
        List<String> objects,
        List<String> states,
        List<Place> at,
        Evidence evidence,
        String why,
        String meter,
        String fix,
        List<Sketch> sketches,
        Set<String> causes,
        Set<String> explains) {
    /** The same with one more cause. */
    public Finding causedBy(String token) {
        Set<String> more = new TreeSet<>(causes);
        more.add(token);
        return new Finding(
                id,
                code,
                name,
                severity,
                title,
                objects,
                states,
                at,
                evidence,
                why,
                meter,
                fix,
                sketches,
                Set.copyOf(more),
                explains);
    }
}
