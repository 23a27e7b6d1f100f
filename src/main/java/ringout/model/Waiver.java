package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A finding accepted with a reason and an end. */
public record Waiver(
        @Doc("where it stands in the user's file") Span at,
        @Doc("identity of the finding") String finding,
        @Doc("check") Datum<String> code,
        @Doc("objects of the finding") List<String> objects,
        @Doc("value at the time") Datum<Double> value,
        @Doc("limit at the time") Datum<Double> limit,
        @Doc("reason in own words, at least 20 characters") Datum<String> reason,
        @Doc("compensating measure") Datum<String> measure,
        @Doc("who") Datum<String> by,
        @Doc("second name, required for S1 and S2") Datum<String> second,
        @Doc("date, YYYY-MM-DD") Datum<String> date,
        @Doc("last day, YYYY-MM-DD") Datum<String> ends,
        @Doc("flight hours it ends at") Datum<Double> endsHours,
        @Doc("objects whose change ends it") List<String> untilChanged,
        @Doc("fingerprint of the rows it rests on") Datum<String> fingerprint,
        @Doc("conditions") Datum<String> conditions) {}
