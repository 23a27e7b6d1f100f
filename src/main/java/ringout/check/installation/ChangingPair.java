package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.model.Beside;
import ringout.model.CurrentLoop;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.LoopLie;
import ringout.model.RoutePoint;
import ringout.model.Unit;
import ringout.model.shape.Scalars;
import ringout.solve.field.CurrentRing;
import ringout.solve.field.Field;
import ringout.solve.field.LongPair;
import ringout.solve.field.Spot;

/**
 * A pair that carries changing current near a compass, and the change of field it makes there.
 *
 * @param loop the pair as declared
 * @param leads its leads
 * @param amps change of its current between idle and full throttle
 * @param exact the field, where the route of every lead is known and so the ring is closed
 * @param boundUt the most its level part can be, wherever over the pair the compass sits, microtesla; the level part itself where it is known
 * @param spacing spacing of its conductors, as far as it went into the bound
 * @param distance distance from the compass
 * @param words the arithmetic
 * @param twisted whether a tenth of the spacing was taken for its twist
 */
record ChangingPair(
        CurrentLoop loop,
        List<Lead> leads,
        Datum<Double> amps,
        Optional<Field> exact,
        double boundUt,
        Datum<Double> spacing,
        Datum<Double> distance,
        String words,
        boolean twisted) {
    /** What is left of the spacing of a twisted pair: common practice, no source. */
    private static final double TWISTED = 0.1;

    /** The change of field a pair makes at a compass; nothing when data are missing, which are noted. */
    static Optional<ChangingPair> of(Situation at, CurrentLoop loop, Unit compass, Gaps gaps) {
        List<Lead> leads = at.directory().leads().stream()
                .filter(lead -> loop.leads().contains(lead.id()))
                .toList();
        Datum<Double> amps = ThrottleChange.of(at, loop, leads);
        if (!amps.isKnown()) {
            gaps.add(ThrottleChange.DATUM, loop.name());
        }
        boolean twisted = !leads.isEmpty()
                && leads.stream().allMatch(lead -> lead.twisted().is(true));
        Optional<CurrentRing> ring = twisted ? Optional.empty() : ring(leads, amps.or(0.0));
        Optional<Spot> place = Apart.spot(compass);
        if (ring.isPresent() && place.isEmpty()) {
            gaps.add(Magnets.POSITION, compass.ref());
            return Optional.empty();
        }
        if (ring.isPresent() && place.isPresent()) {
            Field field = ring.get().at(place.get());
            return amps.isKnown()
                    ? Optional.of(new ChangingPair(
                            loop,
                            leads,
                            amps,
                            Optional.of(field),
                            field.horizontal(),
                            Datum.notAsked(),
                            Datum.notAsked(),
                            routed(ring.get(), amps.or(0.0), field),
                            false))
                    : Optional.empty();
        }
        Datum<Double> spacing = spacing(loop, leads);
        note(gaps, CompassNearCurrent.SPACING, spacing, loop);
        note(gaps, CompassNearCurrent.DISTANCE, loop.belowMm(), loop);
        note(gaps, CompassNearCurrent.LENGTH, loop.lengthMm(), loop);
        boolean known = amps.isKnown()
                && spacing.isKnown()
                && loop.belowMm().isKnown()
                && loop.lengthMm().isKnown();
        return known ? Optional.of(declared(loop, leads, amps, spacing, twisted)) : Optional.empty();
    }

    private static void note(Gaps gaps, String datum, Datum<Double> value, CurrentLoop loop) {
        if (!value.isKnown()) {
            gaps.add(datum, loop.name());
        }
    }

    /** As declared, or the gap between its leads where one says how it runs beside the other. */
    private static Datum<Double> spacing(CurrentLoop loop, List<Lead> leads) {
        for (Lead lead : leads) {
            for (Beside beside : lead.beside()) {
                if (loop.spacingMm().isMissing() && loop.leads().contains(beside.lead())) {
                    return beside.gapMm();
                }
            }
        }
        return loop.spacingMm();
    }

    /** The closed ring along the route points of all leads, the first lead out and the others back. */
    private static Optional<CurrentRing> ring(List<Lead> leads, double amps) {
        List<Spot> corners = new ArrayList<>();
        for (Lead lead : leads) {
            List<Spot> way = new ArrayList<>();
            for (RoutePoint point : lead.route()) {
                if (!point.xMm().isKnown()
                        || !point.yMm().isKnown()
                        || !point.zMm().isKnown()) {
                    return Optional.empty();
                }
                way.add(new Spot(
                        point.xMm().or(0.0), point.yMm().or(0.0), point.zMm().or(0.0)));
            }
            if (way.size() < 2) {
                return Optional.empty();
            }
            join(corners, way);
        }
        return leads.size() < 2 ? Optional.empty() : Optional.of(new CurrentRing(corners, amps));
    }

    /** Goes on with the end that is nearer: the list does not say which way a current passes a lead. */
    private static void join(List<Spot> corners, List<Spot> way) {
        Spot last = corners.isEmpty() ? way.get(0) : corners.get(corners.size() - 1);
        boolean turned = last.distance(way.get(way.size() - 1)) < last.distance(way.get(0));
        for (int i = 0; i < way.size(); i++) {
            corners.add(way.get(turned ? way.size() - 1 - i : i));
        }
    }

    private static String routed(CurrentRing ring, double amps, Field field) {
        return String.format(
                Locale.ROOT,
                "closed ring of %s A over %d route points: %s uT, %s uT of it level",
                Figures.of(amps),
                ring.corners().size(),
                Figures.of(field.amount()),
                Figures.of(field.horizontal()));
    }

    /**
     * Known by length, spacing and distance alone. Side by side, its field is upright right above its middle and level an
     * eighth of a turn beside it, so its amount counts; on edge it is level, and the closed ring says how much.
     */
    private static ChangingPair declared(
            CurrentLoop loop, List<Lead> leads, Datum<Double> amps, Datum<Double> spacing, boolean twisted) {
        double apart = spacing.or(0.0) * (twisted ? TWISTED : 1);
        double away = loop.belowMm().or(0.0);
        boolean edge = loop.lie().is(LoopLie.EDGE);
        double pair = LongPair.pair(amps.or(0.0), apart, away);
        double ring = CurrentRing.pair(loop.lengthMm().or(0.0), apart, away, amps.or(0.0), edge)
                .at(new Spot(0, 0, 0))
                .amount();
        String words = String.format(
                Locale.ROOT,
                "%s: 0.2 x %s A x %s m / (%s m)^2 = %s uT as a long pair%s; closed ring of %s mm %s %s uT",
                loop.name(),
                Figures.of(amps.or(0.0)),
                metres(apart),
                metres(away),
                Figures.of(pair),
                twisted ? " twisted to a tenth of its spacing" : "",
                Figures.of(loop.lengthMm().or(0.0)),
                edge ? "on edge" : loop.lie().is(LoopLie.FLAT) ? "lying flat" : "side by side",
                Figures.of(ring));
        double level = edge ? ring : Math.max(pair, ring);
        return new ChangingPair(loop, leads, amps, Optional.empty(), level, spacing, loop.belowMm(), words, twisted);
    }

    private static String metres(double millimetres) {
        return Scalars.number(Math.round(millimetres * 10) / 10_000.0);
    }
}
