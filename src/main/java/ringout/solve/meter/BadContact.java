package ringout.solve.meter;

import java.util.List;
import java.util.Optional;
import ringout.solve.MeterElement;
import ringout.solve.Resistivity;

/**
 * What a contact of high resistance makes the meter show: the contact that carries most of the current, with too little to
 * notice and with as much as is met. Common practice, no source: 0.5 to 50 ohm in a signal contact, 2 to 50 milliohm in a
 * contact made for a supply.
 *
 * @param lead the lead of the contact
 * @param pin the pin it belongs to
 * @param fromOhm what it has too much at least, in ohm
 * @param toOhm what it has too much at most
 * @param from the reading with the least
 * @param to the reading with the most
 */
public record BadContact(String lead, String pin, double fromOhm, double toOhm, Reading from, Reading to) {
    private static final double SIGNAL_FROM = 0.5;
    private static final double SIGNAL_TO = 50;
    private static final double SUPPLY_FROM = 0.002;
    private static final double SUPPLY_TO = 0.050;
    private static final double NOTABLE = 0.1;

    /** The contact of the probed points, if one carries a notable part of the current. */
    static Optional<BadContact> of(Probed probed) {
        int worst = -1;
        for (Island.Member member : probed.connected() ? probed.island().members() : List.<Island.Member>of()) {
            boolean contact = member.element().piece() instanceof MeterElement.OfContact;
            double least = worst < 0 ? NOTABLE : probed.load(worst);
            if (contact && probed.load(member.number()) > least) {
                worst = member.number();
            }
        }
        return worst < 0 ? Optional.empty() : Optional.of(with(probed, worst));
    }

    private static BadContact with(Probed probed, int contact) {
        MeterElement element = probed.element(contact);
        MeterElement.OfContact of = (MeterElement.OfContact) element.piece();
        boolean supply = element.ohm() <= Resistivity.POWER_CONTACT_OHM;
        double from = supply ? SUPPLY_FROM : SIGNAL_FROM;
        double to = supply ? SUPPLY_TO : SIGNAL_TO;
        return new BadContact(
                of.wire().lead().id(),
                probed.wiring().name(of.pin()),
                from,
                to,
                reading(probed, contact, from),
                reading(probed, contact, to));
    }

    private static Reading reading(Probed probed, int contact, double more) {
        MeterElement element = probed.element(contact);
        return probed.network()
                .reading(
                        probed.a(),
                        probed.b(),
                        List.of(
                                new Change.Opened(contact),
                                new Change.Added(element.a(), element.b(), element.ohm() + more)));
    }
}
