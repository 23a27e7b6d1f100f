package ringout.draw.bus;

import java.util.List;
import java.util.Map;
import ringout.draw.paper.Point;
import ringout.draw.scene.Presence;

/**
 * A placed bus scene with the way of every line; only {@link BusRouter} makes one.
 *
 * @param placed the stage before
 * @param wires one leg of a lead each
 * @param leaders thin lines from the members' signs to their boxes
 * @param labelLeaders thin lines from the dimension line to the labels
 * @param moves the ways of the arrows, by identifier
 */
record BusRouted(
        BusPlaced placed,
        List<LegWay> wires,
        List<List<Point>> leaders,
        List<List<Point>> labelLeaders,
        Map<String, List<Point>> moves) {
    /**
     * One leg of a lead.
     *
     * @param id identifier of the conductor
     * @param lead the lead
     * @param leg H or L
     * @param from identifier of the member or joint it starts at
     * @param to the same of its end
     * @param points its way
     * @param presence whether it is there
     */
    record LegWay(String id, String lead, String leg, String from, String to, List<Point> points, Presence presence) {
        LegWay {
            points = List.copyOf(points);
        }
    }

    BusRouted {
        wires = List.copyOf(wires);
        leaders = List.copyOf(leaders);
        labelLeaders = List.copyOf(labelLeaders);
    }
}
