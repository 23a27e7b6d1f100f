package ringout.check.misplug;

import java.util.List;
import java.util.function.Supplier;
import ringout.model.edit.Edit;

/**
 * One way to plug something wrongly.
 *
 * @param change makes the change of the list it comes to; only what is tried is made
 * @param kind equal for ways whose consequence is of one kind, so that one of them is tried for all
 * @param plugs kind of plug it happens with
 * @param words what is done: {@code FC-MA and FC-MB exchanged}
 * @param sockets the sockets concerned
 * @param rows numbers of the rows concerned
 * @param critical how many of the units concerned flight depends on
 * @param currents whether a supply of another voltage is concerned, so that currents change
 * @param harmless whether both sockets are pin for pin the same points, so that nothing changes
 */
public record Misplug(
        Supplier<List<Edit>> change,
        String kind,
        String plugs,
        String words,
        List<String> sockets,
        List<Integer> rows,
        int critical,
        boolean currents,
        boolean harmless) {}
