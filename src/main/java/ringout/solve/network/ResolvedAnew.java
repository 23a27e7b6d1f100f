package ringout.solve.network;

/** The answer when the changed network had to be solved from the start. */
final class ResolvedAnew implements Resolved {

    private final NetworkSolution solution;

    ResolvedAnew(NetworkSolution solution) {
        this.solution = solution;
    }

    @Override
    public NodeVoltage voltage(int node) {
        return solution.voltage(node);
    }

    @Override
    public NodeVoltage between(int a, int b) {
        return solution.between(a, b);
    }

    @Override
    public boolean flows(int injection) {
        return solution.flows(injection);
    }

    @Override
    public double amps(int element) {
        ResistiveNetwork network = solution.factorised().network();
        return Resolved.amps(
                between(network.from(element), network.to(element)), network.emf(element), network.ohms(element));
    }

    @Override
    public Method method() {
        return Method.FRESH;
    }

    @Override
    public int touched() {
        return solution.factorised().structure().unknowns();
    }
}
