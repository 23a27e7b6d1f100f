package ringout.model;

import ringout.text.Span;

/** A zone of the airframe. */
public record Zone(
        @Doc("where it stands in the user's file") Span at,
        @Doc("zone") String name,
        @Doc("material of plates and tubes") Datum<String> material,
        @Doc("carbon or metal") Datum<Boolean> conductive,
        @Doc("sees spray or rain") Datum<Boolean> wet,
        @Doc("highest temperature") Datum<Double> temperatureC) {}
