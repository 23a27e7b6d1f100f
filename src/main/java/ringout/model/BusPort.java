package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A bus port of a unit type. */
public record BusPort(
        @Doc("where it stands in the user's file") Span at,

        @Doc("name of the port, as its pins say in \"inside\"")
        String name,

        @Doc("kind of bus") Datum<BusKind> kind,
        @Doc("how the terminator is fitted") Datum<TerminatorFit> terminator,
        @Doc("value of the terminator") Datum<Double> terminatorOhm,
        @Doc("where its switch sits") Datum<String> terminatorAt,
        @Doc("resistance of the node between the legs") Datum<Double> nodeOhm,
        @Doc("capacitance of the node") Datum<Double> nodePicofarad,
        @Doc("branch inside the unit") Datum<Double> stubMm,
        @Doc("what joins its two sockets") Datum<PassThrough> passThrough,
        @Doc("bit rates it can do") List<Double> ratesKbit,
        @Doc("finds the rate by itself") Datum<Boolean> autoRate,
        @Doc("frames it sends and understands") Datum<FrameForm> frame,
        @Doc("address as shipped") Datum<Integer> defaultAddress,
        @Doc("address can be set over the link") Datum<Boolean> setOnLink,
        @Doc("gives addresses to others") Datum<Boolean> allocator,
        @Doc("pull-up to the rail on each line") Datum<Double> pullUpOhm,
        @Doc("voltage the pull-up goes to") Datum<Double> pullUpV,
        @Doc("free remark") Datum<String> note) {}
