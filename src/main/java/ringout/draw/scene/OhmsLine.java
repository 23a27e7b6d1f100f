package ringout.draw.scene;

/**
 * What an ohmmeter shows between the legs at a plug, power off; texts as printed, such as {@code 60} or {@code 117-123}.
 *
 * @param plug such as {@code GMC-C1}
 * @param mated with the plug in place
 * @param intoLead with the plug pulled, into the lead
 * @param intoUnit with the plug pulled, into the unit
 */
public record OhmsLine(String plug, String mated, String intoLead, String intoUnit) {}
