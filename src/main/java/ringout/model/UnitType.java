package ringout.model;

import java.util.List;
import ringout.text.Span;

/** What all boxes of one part number share: plugs, pins, joins inside, loads and ratings. */
public record UnitType(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the type, as units refer to it") String name,
        @Doc("what the unit is for") Datum<UnitKind> kind,
        @Doc("what it is, in trade words") Datum<String> title,
        @Doc("maker's part number") Datum<String> makerPart,
        @Doc("revision of the part") Datum<String> revision,
        @Doc("where the pin-out comes from") Datum<PinoutSource> pinoutSource,
        @Doc("when the pin-out was taken, YYYY-MM-DD") Datum<String> pinoutDate,
        @Doc("plugs in the order of the box") List<Plug> plugs,
        @Doc("supply points inside the unit") List<Rail> rails,
        @Doc("two-terminal parts inside the unit") List<InnerPart> parts,
        @Doc("what the unit draws, per rail") List<LoadSpec> loads,

        @Doc("bus ports: terminator, node input, pass-through, rates")
        List<BusPort> ports,

        @Doc("serial, video and other point-to-point ports with protocol and polarity")
        List<SerialPort> serials,

        @Doc("addressed devices inside, also the hidden ones")
        List<HiddenDevice> devices,

        @Doc("outputs that share one timer and so one rate") List<TimerGroup> timerGroups,
        @Doc("transmitter bands") List<Band> emits,
        @Doc("receiver bands") List<Band> receives,

        @Doc("motor or servo protocols an input of this type understands")
        List<String> outputProtocols,

        @Doc("highest update rate its pulse input takes") Datum<Double> maxRateHz,

        @Doc("motor: turning direction with phases A-U, B-V, C-W and no reversal, seen from above")
        Datum<Spin> baseSpin,

        @Doc("input capacitance of one unit") Datum<Double> inputMicrofarad,
        @Doc("the unit limits its own inrush") Datum<Boolean> inputPrecharge,

        @Doc("longest battery-to-unit lead one way the maker allows without extra capacitance")
        Datum<Double> maxSupplyLeadMm,

        @Doc("index shown by its tool counts from zero") Datum<Boolean> zeroBasedIndex,

        @Doc("meant to stay powered with the main isolator open")
        Datum<Boolean> alwaysOn,

        @Doc("source that stays on the ground or comes and goes by a plug: USB, charger, ground power")
        Datum<Boolean> external,

        @Doc("load that disturbs neighbours on its supply (servo, pump, gimbal, radio power stage)")
        Datum<Boolean> noisy,

        @Doc("compass, receiver or analog camera that minds a disturbed supply")
        Datum<Boolean> sensitive,

        @Doc("holds the compass in use") Datum<Boolean> compass,
        @Doc("needs an antenna or dummy load before power") Datum<Boolean> antenna,
        @Doc("ejector or igniter: safe pin before power") Datum<Boolean> ejector,
        @Doc("turns a propeller") Datum<Boolean> propellerHazard,
        @Doc("sits on a damper") Datum<Boolean> damped,
        @Doc("monitor: true voltage scale") Datum<Double> voltScale,
        @Doc("monitor: true current scale") Datum<Double> ampScale,
        @Doc("mass") Datum<Double> massG,
        @Doc("heat the unit can shed") Datum<Double> heatRatedW,
        @Doc("what its light or message shows") List<Indication> indications,
        @Doc("what must be true before it is powered") List<Prerequisite> prerequisites,

        @Doc("buttons, slots and selectors a hand must reach")
        List<Control> controls,

        @Doc("free remark") Datum<String> note) {}
