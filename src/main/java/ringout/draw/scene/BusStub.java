package ringout.draw.scene;

/**
 * A member that hangs off the trunk.
 *
 * @param at the tee or member of the trunk it hangs from
 * @param lead the lead between
 * @param member the unit at its end
 */
public record BusStub(String at, BusLead lead, BusMember member) {}
