package ringout.model.shape;

import java.util.Locale;
import java.util.Set;
import ringout.model.HiddenDevice;
import ringout.model.Lead;
import ringout.model.Message;
import ringout.model.Pin;
import ringout.model.PortSetting;

/** How records of one list are told apart. */
public final class Identity {
    private static final Set<String> NAMES = Set.of("id", "ref", "name", "number", "output", "port");

    /** A lead may have a row for each wire; several equal devices or messages are usual. */
    private static final Set<Class<?>> REPEATED = Set.of(Lead.class, HiddenDevice.class, Message.class);

    private Identity() {}

    /** Whether no two records of one list may have the same key. */
    public static boolean unique(Shape<?> shape) {
        return !REPEATED.contains(shape.type())
                && shape.key().map(Slot::name).filter(NAMES::contains).isPresent();
    }

    /** Whether the key may be left empty: a unit with one port needs no port name; a lead without a name is a finding. */
    public static boolean mayBeEmpty(Shape<?> shape) {
        return shape.type() == PortSetting.class || shape.type() == Lead.class;
    }

    /** A key as it is compared: case and blanks around it apart, except for contacts, where A and a are two. */
    public static String fold(Shape<?> shape, String key) {
        return shape.type() == Pin.class ? key.strip() : key.strip().toLowerCase(Locale.ROOT);
    }

    /** The key of a record as written, or empty when its shape has none. */
    public static String key(Shape<?> shape, Object record) {
        return shape.key().map(slot -> slot.get(record).toString()).orElse("");
    }
}
