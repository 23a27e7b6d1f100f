package ringout.trace.session;

import java.util.List;
import ringout.graph.Wiring;
import ringout.trace.predict.FieldTest;

/**
 * Where a test is made.
 *
 * @param unit number of the unit; -1 for a test of the whole aircraft or of a lead
 * @param plug number of the plug in its type; -1 for a test of a unit
 * @param lead id of the row; empty where the test is not of one lead
 */
record CardPlace(int unit, int plug, String lead) {
    private static final CardPlace NOWHERE = new CardPlace(-1, -1, "");

    static CardPlace of(Wiring wiring, FieldTest test) {
        if (test instanceof FieldTest.SwapLead of) {
            return new CardPlace(-1, -1, of.lead());
        }
        if (test instanceof FieldTest.RingLead of) {
            return new CardPlace(-1, -1, of.lead());
        }
        if (test instanceof FieldTest.Drop of) {
            return new CardPlace(-1, -1, wiring.wires().get(of.wire()).lead().id());
        }
        int pin = pin(test);
        if (pin >= 0) {
            return new CardPlace(wiring.unitOf(pin), wiring.plugIndex(pin), "");
        }
        List<Integer> plug = plug(test);
        return plug.isEmpty() ? ofUnit(test) : new CardPlace(plug.get(0), plug.get(1), "");
    }

    private static int pin(FieldTest test) {
        if (test instanceof FieldTest.LegToZero of) {
            return of.pin();
        }
        if (test instanceof FieldTest.Volts of) {
            return of.plus();
        }
        if (test instanceof FieldTest.LoadedVolts of) {
            return of.plus();
        }
        if (test instanceof FieldTest.LegVolts of) {
            return of.pin();
        }
        return test instanceof FieldTest.LegSign of ? of.high() : -1;
    }

    private static List<Integer> plug(FieldTest test) {
        if (test instanceof FieldTest.BusOhms of) {
            return List.of(of.unit(), of.plug());
        }
        if (test instanceof FieldTest.WireVolts of) {
            return List.of(of.unit(), of.plug());
        }
        if (test instanceof FieldTest.Unplug of) {
            return List.of(of.unit(), of.plug());
        }
        return test instanceof FieldTest.Look of ? List.of(of.unit(), of.plug()) : List.of();
    }

    private static CardPlace ofUnit(FieldTest test) {
        if (test instanceof FieldTest.Answers of) {
            return new CardPlace(of.unit(), -1, "");
        }
        if (test instanceof FieldTest.Light of) {
            return new CardPlace(of.unit(), -1, "");
        }
        if (test instanceof FieldTest.ReadSettings of) {
            return new CardPlace(of.unit(), -1, "");
        }
        if (test instanceof FieldTest.SwapUnit of) {
            return new CardPlace(of.unit(), -1, "");
        }
        return test instanceof FieldTest.BenchUnit of ? new CardPlace(of.unit(), -1, "") : NOWHERE;
    }

    boolean everywhere() {
        return unit < 0 && lead.isEmpty();
    }
}
