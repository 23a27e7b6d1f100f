package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Situation;
import ringout.model.UnitKind;

/**
 * What an aircraft of a kind must be able to do when its list declares no functions: command receiver to flight controller,
 * battery sensing to flight controller, and from there to every motor or control surface. "Hears" means that one unit of the
 * first kind must reach every unit of the second.
 */
final class DefaultFunctions {
    /**
     * A step between kinds of units.
     *
     * @param name what it is for
     * @param from kind of unit it comes from
     * @param to kind of unit it goes to
     * @param everySource whether every unit of the first kind must reach one of the second, else every one of the second must
     *     be reached
     */
    record Leg(String name, UnitKind from, UnitKind to, boolean everySource) {}

    private static final List<Leg> ALWAYS = List.of(
            new Leg("manual control", UnitKind.COMMAND_RECEIVER, UnitKind.CONTROLLER, true),
            new Leg("battery sensing", UnitKind.MONITOR, UnitKind.CONTROLLER, true),
            new Leg("motor", UnitKind.CONTROLLER, UnitKind.SPEED_CONTROLLER, false),
            new Leg("motor", UnitKind.SPEED_CONTROLLER, UnitKind.MOTOR, false));

    private static final Leg SURFACES = new Leg("control surface", UnitKind.CONTROLLER, UnitKind.ACTUATOR, false);

    private DefaultFunctions() {}

    /** The steps of an airframe kind; a multirotor steers by its motors, any other kind by actuators as well. */
    static List<Leg> of(Situation at) {
        List<Leg> legs = new ArrayList<>(ALWAYS);
        String kind = at.aircraft().airframe().kind().or("").toLowerCase(Locale.ROOT);
        if (!kind.contains("copter") && !kind.contains("rotor")) {
            legs.add(SURFACES);
        }
        return legs;
    }
}
