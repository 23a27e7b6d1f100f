package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A point-to-point port of a unit type. */
public record SerialPort(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the port: plug name") String name,
        @Doc("protocols it can talk") List<String> protocols,
        @Doc("idle level inverted") Datum<Boolean> inverted,
        @Doc("can be set to read inverted signals") Datum<Boolean> canInvert,
        @Doc("longest lead the maker allows") Datum<Double> maxLengthMm,
        @Doc("protocol the device needs") Datum<String> needs) {}
