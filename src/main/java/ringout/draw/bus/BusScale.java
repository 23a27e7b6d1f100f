package ringout.draw.bus;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;

/**
 * The scale of a bus diagram and the places on the trunk.
 *
 * @param denominator of the scale 1 : n
 * @param places mm from the first place to each
 * @param broken for each lead, whether it is not drawn to scale
 */
record BusScale(double denominator, List<Double> places, List<Boolean> broken) {
    /** Half the width of a member on the trunk, mm. */
    static final double HALF_MARKER = 1.8;

    /** Half the width of what hangs at the end of a stub, mm. */
    static final double HALF_HANGING = 4.2;

    /** How far left of its member a stub hangs, mm; the member's own leader is on the right. */
    static final double STUB_ASIDE = 2.25;

    private static final double MM_PER_M = 1000;
    private static final double CLEAR = 4;
    private static final double UNKNOWN = 26;
    private static final double[] DENOMINATORS = {1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 500, 1000};

    BusScale {
        places = List.copyOf(places);
        broken = List.copyOf(broken);
    }

    /** {@return the largest scale at which trunk and stubs have room, if there is one; no lead drawn shorter than told} */
    static Optional<BusScale> fitting(BusScene scene, List<Double> least, double trunkRoom, double stubRoom) {
        for (double denominator : DENOMINATORS) {
            double longest = scene.stubs().stream()
                    .mapToDouble(s -> s.lead().lengthM().orElse(0))
                    .max()
                    .orElse(0);
            BusScale scale = of(scene, least, denominator);
            if (scale.length() <= trunkRoom && scale.mm(longest) <= stubRoom) {
                return Optional.of(scale);
            }
        }
        return Optional.empty();
    }

    private static BusScale of(BusScene scene, List<Double> leastOf, double denominator) {
        List<Double> places = new ArrayList<>(List.of(0.0));
        List<Boolean> broken = new ArrayList<>();
        for (int i = 0; i < scene.leads().size(); i++) {
            double least = Math.max(leastOf.get(i), reach(scene, i, true) + reach(scene, i + 1, false) + CLEAR);
            OptionalDouble length = scene.leads().get(i).lengthM();
            double true_ = length.isPresent() ? length.getAsDouble() * MM_PER_M / denominator : UNKNOWN;
            places.add(places.get(i) + Math.max(true_, least));
            broken.add(length.isEmpty() || true_ < least);
        }
        return new BusScale(denominator, places, broken);
    }

    /** How far what stands at a place reaches to one side. */
    private static double reach(BusScene scene, int place, boolean toTheRight) {
        BusPoint point = scene.trunk().get(place);
        Optional<BusStub> stub =
                scene.stubs().stream().filter(s -> s.at().equals(point.id())).findFirst();
        if (stub.isEmpty()) {
            return HALF_MARKER;
        }
        boolean member = point instanceof BusMember;
        return member && !toTheRight ? HALF_HANGING + STUB_ASIDE : HALF_HANGING + 0.5;
    }

    /** {@return a length on the sheet, mm} */
    double mm(double metres) {
        return metres * MM_PER_M / denominator;
    }

    /** {@return the drawn length of a stub, mm; at least a little} */
    double stub(BusLead lead) {
        return Math.max(3, lead.lengthM().isPresent() ? mm(lead.lengthM().getAsDouble()) : UNKNOWN / 2);
    }

    /** {@return whether a stub is not drawn to scale} */
    boolean stubBroken(BusLead lead) {
        return lead.lengthM().isEmpty() || mm(lead.lengthM().getAsDouble()) < 3;
    }

    /** {@return from the first place to the last, mm} */
    double length() {
        return places.get(places.size() - 1);
    }

    /** {@return the scale in words} */
    String words() {
        String ratio = denominator == Math.rint(denominator)
                ? Integer.toString((int) denominator)
                : Double.toString(denominator);
        double perMetre = MM_PER_M / denominator;
        String mm = perMetre == Math.rint(perMetre)
                ? Integer.toString((int) perMetre)
                : String.format(Locale.ROOT, "%.1f", perMetre);
        return "scale of length 1:" + ratio + ", " + mm + " mm on the sheet is 1 m of lead";
    }
}
