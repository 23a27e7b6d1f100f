package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A declared bus. */
public record Bus(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the bus") String name,
        @Doc("kind of bus") Datum<BusKind> kind,
        @Doc("bit rate") Datum<Double> rateKbit,
        @Doc("bit rate of the data phase") Datum<Double> dataRateKbit,
        @Doc("frame form") Datum<FrameForm> frame,
        @Doc("addresses are given out on the bus") Datum<Boolean> allocator,
        @Doc("units, or UNIT:PORT") List<String> members) {}
