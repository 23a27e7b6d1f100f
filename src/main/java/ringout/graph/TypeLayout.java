package ringout.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.PassThrough;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * The pins of a unit type in one row, and the points inside that join them. Pins are numbered through all plugs in the
 * order of the type; points in the order they are met.
 */
public final class TypeLayout {
    private final UnitType type;
    private final List<Pin> pins = new ArrayList<>();
    private final @Nullable PinRole[] roles;
    private final int[] plugOfPin;
    private final int[] pointOfPin;
    private final int[] plugStart;
    private final Map<String, Integer> points = new LinkedHashMap<>();
    private final List<String> pointNames;
    private final NameTable plugByName = new NameTable();
    private final List<PinNames> pinByName = new ArrayList<>();
    private final Map<String, BusPort> ports = new LinkedHashMap<>();
    private final List<BusPort> busPorts;

    /** Lays out a type. */
    public TypeLayout(UnitType type) {
        this.type = type;
        type.ports().forEach(port -> ports.putIfAbsent(port.name(), port));
        List<Plug> plugs = type.plugs();
        plugStart = new int[plugs.size() + 1];
        for (int p = 0; p < plugs.size(); p++) {
            pins.addAll(plugs.get(p).pins());
            plugStart[p + 1] = pins.size();
            name(plugs.get(p), p);
        }
        roles = new PinRole[pins.size()];
        for (int i = 0; i < roles.length; i++) {
            roles[i] = pins.get(i).role() instanceof Datum.Known<PinRole> known ? known.value() : null;
        }
        plugOfPin = new int[pins.size()];
        pointOfPin = new int[pins.size()];
        for (int p = 0; p < plugs.size(); p++) {
            for (int i = plugStart[p]; i < plugStart[p + 1]; i++) {
                plugOfPin[i] = p;
                pointOfPin[i] = point(plugs.get(p), pins.get(i));
            }
        }
        innerPoints();
        busPorts = findBusPorts();
        pointNames = List.copyOf(points.keySet());
    }

    private void name(Plug plug, int index) {
        plugByName.add(plug.name(), index);
        plug.printedName().known().ifPresent(name -> plugByName.add(name, index));
        plug.aliases().forEach(name -> plugByName.add(name, index));
        pinByName.add(new PinNames(plug.pins(), plugStart[index]));
    }

    /** The short name of a bus leg, also accepted as a pin name. */
    static Optional<String> leg(PinRole role) {
        return switch (role) {
            case CAN_H -> Optional.of("H");
            case CAN_L -> Optional.of("L");
            case SCL -> Optional.of("SCL");
            case SDA -> Optional.of("SDA");
            case PAIR_P -> Optional.of("P");
            case PAIR_N -> Optional.of("N");
            default -> Optional.empty();
        };
    }

    private int point(Plug plug, Pin pin) {
        if (!pin.role().isKnown()) {
            return -1;
        }
        PinRole role = pin.role().or(PinRole.NONE);
        Optional<String> inside = pin.inside().known();
        String name =
                switch (role) {
                    case ZERO_V -> inside.orElse("0V");
                    case PACK_PLUS -> inside.orElse("+");
                    case PACK_MINUS -> inside.orElse("-");
                    case CAN_H, CAN_L, SCL, SDA -> legPoint(plug, inside.orElse(plug.name()), role);
                    case PAIR_P, PAIR_N ->
                        inside.map(port -> legPoint(plug, port, role)).orElse("");
                    case SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH, PASSIVE -> inside.orElse("");
                    default -> "";
                };
        return name.isEmpty() ? -1 : points.computeIfAbsent(name, key -> points.size());
    }

    private String legPoint(Plug plug, String port, PinRole role) {
        PassThrough through = port(port)
                .map(BusPort::passThrough)
                .flatMap(datum -> datum.known())
                .orElse(PassThrough.PASSIVE);
        String base = port + " " + leg(role).orElse("");
        return through == PassThrough.PASSIVE ? base : base + " @" + plug.name();
    }

    private void innerPoints() {
        type.rails().forEach(rail -> points.computeIfAbsent(rail.name(), key -> points.size()));
        type.parts().forEach(part -> {
            innerPoint(part.from());
            innerPoint(part.to());
        });
        if (!type.parts().isEmpty() || !type.loads().isEmpty()) {
            points.computeIfAbsent("0V", key -> points.size());
        }
    }

    private void innerPoint(String name) {
        if (pinAt(name).isEmpty()) {
            points.computeIfAbsent(name, key -> points.size());
        }
    }

    /** The type laid out. */
    public UnitType type() {
        return type;
    }

    /** Number of pins through all plugs. */
    public int pinCount() {
        return pins.size();
    }

    /** A pin. */
    public Pin pin(int index) {
        return pins.get(index);
    }

    /** The role of a pin; nothing when it is not known. */
    @Nullable
    PinRole role(int index) {
        return roles[index];
    }

    /** Copies the roles of all pins into a longer row. */
    void copyRoles(@Nullable PinRole[] into, int start) {
        System.arraycopy(roles, 0, into, start, roles.length);
    }

    /** The plug a pin belongs to. */
    public int plugOf(int pin) {
        return plugOfPin[pin];
    }

    /** The point a pin joins inside, or -1. */
    public int pointOf(int pin) {
        return pointOfPin[pin];
    }

    /** First pin of a plug. */
    public int firstPin(int plug) {
        return plugStart[plug];
    }

    /** One past the last pin of a plug. */
    public int endPin(int plug) {
        return plugStart[plug + 1];
    }

    /** Names of the points inside, in order. */
    public List<String> points() {
        return pointNames;
    }

    /** Number of points inside. */
    public int pointCount() {
        return points.size();
    }

    /** A point inside by name. */
    public Optional<Integer> point(String name) {
        return Optional.ofNullable(points.get(name));
    }

    /** A plug by any of its names, or -1. */
    public int plug(String name) {
        return plugByName.find(name);
    }

    /** A plug by the name that a part of a text is, or -1. */
    int plug(String text, int start, int end) {
        return plugByName.find(text, start, end);
    }

    /** A pin of a plug by number, name or leg, or -1. */
    public int pin(int plug, String name) {
        return pinByName.get(plug).find(name);
    }

    /** A pin written PLUG-PIN, if there is one. */
    public Optional<Integer> pinAt(String name) {
        int dash = name.lastIndexOf('-');
        if (dash <= 0) {
            return Optional.empty();
        }
        int plug = plug(name.substring(0, dash));
        int pin = plug < 0 ? -1 : pin(plug, name.substring(dash + 1));
        return pin < 0 ? Optional.empty() : Optional.of(pin);
    }

    /** A bus port of the type by name. */
    public Optional<BusPort> port(String name) {
        return Optional.ofNullable(ports.get(name));
    }

    /**
     * The bus ports of the type, and one of which nothing is known for every CAN pin whose port the type does not
     * describe. A pin that names no port belongs to a port named as its plug.
     */
    public List<BusPort> busPorts() {
        return busPorts;
    }

    private List<BusPort> findBusPorts() {
        Map<String, BusPort> found = new LinkedHashMap<>(ports);
        for (int i = 0; i < pins.size(); i++) {
            if (pins.get(i).role().is(PinRole.CAN_H) || pins.get(i).role().is(PinRole.CAN_L)) {
                String name =
                        pins.get(i).inside().or(type.plugs().get(plugOfPin[i]).name());
                found.computeIfAbsent(name, TypeLayout::undescribed);
            }
        }
        return List.copyOf(found.values());
    }

    private static BusPort undescribed(String name) {
        Shape<BusPort> shape = Shape.of(BusPort.class);
        return shape.with(shape.empty(), "name", name);
    }
}
