package ringout.read.table;

import java.util.ArrayList;
import java.util.List;

/**
 * The setting of one port in a cell that has one for each.
 *
 * @param port name of the port; empty when the cell is one bare value
 * @param value the setting
 */
record PortCell(String port, String value) {
    private static final int LONGEST = 2000;

    /** The settings of a cell: {@code CAN1=10 CAN2=10}, or one value for the only port; none when it is neither. */
    static List<PortCell> of(String text) {
        if (text.indexOf('=') < 0) {
            return List.of(new PortCell("", text));
        }
        List<PortCell> settings = new ArrayList<>();
        String joined = text.length() > LONGEST ? "" : text.replaceAll("\\s*=\\s*", "=");
        for (String word : joined.split("[\\s;]+")) {
            int equals = word.indexOf('=');
            boolean wrong = equals == 0 || equals == word.length() - 1 || equals != word.lastIndexOf('=');
            if (wrong || (equals < 0 && settings.isEmpty())) {
                return List.of();
            }
            if (equals > 0) {
                settings.add(new PortCell(word.substring(0, equals), word.substring(equals + 1)));
            } else if (!word.isEmpty()) {
                PortCell last = settings.remove(settings.size() - 1);
                settings.add(new PortCell(last.port(), last.value() + " " + word));
            }
        }
        return settings;
    }
}
