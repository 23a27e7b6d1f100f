package ringout.solve.dc;

import ringout.solve.dc.DcElement.Load;

/** What each draw asks for whatever its voltage: a constant current and a constant power. */
final class Asked {

    private final CircuitNetwork circuit;
    private final Converters converters;
    private final double scale;

    /**
     * Asks for loads and for the inputs of regulators.
     *
     * @param scale factor on all constant currents and constant powers of loads
     */
    Asked(CircuitNetwork circuit, Converters converters, double scale) {
        this.circuit = circuit;
        this.converters = converters;
        this.scale = scale;
    }

    /** {@return the part of a draw that is a constant current} */
    double amps(int draw) {
        boolean isConstant = circuit.element(circuit.drawElement(draw)) instanceof Load l
                && l.draw() instanceof Draw.ConstantCurrent;
        return isConstant ? scale * amount(draw) : converters.amps(draw);
    }

    /** {@return the part of a draw that is a constant power} */
    double watts(int draw) {
        boolean isPower =
                circuit.element(circuit.drawElement(draw)) instanceof Load l && l.draw() instanceof Draw.ConstantPower;
        return isPower ? scale * amount(draw) : converters.watts(draw);
    }

    private double amount(int draw) {
        Draw d = ((Load) circuit.element(circuit.drawElement(draw))).draw();
        return d instanceof Draw.ConstantCurrent c ? c.amps() : ((Draw.ConstantPower) d).watts();
    }
}
