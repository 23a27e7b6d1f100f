package ringout.repair.move;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Spin;
import ringout.model.Unit;

/** Flags turned, rates and protocols set as the other units around the mistake have them, propellers exchanged. */
final class SettingMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        return fault.units().stream().flatMap(unit -> Stream.concat(flags(unit), ports(fault, unit)));
    }

    private static Stream<Candidate> flags(Unit unit) {
        Stream<Candidate> turned = unit.reversed().known().stream()
                .flatMap(
                        now -> Move.setting(Move.unit(unit.ref()).then("reversed"), now ? "no" : "yes", Costs.SETTING));
        Stream<Candidate> hand = unit.propeller().known().stream()
                .flatMap(now -> Move.setting(
                        Move.unit(unit.ref()).then("propeller"), now == Spin.CW ? "CCW" : "CW", Costs.SETTING));
        return Stream.concat(turned, hand);
    }

    private static Stream<Candidate> ports(Fault fault, Unit unit) {
        return unit.ports().stream()
                .flatMap(port -> Stream.of(
                                as(fault, unit, port, "rateKbit", PortSetting::rateKbit),
                                as(fault, unit, port, "baud", PortSetting::baud),
                                as(fault, unit, port, "protocol", PortSetting::protocol),
                                inverted(unit, port))
                        .flatMap(Function.identity()));
    }

    private static Stream<Candidate> inverted(Unit unit, PortSetting port) {
        return port.inverted().known().stream()
                .flatMap(now -> Move.setting(
                        Move.port(unit.ref(), port.port()).then("inverted"), now ? "no" : "yes", Costs.SETTING));
    }

    /** The value of this setting at the others around, where it is another one. */
    private static <T> Stream<Candidate> as(
            Fault fault, Unit unit, PortSetting port, String field, Function<PortSetting, Datum<T>> setting) {
        Optional<T> now = setting.apply(port).known();
        return fault.units().stream()
                .flatMap(other -> other.ports().stream())
                .flatMap(other -> setting.apply(other).known().stream())
                .distinct()
                .filter(value -> now.isPresent() && !now.get().equals(value))
                .flatMap(value ->
                        Move.setting(Move.port(unit.ref(), port.port()).then(field), plain(value), Costs.SETTING));
    }

    private static String plain(Object value) {
        return value instanceof Double number && number == Math.rint(number)
                ? String.valueOf(number.longValue())
                : value.toString();
    }
}
