package ringout.check.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Situation;
import ringout.model.BusPort;
import ringout.model.Control;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.TerminatorFit;
import ringout.model.Unit;

/** What is set on a unit: terminator switches, addresses that are not read back yet, buttons, slots and selectors. */
public final class HandSettings {
    /**
     * A setting.
     *
     * @param name what is set, in words
     * @param word what steps tell it by
     * @param onLink whether it can be made over the link, so that no hand must reach it
     */
    public record Setting(String name, String word, Datum<Boolean> onLink) {
        /** Whether no hand is needed for it. */
        public boolean needsNoHand() {
            return onLink.is(true) || onLink.isNotApplicable();
        }
    }

    private HandSettings() {}

    /** {@return the settings of a unit, those read back and right left out} */
    public static List<Setting> of(Situation at, int unit) {
        List<Setting> settings = new ArrayList<>();
        Unit row = at.directory().unit(unit);
        for (BusPort port : at.directory().type(unit).ports()) {
            if (port.terminator().is(TerminatorFit.SWITCH)) {
                settings.add(new Setting("terminator switch of " + port.name(), "terminator", overLink(port)));
            }
            if (addressed(row, port) && !readBack(row, port)) {
                settings.add(new Setting("address of " + port.name(), "address", port.setOnLink()));
            }
        }
        for (Control control : at.directory().type(unit).controls()) {
            settings.add(new Setting(control.name(), control.name().toLowerCase(Locale.ROOT), control.setOnLink()));
        }
        return settings;
    }

    private static Datum<Boolean> overLink(BusPort port) {
        return port.terminatorAt().isKnown()
                ? Datum.of(port.terminatorAt().or("").toLowerCase(Locale.ROOT).contains("link"))
                : Datum.unknown();
    }

    private static boolean addressed(Unit unit, BusPort port) {
        return unit.ports().stream()
                .filter(setting -> on(setting, port))
                .anyMatch(setting ->
                        setting.address().isKnown() || setting.i2cAddress().isKnown());
    }

    private static boolean on(PortSetting setting, BusPort port) {
        return setting.port().isEmpty() || setting.port().equalsIgnoreCase(port.name());
    }

    private static boolean readBack(Unit unit, BusPort port) {
        return unit.ports().stream()
                .filter(setting -> on(setting, port))
                .anyMatch(setting -> setting.address().isKnown()
                        && setting.address()
                                .known()
                                .equals(unit.asRead().address().known()));
    }
}
