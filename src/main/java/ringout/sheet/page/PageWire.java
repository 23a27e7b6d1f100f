package ringout.sheet.page;

import java.util.List;

/**
 * One conductor.
 *
 * @param lead its lead
 * @param from pin at the from end, UNIT-PLUG-PIN or a joint
 * @param to pin at the to end
 * @param leg H or L of a bus pair, else empty
 * @param carries what its pin at the from end carries, else at the to end, in words; empty when neither tells
 * @param facts size, colour, length and the like as listed, each in words
 * @param note free remark of the lead
 */
public record PageWire(
        String lead, String from, String to, String leg, String carries, List<String> facts, String note) {}
