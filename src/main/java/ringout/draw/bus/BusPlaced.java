package ringout.draw.bus;

import java.util.List;
import ringout.draw.paper.Area;
import ringout.draw.scene.BusScene;

/**
 * A bus scene whose every part has its place on the sheet; only {@link BusPlacer} makes one.
 *
 * @param scene where it comes from
 * @param marks badges
 * @param sizes of lettering
 * @param scale of the trunk
 * @param pointX across the sheet, of each place of the trunk
 * @param high height of the line of the high legs
 * @param labels above the trunk
 * @param labelX middle of each label
 * @param labelY middle height of the labels
 * @param dimensionY height of the dimension line
 * @param members boxes, by the place of their leaders from left to right
 * @param ringY height of the lead that closes a ring
 * @param table where the readings stand
 */
record BusPlaced(
        BusScene scene,
        BusMarks marks,
        Sizes sizes,
        BusScale scale,
        List<Double> pointX,
        double high,
        List<TrunkLabel> labels,
        List<Double> labelX,
        double labelY,
        double dimensionY,
        List<Seat> members,
        double ringY,
        Area table) {
    /** Distance of the two legs, mm. */
    static final double PAIR = 7;

    /** How far a marker reaches beyond the legs, mm. */
    static final double OVER = 2.2;

    /** Distance of the legs of a stub, mm. */
    static final double STUB_PAIR = 2.5;

    /** Height of what hangs at the end of a stub, mm. */
    static final double HANGING = 4.6;

    /**
     * A member's box and its leader.
     *
     * @param form the box
     * @param marker the sign on the trunk or at the end of the stub
     * @param box where the box stands
     * @param row 0 or 1
     * @param passX for a box of row 1, where its leader passes row 0
     */
    record Seat(MemberForm form, Area marker, Area box, int row, double passX) {
        /** {@return where the leader starts} */
        double leaderX() {
            return form.stub().isPresent() ? marker.centre().x() : marker.right() - BusScale.HALF_MARKER;
        }
    }

    BusPlaced {
        pointX = List.copyOf(pointX);
        labels = List.copyOf(labels);
        labelX = List.copyOf(labelX);
        members = List.copyOf(members);
    }

    /** {@return height of the line of the low legs} */
    double low() {
        return high + PAIR;
    }

    /** {@return the height from which all leaders turn} */
    double leadersFrom() {
        return members.stream().mapToDouble(s -> s.marker().bottom()).max().orElse(low()) + 1.5;
    }
}
