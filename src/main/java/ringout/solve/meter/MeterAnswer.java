package ringout.solve.meter;

import java.util.List;

/** What a meter between two points should show, and what it means when it shows something else. */
public sealed interface MeterAnswer permits OhmsAnswer, VoltsAnswer {
    /** First point, as the list names it. */
    String from();

    /** Second point, as the list names it. */
    String to();

    /** The expected reading. */
    Reading reading();

    /** Name of the state of the aircraft. */
    String state();

    /** Plugs pulled in that state and for this measurement. */
    List<String> pulled();
}
