package ringout.model;

import java.util.List;
import ringout.text.Span;

/** One step of the procedure. */
public record Step(
        @Doc("where it stands in the user's file") Span at,
        @Doc("step") String id,

        @Doc("fit, make, set, check, photo, close, energise, sign")
        Datum<String> action,

        @Doc("units, leads and plugs it touches") List<String> objects,
        @Doc("cover it closes") Datum<String> cover,
        @Doc("stage") Datum<String> stage,
        @Doc("what it says of the object") Datum<String> attribute,
        @Doc("value it says") Datum<String> says,
        @Doc("propellers fitted at this step") Datum<Boolean> propellersOn,
        @Doc("when it was done") Datum<String> done,
        @Doc("who did it") Datum<String> by,
        @Doc("steps before it") List<String> after) {}
