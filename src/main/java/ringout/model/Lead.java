package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A made-up cable between two plugs: one row of the list. */
public record Lead(
        @Doc("where it stands in the user's file") Span at,
        @Doc("identity, on its label at both ends") String id,
        @Doc("plug or pin it starts at") End from,
        @Doc("plug or pin it ends at") End to,
        @Doc("what it carries") Datum<LeadKind> kind,

        @Doc("signal of a single wire, as its row says: CANH, GND, 5V")
        Datum<String> signal,

        @Doc("wire size") Datum<Awg> awg,
        @Doc("wire cross-section") Datum<Double> areaMm2,
        @Doc("cut length") Datum<Double> lengthMm,
        @Doc("length of the way it takes") Datum<Double> routeMm,
        @Doc("pin to pin; empty means straight") Datum<PinMap> pins,
        @Doc("average current it is sized for") Datum<Double> averageA,
        @Doc("peak current it is sized for") Datum<Double> peakA,
        @Doc("how long the peak lasts") Datum<Double> peakS,
        @Doc("fuse in its supply conductor") Datum<Double> fuseA,
        @Doc("which end the fuse sits at") Datum<FuseEnd> fuseAt,
        @Doc("melting integral of that fuse") Datum<Double> fuseMeltA2s,
        @Doc("pair is twisted") Datum<Boolean> twisted,

        @Doc("pins of the from end whose conductors are twisted together: 1-2 3-6 4-5 7-8")
        Datum<String> pairs,

        @Doc("longest untwisted piece of a pair at a plug") Datum<Double> untwistedMm,

        @Doc("shield and which end is grounded") Datum<Shield> shield,

        @Doc("colour letters by pin of the from end, IEC 60757: 1=RD 2=BK")
        Datum<String> colours,

        @Doc("insulation temperature rating") Datum<Double> insulationC,
        @Doc("lies in moving air") Datum<Boolean> movingAir,
        @Doc("temperature around it") Datum<Double> ambientC,
        @Doc("loaded wires in its bundle") Datum<Integer> loadedInBundle,
        @Doc("outer diameter") Datum<Double> diameterMm,
        @Doc("bundle it runs in") Datum<String> bundle,
        @Doc("sleeve or grommet over it") Datum<String> sleeve,
        @Doc("label at the from end") Datum<String> fromLabel,
        @Doc("label at the to end") Datum<String> toLabel,
        @Doc("plug family at the from end") Datum<String> fromFamily,
        @Doc("plug family at the to end") Datum<String> toFamily,
        @Doc("key of the plug at the from end") Datum<String> fromKey,
        @Doc("key of the plug at the to end") Datum<String> toKey,

        @Doc("contacts of the plug at the from end, by the contact and not by the shell")
        Datum<ContactHalf> fromHalf,

        @Doc("contacts of the plug at the to end, by the contact and not by the shell")
        Datum<ContactHalf> toHalf,

        @Doc("plating of the contacts at the from end") Datum<String> fromPlating,
        @Doc("plating of the contacts at the to end") Datum<String> toPlating,
        @Doc("zone it runs in") Datum<String> zone,

        @Doc("loop-back or safety jumper on one unit, meant so")
        Datum<Boolean> jumper,

        @Doc("shares a plug with another lead on declared pins")
        Datum<Boolean> sharedPins,

        @Doc("unfused by design, declared") Datum<Boolean> unfused,
        @Doc("comes made with the unit") Datum<Boolean> delivered,
        @Doc("carries a filter") Datum<Boolean> filtered,
        @Doc("longest piece without support") Datum<Double> unsupportedMm,
        @Doc("free loop at a damped unit") Datum<Double> freeLoopMm,
        @Doc("made, repaired or touched since last good") Datum<Boolean> recent,
        @Doc("mating count") Datum<Integer> matings,
        @Doc("points of the way with flags") List<RoutePoint> route,
        @Doc("other leads it runs along") List<Beside> beside,
        @Doc("wires that differ from the lead") List<Conductor> conductors,
        @Doc("who made it") Datum<String> madeBy,
        @Doc("free remark") Datum<String> note) {
    // Its name is enough to tell it from the others, and much quicker than all its fields.
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
