package ringout.trace.candidate;

import java.util.List;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.power.PowerSource;

/** One thing that is wrong, at its place in the typed graph. Units, plugs and pins are numbered as there. */
public sealed interface Defect {
    /**
     * Conductors are broken: one, or a whole pair.
     *
     * @param wires the conductors
     */
    record Open(List<Wire> wires) implements Defect {
        /** Keeps its own copy. */
        public Open {
            wires = List.copyOf(wires);
        }
    }

    /**
     * A plug is not home: none of its contacts makes.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     */
    record Unseated(int unit, int plug) implements Defect {}

    /**
     * A contact has too much resistance.
     *
     * @param wire the conductor
     * @param pin vertex of the pin it is mated with
     * @param ohm what it has too much, in ohm
     */
    record PoorContact(Wire wire, int pin, double ohm) implements Defect {}

    /**
     * Two points touch.
     *
     * @param a vertex of the one
     * @param b vertex of the other
     */
    record Shorted(int a, int b) implements Defect {}

    /**
     * Two conductors of a lead are exchanged at its to end.
     *
     * @param one the first
     * @param other the second
     */
    record Crossed(Wire one, Wire other) implements Defect {}

    /**
     * A plug is in another socket; what is mated there, if anything, is in its own.
     *
     * @param unit unit it belongs to
     * @param plug socket it belongs in
     * @param otherUnit unit it is at
     * @param otherPlug socket it is in
     */
    record WrongSocket(int unit, int plug, int otherUnit, int otherPlug) implements Defect {}

    /**
     * Terminators are not as listed.
     *
     * @param off those that are off and should be on
     * @param on those that are on and should be off
     */
    record Terminated(List<Part> off, List<Part> on) implements Defect {
        /** Keeps its own copies. */
        public Terminated {
            off = List.copyOf(off);
            on = List.copyOf(on);
        }
    }

    /**
     * A unit has the address of another.
     *
     * @param unit the unit
     * @param other the other one
     */
    record SameAddress(int unit, int other) implements Defect {}

    /**
     * A port is set to another rate, protocol or function.
     *
     * @param unit number of the unit
     * @param port name of the bus port, or of the serial plug
     * @param bus whether it is a bus port
     */
    record WrongSetting(int unit, String port, boolean bus) implements Defect {}

    /**
     * A source gives nothing.
     *
     * @param source the source
     */
    record SourceDown(PowerSource source) implements Defect {}

    /**
     * A source gives too little when it is loaded.
     *
     * @param source the source
     * @param part the part of its voltage that is missing at the present load, 0 to 1
     */
    record SourceSags(PowerSource source, double part) implements Defect {}

    /**
     * A part that should conduct does not.
     *
     * @param part fuse, switch, link, sense resistor
     */
    record OpenPart(Part part) implements Defect {}

    /**
     * What goes on inside one unit.
     *
     * @param unit number of the unit
     * @param how what it does
     */
    record Inside(int unit, How how) implements Defect {
        /** What a bad unit does. */
        public enum How {
            /** Nothing; draws nothing. */
            DEAD,
            /** Runs, but says and hears nothing. */
            MUTE,
            /** Starts over and over. */
            RESTARTS
        }
    }

    /**
     * The front end of a bus port joins its legs.
     *
     * @param unit number of the unit
     * @param high vertex of H
     * @param low vertex of L
     */
    record HoldsBus(int unit, int high, int low) implements Defect {}

    /**
     * The copper from a bus socket to the rest of its port is open inside the unit.
     *
     * @param unit number of the unit
     * @param plug number of the socket in its type
     */
    record PassThroughOpen(int unit, int plug) implements Defect {}

    /**
     * A lead is disturbed by the current in another beside it.
     *
     * @param victim number of the row that is disturbed
     * @param by id of the row that disturbs
     */
    record Disturbed(int victim, String by) implements Defect {}
}
