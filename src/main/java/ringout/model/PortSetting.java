package ringout.model;

import ringout.text.Span;

/** How one port of a unit is set. */
public record PortSetting(
        @Doc("where it stands in the user's file") Span at,
        @Doc("port; empty when the unit has one only") String port,
        @Doc("bus it is declared on") Datum<String> bus,
        @Doc("node address") Datum<Integer> address,
        @Doc("terminator as set") Datum<TerminatorState> terminator,
        @Doc("bit rate as set") Datum<Double> rateKbit,
        @Doc("protocol set on the port") Datum<String> protocol,
        @Doc("baud rate set on the port") Datum<Double> baud,
        @Doc("set to inverted") Datum<Boolean> inverted,

        @Doc("what the configuration calls the device at this port: receiver 1")
        Datum<String> deviceInstance,

        @Doc("address of an I2C device as strapped, decimal or 0x")
        Datum<String> i2cAddress) {}
