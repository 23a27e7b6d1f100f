package ringout.model;

import java.util.List;
import ringout.text.Span;

/** What the aircraft must be able to do. */
public record AircraftFunction(
        @Doc("where it stands in the user's file") Span at,
        @Doc("function") String name,
        @Doc("units it runs through, in order") List<String> chain,
        @Doc("flight depends on it") Datum<Boolean> flightCritical,
        @Doc("a protection") Datum<Boolean> protection,
        @Doc("must survive one failure") Datum<Boolean> mustSurvive,
        @Doc("what shows that it is lost") List<String> indications,

        @Doc("of these, what is switched off by a setting") List<String> indicationsOff,

        @Doc("loss that triggers it") Datum<String> trigger,
        @Doc("unit that acts") Datum<String> actor,
        @Doc("pre-flight step that shows it") Datum<String> preflight) {}
