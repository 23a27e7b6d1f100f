package ringout.model;

import ringout.text.Span;

/** Function of one output. */
public record OutputSetting(
        @Doc("where it stands in the user's file") Span at,
        @Doc("output, as its pin says") String output,
        @Doc("motor 3, gear, aileron left") Datum<String> function,
        @Doc("protocol set") Datum<String> protocol,
        @Doc("update rate set") Datum<Double> rateHz,
        @Doc("reversed in the configuration") Datum<Boolean> reversed,
        @Doc("free remark") Datum<String> note) {}
