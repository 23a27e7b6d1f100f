package ringout.check.signal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.bus.I2cNets;
import ringout.model.Bus;
import ringout.model.BusPort;
import ringout.model.Datum;

/**
 * An I2C bus whose pull-ups and capacitance do not go together.
 *
 * <p>Why it matters: pull-ups that are too strong cannot be pulled low; too weak ones, or too much wire, round the edges off: the bus
 * works on the bench and drops devices in flight.
 *
 * <p>Formula: Rp in ohm is all pull-ups in parallel. (VDD - 0.4 V) / Rp at most 3 mA; rise time 0.8473 Rp C at most 1000 ns at
 * 100 kbit/s, 300 ns at 400 kbit/s; C at most 400 pF. C is 100 pF per m of wire and 10 pF a device unless its type says. More than
 * 0.5 m of wire is remarked on.
 *
 * <p>Does not see: buffers and level shifters, noise.
 *
 * <p>Reference: I2C-bus specification, UM10204, sections 6 and 7.1; capacitance of wire and length: common practice, no source.
 */
@CheckInfo(
        code = "S18",
        name = "i2c-pull-ups",
        severity = Severity.S3,
        since = "0.1",
        needs = {"pull-up of each device", "voltage of the pull-ups", "bit rate", "length of each lead"})
public final class I2cPullUps implements Check {
    private static final double SINK_MA = 3;
    private static final double LOW_V = 0.4;
    private static final double RISE = 0.8473;
    private static final double PER_METRE = 100;
    private static final double PER_DEVICE = 10;
    private static final double MOST_PF = 400;
    private static final double FAST = 100;
    private static final double FAST_NS = 300;
    private static final double SLOW_NS = 1000;
    private static final double KILO = 1000;
    private static final String SOURCE = "I2C-bus specification, UM10204";

    /** What is known of a bus. */
    private static final class Line {
        final List<String> devices = new ArrayList<>();
        final List<Wire> wires = new ArrayList<>();
        double siemens;
        double volts;
        double picofarad;
        double metres;
        int pullUps;

        double ohm() {
            return 1 / siemens;
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        List<List<I2cNets.Port>> nets = I2cNets.of(at.circuit()).nets();
        Map<Integer, List<Wire>> wires = wiresOf(at, nets);
        for (List<I2cNets.Port> ports : nets) {
            judge(at, out, gaps, ports, wires.getOrDefault(net(at, ports), List.of()));
        }
        gaps.tell(
                out,
                datum -> datum.equals("length")
                        ? new Gaps.Way("lay a tape along the lead", 2)
                        : datum.equals("bit rate")
                                ? new Gaps.Way("read it in the configuration", 2)
                                : new Gaps.Way("power off: measure from the line to the supply of the unit", 4));
    }

    private static int net(Situation at, List<I2cNets.Port> ports) {
        return at.circuit().nets().of(ports.get(0).scl());
    }

    /** The mated wires of each clock line, found in one pass over the list. */
    private static Map<Integer, List<Wire>> wiresOf(Situation at, List<List<I2cNets.Port>> nets) {
        Map<Integer, List<Wire>> wires = new HashMap<>();
        nets.forEach(ports -> wires.put(net(at, ports), new ArrayList<>()));
        if (wires.isEmpty()) {
            return wires;
        }
        for (Wire wire : at.wiring().wires()) {
            int net = at.circuit().nets().of(wire.fromPin());
            List<Wire> line = wires.get(net);
            if (line != null && at.circuit().mated(wire) && at.circuit().nets().of(wire.toPin()) == net) {
                line.add(wire);
            }
        }
        return wires;
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, List<I2cNets.Port> ports, List<Wire> wires) {
        Line line = new Line();
        Gaps open = new Gaps();
        boolean strong = devices(at, line, open, ports);
        boolean lengths = wires(line, open, wires);
        Optional<Double> rate = rate(at, ports);
        if (rate.isEmpty()) {
            open.add("bit rate", line.devices.get(0));
        }
        List<String> wrong = new ArrayList<>();
        if (line.pullUps > 0 && line.volts > 0) {
            double milliamps = (line.volts - LOW_V) / line.ohm() * KILO;
            if (milliamps > SINK_MA) {
                wrong.add(Figures.of(line.volts - LOW_V) + " V / " + Figures.of(line.ohm()) + " ohm = "
                        + Figures.of(milliamps) + " mA, at most 3 mA");
            }
            double most = rate.orElse(FAST) > FAST ? FAST_NS : SLOW_NS;
            double rise = RISE * line.ohm() * line.picofarad / KILO;
            if (strong && lengths && rate.isPresent() && rise > most) {
                wrong.add("0.8473 x " + Figures.of(line.ohm()) + " ohm x " + Figures.of(line.picofarad) + " pF = "
                        + Figures.of(rise) + " ns, at most " + Figures.of(most) + " ns at " + Figures.of(rate.get())
                        + " kbit/s");
            }
        }
        if (line.picofarad > MOST_PF) {
            wrong.add(Figures.of(line.picofarad) + " pF, at most 400 pF");
        }
        Threshold longest = at.limit(Thresholds.I2C_LENGTH);
        boolean far = line.metres * KILO > longest.value();
        if (!wrong.isEmpty()) {
            out.finding(draft(line, "I2C pull-ups and wire do not go together", wrong, Severity.S3));
        } else if (!open.isEmpty()) {
            gaps.addAll(open);
        } else if (far) {
            wrong.add(Figures.of(line.metres) + " m of wire, at most " + Figures.of(longest.value() / KILO) + " m");
            out.finding(draft(line, "I2C goes far", wrong, Severity.S4));
        } else if (line.pullUps > 0) {
            out.looked();
        }
    }

    /** Adds the devices; whether all their pull-ups are known. */
    private static boolean devices(Situation at, Line line, Gaps open, List<I2cNets.Port> ports) {
        boolean all = true;
        for (I2cNets.Port port : ports) {
            String ref = at.directory().name(port.unit());
            Optional<BusPort> said = at.directory().layout(port.unit()).port(port.port());
            line.devices.add(ref);
            line.picofarad +=
                    said.map(BusPort::nodePicofarad).orElse(Datum.notAsked()).or(PER_DEVICE);
            Datum<Double> ohm = said.map(BusPort::pullUpOhm).orElse(Datum.notAsked());
            Datum<Double> volts = said.map(BusPort::pullUpV).orElse(Datum.notAsked());
            if (ohm.isKnown() && ohm.or(0.0) > 0) {
                line.siemens += 1 / ohm.or(1.0);
                line.pullUps++;
                line.volts = Math.max(line.volts, volts.or(0.0));
                if (!volts.isKnown()) {
                    open.add("voltage of the pull-up", ref);
                }
            } else if (ohm.isMissing()) {
                open.add("pull-up", ref);
                all = false;
            }
        }
        return all;
    }

    /** Adds the wires of the clock line; whether all their lengths are known. */
    private static boolean wires(Line line, Gaps open, List<Wire> wires) {
        boolean all = true;
        for (Wire wire : wires) {
            line.wires.add(wire);
            line.metres += wire.lengthMm().or(0.0) / KILO;
            line.picofarad += wire.lengthMm().or(0.0) / KILO * PER_METRE;
            if (!wire.lengthMm().isKnown()) {
                open.add("length", wire.lead().id());
                all = false;
            }
        }
        return all;
    }

    private static Optional<Double> rate(Situation at, List<I2cNets.Port> ports) {
        for (Bus bus : at.aircraft().buses()) {
            for (I2cNets.Port port : ports) {
                String name = at.directory().name(port.unit());
                boolean on = bus.members().contains(name + ":" + port.port())
                        || (bus.members().contains(name) && bus.name().equals(port.port()));
                if (on && bus.rateKbit().isKnown()) {
                    return bus.rateKbit().known();
                }
            }
        }
        return ports.stream()
                .flatMap(port -> at.directory().isJoint(port.unit())
                        ? Stream.empty()
                        : at.directory().unit(port.unit()).ports().stream()
                                .filter(set -> set.port().equals(port.port())
                                        || set.port().isEmpty()))
                .flatMap(set -> set.rateKbit().known().stream())
                .max(Double::compare);
    }

    private static Draft draft(Line line, String title, List<String> wrong, Severity severity) {
        List<String> sorted = line.devices.stream().distinct().toList();
        Draft draft = Draft.of(severity, title + ": " + String.join(", ", sorted))
                .about(sorted)
                .sum(line.pullUps + " pull-ups, " + Figures.of(line.metres) + " m: " + String.join("; ", wrong))
                .source(severity == Severity.S3 ? SOURCE : "common practice, no source")
                .why("the edges are rounded off or the lows too high: devices drop out now and then")
                .meter(
                        line.pullUps > 0
                                ? "power off: " + Figures.of(line.ohm()) + " ohm from SCL to the pull-up supply"
                                : "power on, bus idle: the supply voltage on SCL")
                .fix("leave pull-ups out or fit others so that all of " + String.join(", ", sorted)
                        + " fit, shorten the wire, or run the bus slower");
        line.wires.stream().map(Wire::lead).distinct().forEach(draft::at);
        return draft;
    }
}
