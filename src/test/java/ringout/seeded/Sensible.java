package ringout.seeded;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import ringout.model.Awg;
import ringout.model.Datum;

/**
 * What a datum may sensibly be when nobody knows it, for those in which every solved current has a share: a contact of a
 * kiloohm or a lead of half a kilometre would move currents everywhere, but no aircraft has one. Common practice, no source.
 */
final class Sensible {
    private static final Map<String, Function<Object, List<?>>> OTHERS = Map.ofEntries(
            // shorter than a hand, and through the whole aircraft
            entry("Lead.lengthMm", value -> List.of(80.0, 5000.0)),
            entry("Lead.awg", value -> List.of(new Awg(28), new Awg(6))),
            // new, and worn at the end of its life: up to 5 mohm where amperes flow, up to 40 mohm for signals
            entry("Plug.contactMilliohm", value -> (double) value < 5 ? List.of(0.1, 5.0) : List.of(3.0, 40.0)),
            entry("Joint.milliohm", value -> List.of(0.05, 1.0)),
            // contacts of one size are rated alike
            entry("Plug.contactRatingA", value -> List.of((double) value * 0.8, (double) value * 1.25)),
            entry("PartRating.efficiency", value -> List.of(0.75, 0.95)),
            entry("PartRating.quiescentA", value -> List.of(0.0, 0.1)),
            entry("PartRating.dropoutV", value -> List.of(0.1, 1.5)),
            // set by hand to what its rail is called
            entry("PartRating.outputV", value -> List.of((double) value * 0.96, (double) value * 1.04)),
            entry("PartRating.milliohm", value -> List.of(0.1, 50.0)),
            entry("PartRating.cellMilliohm", value -> List.of((double) value / 2, (double) value * 1.5)),
            entry("PartRating.parallel", value -> List.of(1, 2, 4)),
            // iron phosphate and high-voltage lithium cells
            entry("PartRating.nominalV", value -> List.of(3.2, 3.8)),
            // a short-time rating is never below the continuous one
            entry("Rail.peakA", value -> List.of((double) value * 0.7, (double) value * 1.5)),
            // the packs tell it within what their cells may be
            entry("Rail.nominalV", value -> List.of((double) value * 0.9, (double) value * 1.1)),
            entry("LoadSpec.averageA", value -> List.of((double) value / 2, (double) value * 3)),
            // an event asks for nothing more, or for less than a maker's peak
            entry("EventLoad.amps", value -> List.of(0.0, (double) value * 1.2)));

    private Sensible() {}

    /** Other values it may have; none when an absurd one is as good. */
    static List<Datum<?>> of(Spot spot) {
        Function<Object, List<?>> others = OTHERS.get(spot.field());
        if (spot.field().equals("EventLoad.rail")) {
            // the units of these events have one load each: no other rail can be meant
            return List.of(Datum.of(spot.value()));
        }
        return others == null
                ? List.of()
                : others.apply(spot.value()).stream()
                        .filter(other -> !other.equals(spot.value()))
                        .<Datum<?>>map(Datum::of)
                        .toList();
    }
}
